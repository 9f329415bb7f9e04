// The words that say what was given: a drug with its dose, or whatever follows a bare "gave".

import { hasTag, type Island, tagOf } from '../../islands/island.ts';
import { isLikely, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, type Span } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Item, pieceOf } from '../sites/item.ts';

const REMEDY: ReadonlySet<Role> = new Set(['unknown', 'figure', 'small', 'attribute']);

/** "Gave him ‹some drug› by mouth": past the last word after a bare "gave" that is its text; else past the care itself. */
export function endOfRemedy(
  tokens: readonly Token[],
  items: readonly Item[],
  i: number,
  piece: Piece,
  island: Island,
): number {
  if (!hasTag(island, 'takes')) return piece.to;
  let end = piece.to;
  let named = false;
  for (const item of items.slice(i + 1)) {
    const next = pieceOf(item);
    if (next === null || isPaused(tokens, { to: end })) break;
    // "Oral glucose" is given here, and not measured.
    const isNamed = next.role === 'vital' && isLikely(next, 'heading');
    if (!REMEDY.has(next.role) && !isNamed) break;
    end = next.to;
    named ||= next.role === 'unknown' || isNamed;
  }
  return named ? end : piece.to;
}

/** Where the text of care lies, and whether it has one: a medication has, and what was said with a number. */
export function textOfCare(
  tokens: readonly Token[],
  items: readonly Item[],
  i: number,
  piece: Piece,
  island: Island,
): Span & { readonly says: boolean } {
  const isMedication = tagOf(island, 'care') === 'medication';
  return {
    from: isMedication ? startOfRemedy(tokens, piece, island) : piece.from,
    to: endOfRemedy(tokens, items, i, piece, island),
    says: isMedication || island.slots.length > 0 || saysHowMuch(tokens, piece, island),
  };
}

// "Half a litre of saline", "another bag": an amount without a number.
const saysHowMuch = (tokens: readonly Token[], { from, to }: Span, island: Island): boolean =>
  /^(fluids|food)$/.test(tagOf(island, 'care') ?? '') &&
  tokens.slice(from, to).some(({ word }) => /^(litre|liter|bag|tube)$/.test(word));

const GIVING =
  /^(gave|given|giving|administered|administering|pushed|pushing|hung|hanging|started|repeated|used|delivered|bolused|i|we|have|been|was|just|had|took|taken|has|got|he|she|him|her|them|a|an|some|the|of|about)$/;

// "A gram of", "a couple of": the article is the number.
const MEASURE = /^(hundred|couple|half|gram|mil|milligram|tablet|puff|spray|ampoule|vial|shot|neb)$/;

function startOfRemedy(tokens: readonly Token[], piece: Piece, island: Island): number {
  if (hasTag(island, 'takes')) return island.slots[0]?.from ?? piece.to;
  // "Gave four milligrams of it" begins at the dose, "gave him paracetamol one gram" at the drug.
  const wordAt = (at: number): string => tokens[at]?.word ?? '';
  const most = Math.min(piece.to - 1, island.slots[0]?.from ?? piece.to);
  let from = piece.from;
  const opensMeasure = (at: number): boolean => /^an?$/.test(wordAt(at)) && MEASURE.test(wordAt(at + 1));
  while (from < most && GIVING.test(wordAt(from)) && !opensMeasure(from)) from++;
  return from;
}
