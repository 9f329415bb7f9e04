// Confirms several plain entries at once, after showing on a sheet which they are; all others are confirmed one by one.

import { useState } from 'preact/hooks';
import type { Entry } from '../../record/index.ts';
import { confirm } from '../desk/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { EntryLine } from './EntryLine.tsx';

interface Props {
  /** where they stand: a region, or the last words */
  readonly title: string;
  /** those that may go together */
  readonly entries: readonly Entry[];
}

/** The way to the sheet; nothing where fewer than two may go together. */
export function TogetherWay({ title, entries }: Props) {
  // The very entries that were looked at are confirmed, not what has been added since.
  const [looking, setLooking] = useState<readonly string[] | null>(null);
  return (
    <>
      {entries.length > 1 && (
        <button
          type="button"
          class="button together-way"
          aria-label={`Check ${entries.length} plain ones together: ${title}`}
          onClick={() => setLooking(entries.map(({ id }) => id))}
        >
          Check {entries.length} plain ones
        </button>
      )}
      {looking !== null && <Together title={title} ids={looking} close={() => setLooking(null)} />}
    </>
  );
}

interface SheetProps {
  readonly title: string;
  readonly ids: readonly string[];
  readonly close: () => void;
}

function Together({ title, ids, close }: SheetProps) {
  const { desk, derived } = useTools();
  const listed = derived.entries.value.filter(({ id, state }) => ids.includes(id) && state === 'heard');
  return (
    <Sheet title={`${title}: are all of these right?`} close={close} closeWords="Not yet">
      <p class="small-print">What has a side, negatives, numbers, allergies and drugs are not among them.</p>
      <ul class="plain-list together">
        {listed.map((entry) => (
          <li key={entry.id}>
            <EntryLine entry={entry} />
          </li>
        ))}
      </ul>
      <button
        type="button"
        class="button primary wide"
        onClick={() => {
          confirm(
            desk,
            listed.map(({ id }) => id),
          );
          close();
        }}
      >
        Confirm all {listed.length}
      </button>
    </Sheet>
  );
}
