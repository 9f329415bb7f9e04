// A Glasgow Coma Scale whose parts are ones that it has and add up to its total; parts said apart are joined into one.

import type { GcsPart } from '../../../terms/index.ts';
import { hasTag, type Island, numberOf, tagOf } from '../../islands/island.ts';
import { isWholeWithin, type Read } from './vital-read.ts';

// Teasdale G, Jennett B. Lancet 1974;2:81-84: eye 1-4, verbal 1-5, motor 1-6 (from memory). "Not testable" leaves no total.
const MOST = { eye: 4, verbal: 5, motor: 6 } as const;
const TOTAL_BOUNDS = [3, 15] as const;

export interface Scores {
  readonly eye?: GcsPart;
  readonly verbal?: GcsPart;
  readonly motor?: GcsPart;
  readonly total?: number;
}

/** The total of these scores: the one said or their sum; none with a part not testable; `misfit` where the two differ. */
export function totalOf({ eye, verbal, motor, total }: Scores): number | 'misfit' | null {
  const parts = [eye, verbal, motor];
  const sum = parts.every((part): part is number => typeof part === 'number')
    ? parts.reduce((all, part) => all + part, 0)
    : null;
  // One of the numbers was misheard, and nobody can tell which.
  if (total !== undefined && sum !== null && total !== sum) return 'misfit';
  return parts.includes('NT') ? null : (total ?? sum);
}

/** The one short question about parts that do not make the total that was said with them; null where they do. */
export function misfitOf(scores: Scores): string | null {
  if (totalOf(scores) !== 'misfit') return null;
  const { eye, verbal, motor, total } = scores;
  const sum = Number(eye) + Number(verbal) + Number(motor);
  return `Eyes ${eye}, verbal ${verbal}, motor ${motor} make ${sum}, and ${total} was said: which is right?`;
}

/** The question of an island whose parts do not make its total; null for any other. */
export function misfitIn(island: Island): string | null {
  const part = (name: 'eye' | 'verbal' | 'motor') => {
    const said = tagOf(island, name);
    const score = said === null ? numberOf(island, name) : Number(said);
    const kept = score === null && hasTag(island, 'lost') ? MOST[name] : score;
    return isWholeWithin(kept, [1, MOST[name]]) ? { [name]: kept } : {};
  };
  const total = numberOf(island, 'total');
  return misfitOf({
    ...part('eye'),
    ...part('verbal'),
    ...part('motor'),
    ...(total === null ? {} : { total }),
  });
}

/** The coma scale of an island. */
export function gcsOf(island: Island): Read {
  const parts: { eye?: GcsPart; verbal?: GcsPart; motor?: GcsPart } = {};
  for (const part of ['eye', 'verbal', 'motor'] as const) {
    const said = tagOf(island, part);
    // "Fourteen, lost one for verbal": what was not lost is there.
    const kept = hasTag(island, 'lost') ? MOST[part] : null;
    const score = said === 'NT' ? 'NT' : said === null ? (numberOf(island, part) ?? kept) : Number(said);
    if (score === null) continue;
    if (score !== 'NT' && !isWholeWithin(score, [1, MOST[part]])) return null;
    parts[part] = score;
  }
  const said = numberOf(island, 'total');
  if (said !== null && !isWholeWithin(said, TOTAL_BOUNDS)) return null;
  const total = totalOf({ ...parts, ...(said === null ? {} : { total: said }) });
  if (total === 'misfit' || (total === null && Object.keys(parts).length === 0)) return null;
  return {
    reading: { vital: 'gcs', value: { ...parts, ...(total === null ? {} : { total }) } },
    known: {
      ...(said === null && total !== null ? { total: 'inferred' as const } : {}),
      ...(hasTag(island, 'words') ? { value: 'inferred' as const } : {}),
    },
  };
}
