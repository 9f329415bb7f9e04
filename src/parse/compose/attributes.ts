// What is said of a finding: how bad, how large, how many, what like, and where on the site.

import type { Part, SeverityWord } from '../../terms/index.ts';
import { numberOf, tagOf, tagsOf } from '../islands/island.ts';
import { marked, type Piece, readingOf } from '../pieces/piece.ts';
import { inRecordUnit, isUnit } from '../units.ts';
import { partsOf } from './site-phrase.ts';

export interface Attributes {
  severity?: SeverityWord | number;
  size?: { readonly value: number; readonly unit: 'cm' };
  count?: number;
  quality?: readonly string[];
  part?: readonly Part[];
}

/** What one piece says of a finding, or null where it says nothing. */
export function attributesOf(piece: Piece): Attributes | null {
  if (piece.role === 'part') {
    const part = partsOf(piece);
    return part.length > 0 ? { part } : null;
  }
  if (piece.role === 'vital' && piece.islands[0]?.rule === 'vitals.pain-score') return scoreOf(piece);
  if (piece.role !== 'attribute') return null;
  const size = readingOf(piece, 'findings.size');
  if (size !== null) return sizeOf(piece);
  const scale = readingOf(piece, 'findings.scale');
  if (scale !== null) {
    const severity = numberOf(scale, 'severity');
    return severity !== null && severity >= 0 && severity <= 10 ? { severity } : null;
  }
  const severity = readingOf(piece, 'findings.severity');
  if (severity !== null) return { severity: tagOf(severity, 'severity') as SeverityWord };
  const quality = readingOf(piece, 'findings.quality');
  if (quality !== null) return { quality: tagsOf(quality, 'quality') };
  return marked(piece, 'extent') ? {} : null;
}

function scoreOf(piece: Piece): Attributes | null {
  const island = piece.islands[0];
  const score = island === undefined ? null : numberOf(island, 'score');
  return score === null || score < 0 || score > 10 ? null : { severity: score };
}

function sizeOf(piece: Piece): Attributes | null {
  const island = readingOf(piece, 'findings.size');
  if (island === null) return null;
  const fixed = tagOf(island, 'size');
  // "Two by three" keeps the longer side: the contract has one length.
  const value = fixed === null ? Math.max(...island.slots.map((slot) => slot.value)) : Number(fixed);
  const word =
    { cm: 'centimetre', mm: 'millimetre', inch: 'inch' }[tagsOf(island, 'unit').at(-1) ?? ''] ?? '';
  const converted = isUnit(word) ? inRecordUnit({ value, unit: word }) : null;
  // Nothing on a body is longer than the body; the words then stay as a note.
  return converted === null || converted.value <= 0 || converted.value > 200
    ? null
    : { size: { value: converted.value, unit: 'cm' } };
}

/** Two sets joined; what the later says of the same thing wins, qualities and parts add up. */
export const joinAttributes = (a: Attributes, b: Attributes): Attributes => ({
  ...a,
  ...b,
  ...(a.quality || b.quality ? { quality: [...new Set([...(a.quality ?? []), ...(b.quality ?? [])])] } : {}),
  ...(a.part || b.part ? { part: [...new Set([...(a.part ?? []), ...(b.part ?? [])])] } : {}),
});
