// Whether a finding says that a bone is broken or a joint is out: in so many words, or by signs that are taken for it.

import type { Finding, Site } from '../terms/index.ts';
import type { Chart, EntryOf } from './chart.ts';

/** The words of a finding's quality that name it. */
export const BREAKS: readonly string[] = ['fracture', 'open-fracture', 'dislocation'];

const FRACTURES: readonly string[] = ['fracture', 'open-fracture'];

/** Signs on which a fracture is suspected; common practice, no source. */
export const BREAK_SIGNS: readonly Finding[] = ['deformity', 'crepitus', 'instability'];

/** A fracture or a dislocation named as such. */
export const isBreak = (entry: { readonly kind: string; readonly quality?: readonly string[] }): boolean =>
  entry.kind === 'finding' && (entry.quality ?? []).some((word) => BREAKS.includes(word));

/** A fracture named as such; a dislocation is none. */
export const isFracture = (entry: EntryOf<'finding'>): boolean =>
  (entry.quality ?? []).some((word) => FRACTURES.includes(word));

/** A dislocation named as such, which is not also called a fracture. */
export const isDislocation = (entry: EntryOf<'finding'>): boolean =>
  (entry.quality ?? []).includes('dislocation') && !isFracture(entry);

/** What was found at exactly these sites that says or suggests a fracture. */
export const breaksAt = (chart: Chart, sites: readonly Site[]): readonly EntryOf<'finding'>[] =>
  sites
    .flatMap((site) => chart.foundAt(site))
    .filter((entry) => isFracture(entry) || (BREAK_SIGNS.includes(entry.finding) && !isDislocation(entry)));

/** What was found at exactly these sites that names a fracture. */
export const fracturesAt = (chart: Chart, sites: readonly Site[]): readonly EntryOf<'finding'>[] =>
  sites.flatMap((site) => chart.foundAt(site)).filter(isFracture);
