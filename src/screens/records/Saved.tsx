// Says whether what stands on the screen is on the disk: "kept" only once the writing is complete.

import { useTools } from '../frame/tools.ts';

export function Saved() {
  const { desk } = useTools();
  const record = desk.record.value;
  if (record === null) return null;
  if (desk.role.value === 'follows') return <span class="saved">follows</span>;
  const { fault, kept } = desk.keeper;
  if (fault.value !== null)
    return (
      <span class="saved not" role="status">
        NOT KEPT
      </span>
    );
  const { events, state } = record.exam;
  const all = kept.value?.record === record.facts.id && kept.value.events === events.length;
  const said = state.utterances.length;
  return (
    <span class="saved" data-said={all ? said : undefined}>
      {all ? `kept: ${said}` : 'keeping …'}
    </span>
  );
}
