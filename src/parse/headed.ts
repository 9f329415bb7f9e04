// "Pupils. Unequal. Left six, right three.": a sign's name as a sentence of its own heads the short sentences behind it.

import { cover } from './islands/cover.ts';
import { wordsOf } from './islands/match.ts';
import type { Branch } from './islands/tree.ts';
import { readNumbers } from './numbers/index.ts';
import { marked, type Role } from './pieces/piece.ts';
import { piecesOf } from './pieces/roles.ts';
import type { Token } from './token.ts';

const MOST_WORDS_OF_NAME = 3;
const MOST_WORDS = 5;
const MOST_SENTENCES = 5;

/** The tokens, where a full stop behind such a name is a comma if all the words to the next one are a single sign. */
export function withHeaded(root: Branch, tokens: readonly Token[]): readonly Token[] {
  const ends = tokens.flatMap(({ pause }, at) =>
    pause === 'end' || at === tokens.length - 1 ? [at + 1] : [],
  );
  if (ends.length < 2) return tokens;
  const joined = [...tokens];
  for (let first = 0; first < ends.length - 1; ) {
    const count = headedFrom(root, tokens, ends, first);
    for (const end of ends.slice(first, first + count)) {
      const token = joined[end - 1];
      if (token !== undefined) joined[end - 1] = { ...token, pause: 'pause' };
    }
    first += count + 1;
  }
  return joined;
}

/** How many sentences behind the one at `first` belong to the sign that it names. */
function headedFrom(root: Branch, tokens: readonly Token[], ends: readonly number[], first: number): number {
  const from = ends[first - 1] ?? 0;
  const name = tokens.slice(from, ends[first]).map(({ word }) => word);
  if (name.length > MOST_WORDS_OF_NAME || name.some((_, at) => readNumbers(name, at).length > 0)) return 0;
  if (isPlace(root, tokens.slice(ends[first - 2] ?? 0, from))) return 0;
  let most = 0;
  while (most < MOST_SENTENCES && isShort(ends, first + most + 1)) most++;
  for (let count = most; count > 0; count--) {
    const said = tokens
      .slice(from, ends[first + count])
      .map((token): Token => (token.pause === 'end' ? { ...token, pause: 'pause' } : token));
    const [only, ...others] = piecesOf(cover(root, said, wordsOf(said)), said.length);
    if (only?.role === 'vital' && others.length === 0 && !marked(only, 'heading')) return count;
  }
  return 0;
}

// "Left foot. Skin. Cool.": a check of the foot.
function isPlace(root: Branch, said: readonly Token[]): boolean {
  const pieces = said.length === 0 ? [] : piecesOf(cover(root, said, wordsOf(said)), said.length);
  return pieces.some(({ role }) => role === 'site') && pieces.every(({ role }) => PLACES.has(role));
}

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk']);

const isShort = (ends: readonly number[], at: number): boolean => {
  const [from, to] = [ends[at - 1], ends[at]];
  return from !== undefined && to !== undefined && to - from <= MOST_WORDS;
};
