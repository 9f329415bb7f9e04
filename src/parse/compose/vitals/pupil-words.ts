// "Left five, right two. Unequal.": what the pupils are like, in few words behind their sizes.

import type { VitalStatement } from '../../../terms/index.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { place, state, type Talk } from '../talk.ts';

type Pupils = Extract<VitalStatement, { vital: 'pupils' }>;

const LEAD = /^(and|but|so|they|both|are|look|is|now)( |$)/;
const WORDS: readonly (readonly [words: RegExp, value: Partial<Pupils['value']>])[] = [
  [/^(unequal|uneven|not equal|not the same( size)?|different sizes)( |$)/, { equal: false }],
  [/^(equal|the same( size)?)( |$)/, { equal: true }],
  [/^(not reactive|not reacting|fixed|unreactive)( to( the)? light)?( |$)/, { reactive: false }],
  [/^(reactive|reacting|react)( to( the)? light)?( |$)/, { reactive: true }],
];

/** What these words say of pupils, or null where some of them say something else. */
function toldOf(words: string): Partial<Pupils['value']> | null {
  const lead = LEAD.exec(words)?.[0];
  if (lead !== undefined) return toldOf(words.slice(lead.length));
  if (words === '') return {};
  for (const [said, value] of WORDS) {
    const found = said.exec(words)?.[0];
    const rest = found === undefined ? null : toldOf(words.slice(found.length));
    if (rest !== null) return { ...rest, ...value };
  }
  return null;
}

/** States the pupils with what the breath from `i` on says of them; returns how many pieces it took (0: none). */
export function statePupilWords(talk: Talk, pieces: readonly Piece[], i: number): number {
  const last = talk.context.said.at(-1);
  if (last?.kind !== 'vital' || last.vital !== 'pupils' || !talk.context.isSaidLast) return 0;
  const from = pieces[i]?.from ?? 0;
  if (i > 0 && pieces[i - 1]?.role !== 'vital' && !isPaused(talk.tokens, { to: from })) return 0;
  const end = pieces.findIndex(
    (piece, k) => k >= i && (isPaused(talk.tokens, piece) || k === pieces.length - 1),
  );
  const to = pieces[end]?.to ?? from;
  const more = toldOf(saidIn(talk.tokens, from, to));
  if (more === null || Object.keys(more).length === 0 || belies(last, more)) return 0;
  const statement: Pupils = { ...last, value: { ...last.value, ...more } };
  const frame = talk.frames.at(-1);
  const isHere = frame?.frame === 'statement' && frame.statement === last;
  // Told in one breath with the sizes they are one sign.
  if (isHere) talk.frames.pop();
  const first = isHere ? talk.tokens.findIndex((token) => token.from === frame.span[0]) : from;
  const known = isHere ? frame.known : ({ vital: 'carried' } as const);
  state(talk, [{ statement, known, doubt: isHere ? frame.doubt : [], from: Math.max(0, first), to }]);
  place(talk, { from, to });
  return end - i + 1;
}

/** "Five and three. Equal.": nobody knows which holds, and the words stay. */
function belies({ value }: Pupils, more: Partial<Pupils['value']>): boolean {
  const { leftMm, rightMm } = value;
  const unlike = leftMm !== undefined && rightMm !== undefined && leftMm !== rightMm;
  const isSame = leftMm !== undefined && leftMm === rightMm;
  const isOther = (key: 'equal' | 'reactive'): boolean =>
    more[key] !== undefined && value[key] !== undefined && value[key] !== more[key];
  return (
    isOther('equal') ||
    isOther('reactive') ||
    (more.equal === true && unlike) ||
    (more.equal === false && isSame)
  );
}
