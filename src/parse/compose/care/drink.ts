// "Hot tea on his thigh", "a pan of hot water", "warm water soak": what is warm and could be drunk was given to nobody there.

import type { Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Item, pieceOf } from '../sites/item.ts';

const POURED =
  /^(pulled|tipped|knocked|spilled|spilt|spilling|dropped|splashed|poured|scalded|burned|burnt|sat|stood|washed|rinsed|bathed|soaked|soaking|bathing|dipped|held)$/;
const VESSEL = /^(pan|pot|kettle|saucepan|bucket|basin|bath|bowl|tub|tray|sink)$/;

/** True where a warm drink that is only named was given: it is at no place of the body, and nothing was done with it but that. */
export function isDrunk(
  tokens: readonly Token[],
  items: readonly Item[],
  i: number,
  piece: Piece,
  hasSite: boolean,
): boolean {
  if (hasSite) return false;
  // "Hot water on the sting".
  if (/^(on|over|around|under|round)$/.test(tokens[piece.to - 1]?.word ?? '') && !isPaused(tokens, piece))
    return piece.to === tokens.length;
  // "Warm water soak", "hot water tap".
  const next = pieceOf(items[i + 1]);
  if (next?.role === 'unknown' && next.from === piece.to && !isPaused(tokens, piece)) return false;
  const from = tokens.slice(0, piece.from).findLastIndex(({ pause }) => pause !== '') + 1;
  return !tokens.slice(from, piece.from).some(({ word }) => POURED.test(word) || VESSEL.test(word));
}
