// "Aspirin three hundred milligrams." "No, the aspirin was not given.": care that was told is struck, or asked about; the words are kept.

import { caredFor } from '../../cared.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Cared } from '../../context.ts';
import { spanned } from '../../span.ts';
import type { Token } from '../../token.ts';
import { LOST, REFUSAL, TAIL } from '../care/refused.ts';
import { bear, place, spanOf, state, type Talk, textOf } from '../talk.ts';
import { careMeant, isLastSo, statementOfCare, targetOfCare } from './care-meant.ts';

const OPEN =
  '(?:(?:no|nope|actually|correction|sorry|wait|hang on|hold on|in fact|but|and|so|well|oh|okay|then|,) )*';
/** Of what or whom it is said, in a few words. */
const WORDS = '(?:[a-z]+ ){0,6}?';
const DENIED = new RegExp(
  `^${OPEN}${WORDS}(?:${REFUSAL}|(?:did|has|have|had|would|could) not (?:give|have|take|use|get|given|taken)|(?:refused|declined))(?: (?!(?:because|as|since|by|for)\\b)[a-z]+){0,4}?(?: in the end| after all| at all| yet)?(?=$| ,|${TAIL})`,
);
/** "Correction, no second dose". */
const NONE =
  /^(?:(?:and|but|oh|,) )*(?:correction|actually|in fact|sorry|wait|hang on|hold on)(?: ,)? (?:there was )?no(?: [a-z]+){1,5}?(?: given)?$/;
/** "She has never had morphine" tells of before. */
const EVER = /\b(?:has|have|had) never\b/;
const PUTS_RIGHT =
  /^(?:(?:and|but|oh|well|so|,) )*(?:no|nope|actually|correction|sorry|wait|hang on|hold on|in fact)\b/;
/** "He refused" may be of anything, behind a drug that is told to be given. */
const TOLD_GIVEN = /\b(?:given|in|on board|pushed|swallowed|chewed)$/i;

const SMALL = new Set(
  `no nope actually correction sorry wait hang hold in fact but and so well oh okay then he she they i we it them that this any the his her
  their him patient casualty mother mum mom father dad was were is has had have been be did does would will could can not never cannot just
  simply even yet there all of to at end after a an some
  given give gave administered taken take took swallowed swallow accepted accept tolerated tolerate used use applied put on fitted started delivered
  injected refused refuses refusing declined declines declining withheld held back off turned down spat spit spits spitted spitting out straight
  right want wanted get got manage managed dose doses drug tablet tablets pill pills med meds medicine medication one offered`.split(
    /\s+/,
  ),
);

/** Takes care back that was told as given; false where the clause says nothing of the kind, or of care that was not told. */
export function takesBackCare(talk: Talk, clause: Clause): boolean {
  const { mood, pieces } = clause;
  const { asked, cared, isSaidLast } = talk.context;
  if (mood !== 'statement' && mood !== 'correction' && mood !== 'answer') return false;
  if (cared.length === 0 || asked !== null) return false;
  const { from, to } = spanned(pieces);
  const words = withPauses(talk.tokens.slice(from, to));
  if (EVER.test(words)) return false;
  const denied = (DENIED.exec(words) ?? NONE.exec(words))?.[0];
  if (denied === undefined) return isSaidLast && asksWhetherKept(talk, { from, to }, words);
  const named = denied.split(' ').filter((word) => word !== ',' && !SMALL.has(word));
  const meant = careMeant(talk, named);
  if (meant.length === 0) return false;
  const heard = textOf(talk, from, to);
  const [one, ...others] = meant;
  if (one === undefined || others.length > 0 || !isLastSo(talk, one)) {
    state(talk, [{ statement: { kind: 'note', text: heard }, from, to, doubt: [WHICH] }]);
    place(talk, { from, to });
    return true;
  }
  const isLast = isSaidLast && cared.at(-1) === one;
  const isSure =
    PUTS_RIGHT.test(words) ||
    (isLast &&
      !(
        named.length === 0 &&
        /^(?:[a-z]+ )?(?:refused|declined)$/.test(denied) &&
        TOLD_GIVEN.test(one.text ?? '')
      ));
  const what = one.text ?? one.care.replaceAll('-', ' ');
  const text = named.length === 0 ? `${what}: ${heard}` : heard;
  if (isSure) strike(talk, one, { from, to });
  else askAfter(talk, one, { from, to }, `Taken back by “${heard}”: was it given?`);
  state(talk, [{ statement: { kind: 'note', text }, from, to }]);
  place(talk, { from, to });
  return true;
}

const WHICH = 'Which of those that were told was not given?';

type Words = { readonly from: number; readonly to: number };

function strike(talk: Talk, one: Cared, { from, to }: Words): void {
  talk.frames.push({
    frame: 'correction',
    target: targetOfCare(one),
    change: { change: 'strike' },
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: {},
    doubt: [],
  });
  bear(talk, { cared: talk.context.cared.filter((other) => other !== one), said: [] });
}

function askAfter(talk: Talk, one: Cared, { from, to }: Words, question: string): void {
  talk.frames.push({
    frame: 'correction',
    target: targetOfCare(one),
    change: { change: 'statement', statement: statementOfCare(one) },
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: {},
    doubt: [question],
  });
}

// "He vomited it back up": what was given last was given, and may not have stayed; the words are read on.
function asksWhetherKept(talk: Talk, span: Words, words: string): false {
  const [last, ...others] = talk.context.said;
  if (last?.kind !== 'care' || others.length > 0 || !LOST.test(words)) return false;
  askAfter(talk, caredFor(last, null), span, 'Was it kept down?');
  return false;
}

const withPauses = (tokens: readonly Token[]): string =>
  tokens
    .map(({ word, pause }) => (pause === '' ? word : `${word} ,`))
    .join(' ')
    .replace(/ ,$/, '');
