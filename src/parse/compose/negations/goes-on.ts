// "The rash has gone up the arms", "gone from the chest to the back": what spread or moved on is not over.

import type { Piece } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';
import type { Item } from '../sites/item.ts';

const ONWARD = /^(to|onto|into|up|over|across|through|all|down)$/;

/** True for a "gone" with a way straight behind it, or from one place to another. */
export function goesOn(items: readonly Item[], tokens: readonly Token[], piece: Piece, i: number): boolean {
  if (tokens[piece.to - 1]?.word !== 'gone' || tokens[piece.to - 1]?.pause !== '') return false;
  const straight = tokens[piece.to]?.word === 'right' ? 1 : 0;
  const next = tokens[piece.to + straight]?.word ?? '';
  if (ONWARD.test(next)) return true;
  const sites = items.slice(i + 1).filter((item) => item.type === 'site');
  const [from, to] = sites;
  if (next !== 'from' || from?.type !== 'site' || to?.type !== 'site') return false;
  return tokens.slice(from.phrase.to, to.phrase.to).some(({ word }) => /^(to|onto|into)$/.test(word));
}
