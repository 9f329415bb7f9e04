// The entries of one region; of a very long exam the latest are shown first and the earlier ones wait for a press.

import { useState } from 'preact/hooks';
import type { Entry } from '../../record/index.ts';
import { useRows } from '../steady/rows.ts';
import type { EntryGroup } from './by-region.ts';
import { EntryRow } from './EntryRow.tsx';
import { TogetherWay } from './Together.tsx';

/** Rows drawn of one region before somebody asks for more: enough for any exam but a day-long one. */
const ROWS = 40;

export function Group({ group }: { readonly group: EntryGroup }) {
  const { title, standing, fallen, together } = group;
  const [wanted, setWanted] = useState(ROWS);
  const [looking, setLooking] = useState(false);
  const row = useRows((entry: Entry) => <EntryRow key={entry.id} entry={entry} />);
  const hidden = Math.max(0, standing.length - wanted);
  return (
    <section class="group" aria-labelledby={`group-${group.id}`}>
      <h3 id={`group-${group.id}`} tabIndex={-1}>
        {title}
      </h3>
      <TogetherWay title={title} entries={together} />
      {hidden > 0 && (
        <button type="button" class="button wide" onClick={() => setWanted(wanted + ROWS)}>
          Show {Math.min(ROWS, hidden)} of {hidden} earlier ones
        </button>
      )}
      <ul class="plain-list">{standing.slice(hidden).map(row)}</ul>
      {fallen.length > 0 && (
        <details class="fallen" onToggle={(event) => setLooking(event.currentTarget.open)}>
          <summary>{fallen.length} replaced or struck</summary>
          {looking && <ul class="plain-list">{fallen.map(row)}</ul>}
        </details>
      )}
    </section>
  );
}
