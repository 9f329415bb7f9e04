// Confirms the plain entries of one region at once, after showing which they are; all others are confirmed one by one.

import { useState } from 'preact/hooks';
import { confirm } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import type { EntryGroup } from './by-region.ts';
import { EntryLine } from './EntryLine.tsx';

export function Together({ group }: { readonly group: EntryGroup }) {
  const { desk } = useTools();
  // The very entries that were looked at are confirmed, not what has been added since.
  const [looking, setLooking] = useState<readonly string[] | null>(null);
  const { together, standing, title } = group;
  if (looking === null) {
    if (together.length < 2) return null;
    return (
      <button type="button" class="button wide" onClick={() => setLooking(together)}>
        Check {together.length} plain ones together
      </button>
    );
  }
  const listed = standing.filter(({ id, state }) => looking.includes(id) && state === 'heard');
  return (
    <div class="together">
      <p>
        {title}: are all of these right? Sides not said, negatives, numbers, allergies and drugs are not among
        them.
      </p>
      <ul>
        {listed.map((entry) => (
          <li key={entry.id}>
            <EntryLine entry={entry} />
          </li>
        ))}
      </ul>
      <div class="choices">
        <button
          type="button"
          class="button primary"
          onClick={() => {
            confirm(
              desk,
              listed.map(({ id }) => id),
            );
            setLooking(null);
          }}
        >
          Confirm all {listed.length}
        </button>
        <button type="button" class="button" onClick={() => setLooking(null)}>
          Not yet
        </button>
      </div>
    </div>
  );
}
