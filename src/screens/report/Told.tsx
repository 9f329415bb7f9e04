// A line of a report opens to the entries it tells, each of them leading to where it can be looked at and changed.

import type { HandoffLine } from '../../handoff/index.ts';
import { EntryWays } from '../entries/EntryWays.tsx';

export function Told({ line }: { readonly line: HandoffLine }) {
  if (line.entries.length === 0) return <p>{line.text}</p>;
  return (
    <details class="told">
      <summary>{line.text}</summary>
      <EntryWays ids={line.entries} />
    </details>
  );
}
