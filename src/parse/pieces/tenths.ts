// "Thirty eight five": two figures in one breath that are one temperature.

import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { figureIn, type Piece } from './piece.ts';

// Whole degrees of a body, in Celsius and in Fahrenheit.
const isWarm = (value: number): boolean => (value >= 24 && value <= 44) || (value >= 80 && value <= 112);

/** True where the second figure may be the tenths of the first. */
export function isTenths(whole: Piece, tenths: Piece, tokens: readonly Token[]): boolean {
  const [degrees, part] = [figureIn(whole), figureIn(tenths)];
  if (degrees === null || part === null || isPaused(tokens, whole)) return false;
  return Number.isInteger(degrees) && isWarm(degrees) && Number.isInteger(part) && part >= 0 && part <= 9;
}
