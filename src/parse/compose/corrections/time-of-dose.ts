// "Correction, the second dose was at thirteen fifty eight": the time is put right of the dose that was told, which keeps its drug and its amount.

import type { Clause } from '../../clauses/clause.ts';
import type { Cared } from '../../context.ts';
import { spanned } from '../../span.ts';
import { hoursBack, readTimes, resolveTime, type SpokenTime } from '../../times/index.ts';
import { saidIn } from '../../token.ts';
import { aheadDoubt, bear, farBack, place, spanOf, state, type Talk, textOf } from '../talk.ts';
import { careMeant, isLastSo, statementOfCare, targetOfCare } from './care-meant.ts';

const NAMED =
  /^((?:(?:oh|and|but|well|so|no|nope|sorry|correction|wait|actually|hang on|hold on|in fact|i mean) )*)(?:the |that |his |her |our )?((?:[a-z]+ ){1,5}?)(?:was|were|is|went in|should be|should have been)(?: (?:actually|given|pushed|done|in|more like))* ((?:at|about|around|just after|just before) )*/;
const TURN = /\b(?:no|nope|sorry|correction|wait|actually|hang on|hold on|in fact|i mean)\b/;
/** Without a word that leads to it, this tells that it is a time. */
const CLOCK = /\b(?:hours|hundred hours|o'clock|oclock|past|to|ago)\b/;
const PLAIN = /^(?:dose|doses|one|shot|of|the|drug|injection|given)$/;
const NTH = /^(?:first|second|third|fourth|last|next)$/;

const WHICH = 'Which dose is it the time of?';
const OTHER = 'Another time was said of it before: which is right?';

/** Puts the time right of a drug that was told; false where the clause is anything but its name and a time. */
export function timesDose(talk: Talk, clause: Clause): boolean {
  const { mood, pieces } = clause;
  if (mood !== 'statement' && mood !== 'correction' && mood !== 'answer') return false;
  const { cared } = talk.context;
  if (!cared.some(({ care }) => care === 'medication')) return false;
  const { from, to } = spanned(pieces);
  const words = saidIn(talk.tokens, from, to);
  const [lead, turn = '', what = '', at] = NAMED.exec(words) ?? [];
  if (lead === undefined) return false;
  const rest = words.slice(lead.length);
  const time = wholeTime(rest.split(' '));
  if (time === null || (at === undefined && !CLOCK.test(rest))) return false;
  const named = what
    .trim()
    .split(' ')
    .filter((word) => !PLAIN.test(word));
  const meant = careMeant(
    talk,
    named.filter((word) => word !== 'last'),
  ).filter(({ care }) => care === 'medication');
  const [one, ...others] = named.includes('last') ? meant.slice(-1) : meant;
  const turns = TURN.test(turn);
  const isUnclear =
    one === undefined
      ? turns && what.includes('dose') && named.every((word) => NTH.test(word))
      : others.length > 0 || !isLastSo(talk, one);
  if (isUnclear) {
    state(talk, [{ statement: { kind: 'note', text: textOf(talk, from, to) }, from, to, doubt: [WHICH] }]);
    place(talk, { from, to });
    return true;
  }
  if (one === undefined) return false;
  retime(talk, one, time, { from, to }, turns);
  return true;
}

const wholeTime = (words: readonly string[]): SpokenTime | null =>
  readTimes(words, 0).find(({ end }) => end === words.length)?.time ?? null;

function retime(
  talk: Talk,
  one: Cared,
  time: SpokenTime,
  { from, to }: { readonly from: number; readonly to: number },
  turns: boolean,
): void {
  const { heardAt, zone } = talk.utterance;
  const at = resolveTime(time, heardAt, zone);
  const statement = statementOfCare(one);
  const isOther = !turns && one.at !== null && one.at !== at;
  talk.frames.push({
    frame: 'correction',
    target: targetOfCare(one),
    change: { change: 'statement', statement },
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: {},
    doubt: [
      ...aheadDoubt(at, heardAt),
      ...farBack(statement, { hoursBack: hoursBack(time, at, heardAt) }),
      ...(isOther ? [OTHER] : []),
    ],
    at,
  });
  bear(talk, { cared: talk.context.cared.map((other) => (other === one ? { ...one, at } : other)) });
  place(talk, { from, to });
}
