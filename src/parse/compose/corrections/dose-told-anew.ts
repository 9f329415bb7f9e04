// "Fentanyl three hundred micrograms." "No, one hundred and fifty micrograms.": the amount is put right, or asked about; never left as it was
// without a word of it.

import type { Clause } from '../../clauses/clause.ts';
import type { Cared } from '../../context.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { bear, place, spanOf, state, type Talk, textOf } from '../talk.ts';
import { careMeant, isLastSo, statementOfCare, targetOfCare } from './care-meant.ts';
import { type Amount, amountIn, isCountedElse, isCountedIn, withAmount } from './dose-amount.ts';

const TURNS =
  /^(?:(?:oh|and|but|well|okay|so) )*(?:no|nope|sorry|correction|wait|actually|hang on|hold on|make that|rather|my mistake|i mean|scratch that)(?: (?:no|sorry|wait|actually|make that|it is|that is|i mean|correction))*(?: |$)/;
const FIRM = /\b(?:correction|make that|my mistake|i mean|sorry|rather)\b/;
/** What leads to it: "that was", "the morphine should be", "i gave". */
const LEAD =
  /^(?:(?:it|that|this|the dose|that dose|the amount) (?:was|is|should be|should have been)|(?:i|we) (?:only |actually |just )?(?:gave|pushed)(?: (?:him|her))?|(?:the|that|his|her) ((?:[a-z]+ ){1,3})(?:was|is|should be|should have been)|given|gave)(?: (?:only|actually|just|about))* /;
/** What may stand behind it: "not ten", the way it was given. */
const TAIL = /^(?: (?:not|instead of|rather than) [a-z ]+| of (?:it|that)| (?:given|instead|not that))?$/;

const WHICH = 'Which dose does that put right?';
const UNIT = 'It was counted in something else before: is the unit right?';
const BESIDES = 'Does that put the dose right, or was it another one?';

/** Puts the amount of a dose right that was told; false where the clause is anything but such an amount. */
export function tellsDoseAnew(talk: Talk, clause: Clause): boolean {
  const { mood, pieces } = clause;
  if (mood !== 'statement' && mood !== 'correction' && mood !== 'answer') return false;
  const { asked, cared } = talk.context;
  if (asked !== null || !cared.some(({ text }) => text !== null)) return false;
  const { from, to } = spanned(pieces);
  const said = saidIn(talk.tokens, from, to);
  const turn = TURNS.exec(said)?.[0] ?? '';
  const lead = LEAD.exec(said.slice(turn.length));
  const rest = said.slice(turn.length + (lead?.[0].length ?? 0)).split(' ');
  const amount = amountIn(rest);
  const tail = amount === null ? '' : ` ${rest.slice(amount.end).join(' ')}`.trimEnd();
  if (amount === null || !TAIL.test(tail)) return false;
  const isInstead = /^ (?:not|instead|rather)/.test(tail);
  if (turn === '' && lead === null && !isInstead) return false;
  const one = meantBy(talk, amount, lead?.[1]?.trim() ?? null);
  if (one === null) return false;
  const first = to - rest.length;
  const number = textOf(talk, first, first + amount.number);
  const unit = amount.unit === '' ? '' : textOf(talk, first + amount.number, first + amount.end);
  const text = one === 'unclear' ? null : withAmount(one.text ?? '', number, unit);
  if (one === 'unclear' || text === null) {
    state(talk, [{ statement: { kind: 'note', text: textOf(talk, from, to) }, from, to, doubt: [WHICH] }]);
    place(talk, { from, to });
    return true;
  }
  const isLast = talk.context.isSaidLast && cared.at(-1) === one;
  // "No, one fifty" may be a time that nobody has told yet.
  const isPlain = FIRM.test(turn) && !pieces.some(({ role }) => role === 'time');
  const isSure =
    isInstead || (turn !== '' && (isLast || lead?.[1] !== undefined) && (amount.unit !== '' || isPlain));
  const anew = { ...one, text };
  talk.frames.push({
    frame: 'correction',
    target: targetOfCare(one),
    change: { change: 'statement', statement: statementOfCare(anew) },
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: {},
    doubt: [
      ...(isSure ? [] : [isLast ? BESIDES : WHICH]),
      ...(isCountedElse(one.text ?? '', amount.unit) ? [UNIT] : []),
    ],
  });
  bear(talk, {
    cared: cared.map((other) => (other === one ? anew : other)),
    ...(isLast ? { said: [statementOfCare(anew)] } : {}),
  });
  place(talk, { from, to });
  return true;
}

/** The dose that is put right; null where the amount may be of something else. */
function meantBy(talk: Talk, { unit }: Amount, named: string | null): Cared | 'unclear' | null {
  const { cared, said, isSaidLast } = talk.context;
  const [last, ...others] = said;
  if (named !== null) {
    const [one, ...more] = careMeant(
      talk,
      named.split(' ').filter((word) => word !== 'dose'),
    );
    if (one?.text == null) return null;
    return more.length > 0 || !isLastSo(talk, one) ? 'unclear' : one;
  }
  const own =
    last?.kind === 'care' && last.text !== undefined && others.length === 0 ? cared.at(-1) : undefined;
  // Two bare numbers may be the time that was told of it.
  if (unit === '') return own !== undefined && isSaidLast && own.at === null ? own : null;
  if (own !== undefined && isSaidLast && isCountedIn(own.text ?? '', unit)) return own;
  const [one, ...more] = cared.filter(({ text }) => text !== null && isCountedIn(text, unit));
  // "Three hundred micrograms." "No, five hundred milligrams.": told last, and counted in something else.
  if (one === undefined) return isSaidLast && own?.care === 'medication' ? own : null;
  return more.length > 0 || !isLastSo(talk, one) ? 'unclear' : one;
}
