// "Is the ankle sore?" "No, only the heel and the sole": words that seem to say where it is instead, and were not understood, are kept beside
// the looks that they leave.

import { isSmall, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, pauseAfter, type Span } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { note, type Talk } from '../talk.ts';
import type { AskedFindings } from './settle.ts';
import { withSplitOff } from './split-off.ts';

// Words with these state something of themselves, and what is left of them is kept anyway.
const STATES: ReadonlySet<Role> = new Set([
  'finding',
  'csm',
  'vital',
  'care',
  'history',
  'limbs',
  'same',
  'unknown',
  'attribute',
  'part',
]);

const FROM_THERE = /\b(underneath|beneath|under|below|above|further|side|middle|top|bottom|tip)\b/;
const TURNS =
  /^(in|on|at|from) (?!to\b)|\b(but|just|only|not|it is|that is|it was|that was|did|was|were|coming|does|do|is|are|has)\b|\b(underneath|beneath|under|below|above|further)\b/;
// "No, the right is next."
const GOES_ON = /\b(next|now|then|to do|to go)\b/;

/** Keeps what follows a "no", with it, where it turns to another place; true where it did. */
export function noteElsewhere(
  talk: Talk,
  asked: AskedFindings,
  { from, to }: Span,
  rest: readonly Piece[],
): boolean {
  const stated = rest.findIndex(({ role }) => STATES.has(role));
  const said = stated < 0 ? rest : rest.slice(0, stated);
  const [first, last] = [said[0], said.at(-1)];
  if (first === undefined || last === undefined) return false;
  // "No but the right | is swollen" says of itself what is there.
  if (stated >= 0 && !isPaused(talk.tokens, last)) return false;
  // "No and the wrist?" asks on.
  if (isSmall(first, 'join') || pauseAfter(talk.tokens, last) === 'ask') return false;
  const clause = talk.clauses.find(({ pieces }) => pieces.includes(last));
  const end = clause === undefined || stated >= 0 ? last : (withSplitOff(talk, clause).at(-1) ?? last);
  const words = saidIn(talk.tokens, first.from, end.to);
  const names = said.some(({ role }) => role === 'site' || role === 'side') || FROM_THERE.test(words);
  // "It's not the wrist or the hand": of the hand nothing was asked.
  const deniesMore =
    talk.tokens[to - 1]?.word === 'not' &&
    phrasesIn(itemsOf(talk, said)).some(({ sites }) =>
      sites.some(({ site }) => !asked.sites.some((one) => one.site === site)),
    );
  if (!names || !(deniesMore || TURNS.test(words)) || GOES_ON.test(words)) return false;
  note(talk, { from, to: end.to });
  return true;
}
