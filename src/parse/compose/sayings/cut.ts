// "Knees not swollen and no pain in the neck": each part that says something whole is read by itself, so that no place, side or
// denial of the one gets into the other.

import { isLikely, marked, type Piece, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { isUsual } from '../care/usual.ts';
import { noneAt } from '../negations/none-also.ts';
import { opensBehindNow } from './behind-now.ts';
import { isJoin, isLate, mayEnd, mayRunOn } from './ends.ts';
import { kindOf, mayGoOn } from './goes-on.ts';
import { opensNone } from './none-behind.ts';
import { FAR, isFarSide, namesAtPlace, type Opening, openingOf } from './opens.ts';
import { denies, has, isOfItself, isStated, namesIt } from './said.ts';
import { endsInList, saysWhole } from './whole.ts';

/** The parts of these pieces, without the "and" or the "but" between them; one where nothing parts them. */
export function sayingsIn(pieces: readonly Piece[], tokens: readonly Token[]): readonly (readonly Piece[])[] {
  const parts: (readonly Piece[])[] = [];
  let start = 0;
  for (let k = 1; k < pieces.length; k++) {
    // "Swelling no, bruising yes": each thing has its own answer behind it.
    const checked = pieces[k - 1];
    if (checked !== undefined && marked(checked, 'checked')) {
      parts.push(pieces.slice(start, k));
      start = k;
      continue;
    }
    if (opensBehindNow(pieces.slice(start, k), pieces, k, tokens)) {
      parts.push(pieces.slice(start, k));
      start = k;
      continue;
    }
    const piece = pieces[k];
    // "Pain in the neck no pain in the back yes": an answer is of what stands before it, and opens nothing.
    const begins = piece !== undefined && marked(piece, 'checked') ? null : beginsAt(pieces, tokens, k);
    if (begins === null) continue;
    const next = pieces.slice(begins, begins + FAR);
    const left = pieces.slice(start, k);
    const opening =
      openingOf(next, tokens) ??
      (needsNoPlace(left) ? openingPast(next, tokens) : null) ??
      (isDenial(left) && noneAt(next, tokens) > 0 ? 'stated' : null) ??
      (opensNone(left, next, tokens) ? 'place' : null);
    if (opening === null) continue;
    if (isOfCareBefore(left, next, tokens)) continue;
    const [before, joint] = [pieces[k - 1], pieces[begins - 1]];
    const isParted = begins > k || (before !== undefined && isPaused(tokens, before));
    if (
      !isParted &&
      (isOwnPlace(left, next) ||
        endsOpen(before, tokens) ||
        leadsOn(left, tokens) ||
        (has(left, 'history') && isOfTold(next, tokens)))
    )
      continue;
    if (!saysWhole(left, next, isParted, opening) || endsInList(left)) continue;
    if (!mayGoOn(opening, kindOf(left, joint !== undefined && marked(joint, 'contrast')), left, next))
      continue;
    parts.push(left);
    start = begins;
    k = begins;
  }
  parts.push(pieces.slice(start));
  return parts;
}

// "No tenderness in the neck | none in the chest".
const isDenial = (left: readonly Piece[]): boolean =>
  left.findIndex(denies) >= 0 &&
  left.findIndex(denies) < left.findIndex(({ role }) => role === 'finding') &&
  !left.some((piece) => marked(piece, 'contrast'));

// "No JVD left ribs crunching": what has a place by itself has no use for the one behind it.
function needsNoPlace(left: readonly Piece[]): boolean {
  const last = left.findLast(isStated);
  return last?.role === 'finding' && isOfItself(last);
}

// "Kneecap was out to the side reduced it": what was done was done there.
function openingPast(next: readonly Piece[], tokens: readonly Token[]): Opening | null {
  const [first] = next;
  if (first?.role === 'care' && namesIt(first, tokens)) return 'itself';
  return namesAtPlace(next, tokens) ? 'place' : null;
}

// "Cleaned the left hand with a litre of saline", "takes two puffs of his inhaler": no care of its own.
function isOfCareBefore(left: readonly Piece[], next: readonly Piece[], tokens: readonly Token[]): boolean {
  const care = next.find(({ role }) => role !== 'small' && role !== 'figure' && role !== 'attribute');
  if (care?.role !== 'care') return false;
  if (marked(care, 'joined')) return true;
  const lead = [tokens[care.from - 1]?.word, tokens[care.from]?.word];
  return (has(left, 'care') && lead.includes('with')) || (has(left, 'history') && isUsual(tokens, care));
}

// Past a comma, an "and" or a "but"; null where the piece begins nothing.
function beginsAt(pieces: readonly Piece[], tokens: readonly Token[], k: number): number | null {
  const [before, piece] = [pieces[k - 1], pieces[k]];
  if (before === undefined || piece === undefined) return null;
  if (isJoin(piece)) return k + 1 < pieces.length ? k + 1 : null;
  if (isPaused(tokens, before)) return isJoin(before) ? null : k;
  // Heard without a pause: "left hand numb tourniquet on the right thigh".
  const loud = pieces.slice(k, k + FAR).find(({ role }) => role !== 'small');
  if (loud !== undefined && isLate(loud) && !isFarSide(loud)) return null;
  return mayEnd(before, piece, tokens) && mayRunOn(piece, tokens) ? k : null;
}

// "On the left side of the | skull": the side leads to its place.
const endsOpen = (before: Piece | undefined, tokens: readonly Token[]): boolean =>
  (before?.role === 'side' || before?.role === 'part') &&
  /^(of|the|his|her|their)$/.test(tokens[before.to - 1]?.word ?? '');

// "Flail segment right chest with bruising": the place behind it is the one that the finding has by itself, and tells its side.
function isOwnPlace(left: readonly Piece[], next: readonly Piece[]): boolean {
  if (has(left, 'site')) return false;
  const at = left.flatMap((piece) => (tagIn(piece, 'findings.finding', 'at') ?? '').split('+'));
  const site = next.find(({ role }) => role === 'site');
  const named = site === undefined ? null : tagIn(site, 'sites', 'site');
  return named !== null && at.includes(named);
}

// "Moves both | feet": a check that leads to its place, with none in its breath yet.
function leadsOn(left: readonly Piece[], tokens: readonly Token[]): boolean {
  const last = left.at(-1);
  if (isAttributive(left, tokens)) return true;
  if (last?.role !== 'csm' || !(marked(last, 'ends') || marked(last, 'leads'))) return false;
  const start = left.findLastIndex((piece) => isJoin(piece) || isPaused(tokens, piece));
  return !left.slice(start + 1).some(({ role }) => role === 'site');
}

// "Wrist fine, swollen | left thumb": with nothing before it in its breath it is said of the place behind it.
function isAttributive(left: readonly Piece[], tokens: readonly Token[]): boolean {
  const last = left.at(-1);
  if (last?.role !== 'finding' || !isLikely(last, 'adj') || isLikely(last, 'predicate')) return false;
  const before = left.findLast((piece) => piece !== last && piece.role !== 'attribute');
  return before !== undefined && isPaused(tokens, before);
}

// "Landed on the left hip", "hurt his back", "fell on an outstretched hand right wrist swollen": the place belongs to what is told.
const isOfTold = ([first, second]: readonly Piece[], tokens: readonly Token[]): boolean =>
  first !== undefined &&
  (first.role === 'site' || first.role === 'side') &&
  (/^(the|his|her|their|my|a|an)$/.test(tokens[first.from]?.word ?? '') ||
    /^(the|his|her|their|my|a|an|on|of|to|in)$/.test(tokens[first.from - 1]?.word ?? '') ||
    (first.role === 'site' && second?.role === 'side'));
