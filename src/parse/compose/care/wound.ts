// "Irrigated the graze on the right knee": the words of the care take in what it is for, and that is there as well.

import type { Finding } from '../../../terms/index.ts';
import { type Island, tagOf } from '../../islands/island.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import type { SitePhrase } from '../sites/item.ts';
import { knownSide } from '../sites/side.ts';
import type { Said } from '../talk.ts';

/** What the care is for, at the places that were named beside it; nothing where it was told with its place before. */
export function woundsOf(
  island: Island,
  phrases: readonly SitePhrase[],
  { from, to }: { readonly from: number; readonly to: number },
): readonly Said[] {
  const wound = tagOf(island, 'wound') as Finding | null;
  if (wound === null) return [];
  return phrases
    .flatMap(({ sites }) => sites)
    .map((ref) => ({
      statement: findingStatement(wound, ref, true, {}),
      known: knownSide(ref.sideKnown),
      from,
      to,
    }));
}
