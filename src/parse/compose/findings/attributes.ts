// What is said of a finding: how bad, how large, how many, what like, and where on the site.

import type { Part, SeverityWord } from '../../../terms/index.ts';
import { hasTag, type Island, numberOf, tagOf, tagsOf } from '../../islands/island.ts';
import { figureIn, isLikely, marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { inRecordUnit, isUnit } from '../../units.ts';
import { hasRole, type Item, pieceOf } from '../sites/item.ts';
import { partsOf } from '../sites/said-side.ts';

export interface Attributes {
  /** a word, or the patient's own 0 to 10 */
  readonly severity?: SeverityWord | number;
  readonly size?: { readonly value: number; readonly unit: 'cm' };
  readonly count?: number;
  readonly quality?: readonly string[];
  readonly part?: readonly Part[];
}

/** What one piece says of a finding, or null where it says nothing. */
export function attributesOf(piece: Piece): Attributes | null {
  if (piece.role === 'part') {
    const part = partsOf(piece);
    return part.length > 0 ? { part } : null;
  }
  if (piece.role === 'vital' && piece.islands[0]?.rule === 'vitals.pain-score')
    return scored(numberOf(piece.islands[0], 'score'));
  if (piece.role !== 'attribute') return null;
  const size = readingOf(piece, 'findings.size');
  if (size !== null) return sizeOf(size);
  const area = readingOf(piece, 'findings.area');
  if (area !== null) return areaOf(area);
  const scale = readingOf(piece, 'findings.scale');
  if (scale !== null) return scored(numberOf(scale, 'severity'));
  const severity = readingOf(piece, 'findings.severity');
  if (severity !== null) return { severity: tagOf(severity, 'severity') as SeverityWord };
  const quality = readingOf(piece, 'findings.quality');
  if (quality !== null) return { quality: tagsOf(quality, 'quality') };
  return marked(piece, 'extent') ? {} : null;
}

const scored = (score: number | null): Attributes | null =>
  score === null || score < 0 || score > 10 ? null : { severity: score };

const LENGTHS: Readonly<Record<string, string>> = { cm: 'centimetre', mm: 'millimetre', inch: 'inch' };

// Nothing on a body is longer than the body; the words then stay as a note.
const LONGEST_CM = 200;

function sizeOf(island: Island): Attributes | null {
  const fixed = tagOf(island, 'size');
  // "Two by three" keeps the longer side: the contract has one length.
  const value = fixed === null ? Math.max(...island.slots.map((slot) => slot.value)) : Number(fixed);
  const unit = LENGTHS[tagsOf(island, 'unit').at(-1) ?? ''] ?? '';
  const converted = isUnit(unit) ? inRecordUnit({ value, unit }) : null;
  return converted === null || converted.value <= 0 || converted.value > LONGEST_CM
    ? null
    : { size: { value: converted.value, unit: 'cm' } };
}

// A body has a hundred palms to it, more or less.
const MOST_PERCENT = 100;

function areaOf(island: Island): Attributes | null {
  const [palms, percent] = [numberOf(island, 'palms'), numberOf(island, 'percent')];
  const value = palms ?? percent;
  if (value === null || value <= 0 || value > MOST_PERCENT) return null;
  const size = palms === null ? `${value} percent` : `${value} ${value === 1 ? 'palm' : 'palms'}`;
  // "Both arms, nine percent each": what is told of each is not that of all together.
  return { quality: [hasTag(island, 'each') ? `${size} each` : size] };
}

const MOST_COUNTED = 20;

/** A small whole number straight before a finding's name counts it: "two abrasions". */
export function countAt(items: readonly Item[], i: number): Attributes | null {
  const piece = pieceOf(items[i]);
  const count = piece?.role === 'figure' ? figureIn(piece) : null;
  if (count === null || !Number.isInteger(count) || count < 1 || count > MOST_COUNTED) return null;
  const at = items.findIndex((item, k) => k > i && !hasRole(item, 'attribute'));
  const next = pieceOf(items[at]);
  // "Two wounds, one at the hip and one at the knee": there are not two at the hip.
  const after = pieceOf(items[at + 1]);
  if (count > 1 && after?.role === 'figure' && figureIn(after) === 1) return null;
  return next?.role === 'finding' && next.islands[0] !== undefined && !isLikely(next, 'adj')
    ? { count }
    : null;
}

/** Two sets joined; what the later says of the same thing wins, qualities and parts add up. */
export const joinAttributes = (a: Attributes, b: Attributes): Attributes => ({
  ...a,
  ...b,
  ...(a.quality || b.quality ? { quality: [...new Set([...(a.quality ?? []), ...(b.quality ?? [])])] } : {}),
  ...(a.part || b.part ? { part: [...new Set([...(a.part ?? []), ...(b.part ?? [])])] } : {}),
});
