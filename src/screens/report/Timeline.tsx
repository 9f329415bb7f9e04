// The record by time: every entry, struck and replaced ones too, and the silences between them.

import { clock, dayOf, timelineLines } from '../../timeline/index.ts';
import { EntryWays } from '../entries/EntryWays.tsx';
import { useTools } from '../frame/tools.ts';

export function Timeline() {
  const { derived, desk } = useTools();
  const startedAt = derived.startedAt.value;
  const day = dayOf(startedAt);
  const unheard = desk.record.value?.exam.state.unheard ?? [];
  const lines = timelineLines({ startedAt, entries: derived.entries.value, unheard });
  return (
    <section class="timeline" aria-labelledby="timeline-title">
      <h3 id="timeline-title">Timeline</h3>
      <ol class="plain-list">
        {lines.map((line) => (
          <li key={line.entries.join() + line.at + line.state} class={`moment ${line.state}`}>
            <span class="when">{clock(line.at, day)}</span> <LineWay line={line} />
          </li>
        ))}
      </ol>
    </section>
  );
}

interface Line {
  readonly text: string;
  readonly entries: readonly string[];
}

/** A line of one entry opens it; of several, shows them first; of none (a gap) it only tells. */
function LineWay({ line: { text, entries } }: { readonly line: Line }) {
  const { changing } = useTools();
  const [only, ...others] = entries;
  if (only === undefined) return <span>{text}</span>;
  if (others.length === 0)
    return (
      <button
        type="button"
        class="line-way"
        onClick={() => {
          changing.value = only;
        }}
      >
        {text}
      </button>
    );
  return (
    <details class="line-fold">
      <summary>{text}</summary>
      <EntryWays ids={entries} />
    </details>
  );
}
