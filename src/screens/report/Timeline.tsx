// The record by time: every entry, struck and replaced ones too, and the silences between them. Of a very long one the
// latest lines are drawn, and the earlier ones when they are asked for.

import { useState } from 'preact/hooks';
import { clock, type Day, dayOf, timelineLines } from '../../timeline/index.ts';
import { EntryFold } from '../entries/EntryFold.tsx';
import { useTools } from '../frame/tools.ts';
import { useAfterPaint } from '../later/after-paint.ts';
import { useRows } from '../steady/rows.ts';

type Line = ReturnType<typeof timelineLines>[number];

/** Lines drawn before somebody asks for more: enough for any exam but a day-long one. */
const LINES = 200;

export function Timeline() {
  const { derived, desk } = useTools();
  const startedAt = derived.startedAt.value;
  const [wanted, setWanted] = useState(LINES);
  const lines = useAfterPaint(() =>
    timelineLines({
      startedAt,
      entries: derived.entries.value,
      unheard: desk.record.value?.exam.state.unheard ?? [],
    }),
  );
  const row = useRows((line: Line) => (
    <LineRow key={line.entries.join() + line.at + line.state} line={line} day={dayOf(startedAt)} />
  ));
  const hidden = Math.max(0, lines.length - wanted);
  return (
    <section class="timeline" aria-labelledby="timeline-title">
      <h3 id="timeline-title" tabIndex={-1}>
        Timeline
      </h3>
      {hidden > 0 && (
        <button type="button" class="button wide" onClick={() => setWanted(wanted + LINES)}>
          Show {Math.min(LINES, hidden)} of {hidden} earlier lines
        </button>
      )}
      <ol class="plain-list">{lines.slice(hidden).map(row)}</ol>
    </section>
  );
}

interface RowProps {
  readonly line: Line;
  readonly day: Day;
}

/** A line of one entry opens it; of several, shows them first; of none (a gap) it only tells. */
function LineRow({ line: { at, state, text, entries }, day }: RowProps) {
  const { changing } = useTools();
  const [only, ...others] = entries;
  return (
    <li class={`moment ${state}`}>
      <span class="when">{clock(at, day)}</span>{' '}
      {only === undefined ? (
        <span>{text}</span>
      ) : others.length === 0 ? (
        <button
          type="button"
          class="line-way"
          onClick={() => {
            changing.value = only;
          }}
        >
          {text}
        </button>
      ) : (
        <EntryFold of="line-fold" text={text} ids={entries} />
      )}
    </li>
  );
}
