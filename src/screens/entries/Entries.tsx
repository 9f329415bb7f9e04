// All entries, region by region in exam order, with the questions that stand between them on top.

import { sendTo } from '../frame/send-to.ts';
import { useTools } from '../frame/tools.ts';
import { useHeldEntries } from '../steady/hold.ts';
import { useRows } from '../steady/rows.ts';
import { SteadyList } from '../steady/SteadyList.tsx';
import { type EntryGroup, groupEntries } from './by-region.ts';
import { Group } from './Group.tsx';
import { Questions } from './Questions.tsx';

export function Entries() {
  const { derived, hold } = useTools();
  const groups = groupEntries(useHeldEntries(derived.entries.value, hold.value));
  const section = useRows((group: EntryGroup) => <Group key={group.id} group={group} />);
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
      <SteadyList>
        <Questions />
        {groups.map(section)}
      </SteadyList>
    </>
  );
}
