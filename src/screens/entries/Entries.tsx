// All entries, region by region in exam order, with the questions that stand between them on top.

import { sendTo } from '../frame/send-to.ts';
import { useTools } from '../frame/tools.ts';
import { type EntryGroup, groupEntries } from './by-region.ts';
import { EntryRow } from './EntryRow.tsx';
import { Questions } from './Questions.tsx';
import { Together } from './Together.tsx';

export function Entries() {
  const { derived } = useTools();
  const groups = groupEntries(derived.entries.value);
  if (groups.length === 0)
    return <p class="empty">No entries yet. What you say appears here, region by region.</p>;
  const open = groups.reduce((sum, group) => sum + group.open, 0);
  return (
    <>
      <p class="count">
        {open === 0 ? 'Nothing is left to check.' : `${open} to check.`} Left and right are the patient’s.
      </p>
      <nav class="jumps" aria-label="Regions with entries">
        {groups.map(({ id, title, open: mine }) => (
          <button key={id} type="button" class="jump" onClick={() => sendTo(`group-${id}`)}>
            {title}
            {mine > 0 && <span class="jump-count"> {mine}</span>}
          </button>
        ))}
      </nav>
      <Questions />
      {groups.map((group) => (
        <Group key={group.id} group={group} />
      ))}
    </>
  );
}

function Group({ group }: { readonly group: EntryGroup }) {
  const { title, standing, fallen } = group;
  return (
    <section class="group" aria-labelledby={`group-${group.id}`}>
      <h3 id={`group-${group.id}`} tabIndex={-1}>
        {title}
      </h3>
      <Together group={group} />
      <ul class="plain-list">
        {standing.map((entry) => (
          <EntryRow key={entry.id} entry={entry} />
        ))}
      </ul>
      {fallen.length > 0 && (
        <details class="fallen">
          <summary>{fallen.length} replaced or struck</summary>
          <ul class="plain-list">
            {fallen.map((entry) => (
              <EntryRow key={entry.id} entry={entry} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
