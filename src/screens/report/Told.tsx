// A line of a report opens to the entries it tells: what was heard, when, and whether it was confirmed.

import type { HandoffLine } from '../../handoff/index.ts';
import { brief, clock, dayOf } from '../../timeline/index.ts';
import { useTools } from '../frame/tools.ts';

const STATE_WORDS = {
  heard: 'unconfirmed',
  confirmed: 'confirmed',
  replaced: 'replaced',
  struck: 'struck',
} as const;

export function Told({ line }: { readonly line: HandoffLine }) {
  if (line.entries.length === 0) return <p>{line.text}</p>;
  return (
    <details class="told">
      <summary>{line.text}</summary>
      <Sources ids={line.entries} />
    </details>
  );
}

function Sources({ ids }: { readonly ids: readonly string[] }) {
  const { derived } = useTools();
  const day = dayOf(derived.startedAt.value);
  const entries = derived.entries.value.filter(({ id }) => ids.includes(id));
  return (
    <ul class="plain-list">
      {entries.map((entry) => (
        <li key={entry.id}>
          <span class="when">{clock(entry.at, day)}</span> {brief(entry)} ({STATE_WORDS[entry.state]}), heard
          as “{entry.heard}”
        </li>
      ))}
    </ul>
  );
}
