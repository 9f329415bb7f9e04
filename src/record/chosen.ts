// Which entries of a group a slot change is meant for: those that share the slot with the last one said.

import { isPaired } from '../terms/index.ts';
import type { SlotChange } from './change/change.ts';
import type { Entry } from './entry.ts';

/**
 * "No deformity or swelling of the left wrist; no, the right" means both; "grazes on forearm and hand, make that the
 * wrist" means the hand alone, and "swelling and bruising, make that a cut" the bruising.
 */
export function chosen(entries: readonly Entry[], change: SlotChange): readonly Entry[] {
  switch (change.change) {
    case 'side':
      return sideMates(entries.filter((entry) => 'side' in entry));
    case 'site':
      return mates(
        entries.filter((entry) => 'site' in entry || entry.kind === 'care'),
        (entry) => ('site' in entry ? entry.site : null),
      );
    case 'finding':
      return mates(
        entries.filter((entry) => entry.kind === 'finding'),
        (entry) => (entry.kind === 'finding' ? entry.finding : null),
      );
    case 'present':
      return entries;
    case 'number':
      return entries.toReversed();
  }
}

function mates(entries: readonly Entry[], slot: (entry: Entry) => unknown): readonly Entry[] {
  const last = entries.at(-1);
  return last === undefined ? [] : entries.filter((entry) => slot(entry) === slot(last));
}

/** All where one side was said of all; else those that share place and side with the last of them. */
function sideMates(entries: readonly Entry[]): readonly Entry[] {
  const paired = entries.filter(
    (entry) => !('site' in entry) || entry.site === undefined || isPaired(entry.site),
  );
  const sided = paired.length > 0 ? paired : entries;
  const sides = new Set(sided.map((entry) => ('side' in entry ? entry.side : null)));
  if (sides.size <= 1) return sided;
  return mates(sided, (entry) =>
    'side' in entry ? `${'site' in entry ? entry.site : ''} ${entry.side}` : null,
  );
}
