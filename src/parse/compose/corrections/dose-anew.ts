// "Ten of morphine, sorry, five": the one number in what was given is another, and the rest of it stands.

import type { CareStatement } from '../../../terms/index.ts';
import { readNumbers } from '../../numbers/index.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { isChatter } from '../light.ts';
import { type Talk, textOf } from '../talk.ts';
import type { Changed } from './changes.ts';
import { signMeant } from './sign-meant.ts';
import { sameTarget } from './target.ts';

/** The change of an amount of care that was said last; null where the pieces are no bare number, or nobody can tell which it is. */
export function doseAnew(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const [last, ...others] = talk.context.said;
  if (last?.kind !== 'care' || last.text === undefined || others.length > 0) return null;
  const [figure, ...rest] = pieces.filter((piece) => piece.role !== 'correction' && !isChatter(piece));
  if (figure?.role !== 'figure' || namesAnother(talk, pieces, last.text)) return null;
  const text = amended(last.text, textOf(talk, figure.from, figure.to), textAfter(talk, rest));
  if (text === null) return null;
  const statement: CareStatement = { ...last, text };
  return [{ change: { change: 'statement', statement }, target: sameTarget(last) }];
}

// "The midazolam should be five", after another drug.
function namesAnother(talk: Talk, pieces: readonly Piece[], text: string): boolean {
  const sign = signMeant(talk, pieces);
  if (sign !== 'other') return sign !== null;
  const at = talk.clauses.findIndex((clause) => clause.pieces.some((piece) => pieces.includes(piece)));
  const known = new Set([...text.split(/\s+/).map(plain), 'dose', 'amount']);
  const unknown = talk.clauses[at - 1]?.pieces.filter(({ role }) => role === 'unknown') ?? [];
  return !unknown.every(({ from }) => known.has(talk.tokens[from]?.word ?? ''));
}

const textAfter = (talk: Talk, rest: readonly Piece[]): string =>
  rest.map(({ from, to }) => textOf(talk, from, to)).join(' ');

const plain = (word: string): string => word.toLowerCase().replace(/[.,;:]+$/, '');

/** The text with its one number put right; null where it has none or several, or is counted in something else. */
function amended(text: string, number: string, unit: string): string | null {
  const words = text.split(/\s+/);
  const [at, ...more] = numbersIn(words.map(plain));
  if (at === undefined || more.length > 0) return null;
  const after = words.slice(at.to).join(' ');
  if (unit !== '' && !`${after} `.toLowerCase().startsWith(`${unit.toLowerCase()} `)) return null;
  return [...words.slice(0, at.from), number, ...words.slice(at.to)].join(' ');
}

function numbersIn(words: readonly string[]): readonly Span[] {
  const found: Span[] = [];
  for (let from = 0; from < words.length; ) {
    const to = readNumbers(words, from)[0]?.end ?? from;
    if (to > from) found.push({ from, to });
    from = Math.max(to, from + 1);
  }
  return found;
}
