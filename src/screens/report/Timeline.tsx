// The record by time: every entry, struck and replaced ones too, and the silences between them.

import { clock, dayOf, timelineLines } from '../../timeline/index.ts';
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
            <span class="when">{clock(line.at, day)}</span> <span>{line.text}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
