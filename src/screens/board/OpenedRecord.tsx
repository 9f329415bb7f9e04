// One record as it stands and as it grows: its handover, its timeline, and the one thing that can be done: ask.

import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { reckon } from '../../clinical/index.ts';
import { type HandoffInput, mist, radio, soap, textOf } from '../../handoff/index.ts';
import { EMPTY, fold, migrate, type RecordState } from '../../record/index.ts';
import type { RecordFacts } from '../../record/store/index.ts';
import { clock, dayOf, timelineLines } from '../../timeline/index.ts';
import { whoIs } from '../records/who.ts';
import { Ask } from './Ask.tsx';
import { readFeed } from './feed.ts';
import { type BoardModel, postNow } from './model.ts';

interface Opened {
  readonly facts: RecordFacts;
  readonly state: RecordState;
}

const VIEWS = [
  ['ATMIST', (input: HandoffInput) => textOf(mist(input))],
  ['SOAP', (input: HandoffInput) => textOf(soap(input))],
  [
    'Radio',
    (input: HandoffInput) =>
      radio(input)
        .chunks.map(({ text }) => text)
        .join('\n\n'),
  ],
] as const;

export function OpenedRecord({ id, model }: { readonly id: string; readonly model: BoardModel }) {
  const opened = useSignal<Opened | null>(null);
  const view = useSignal(0);
  const part = useRef<HTMLElement>(null);
  // On a narrow screen it stands under all patients, where nobody would look for it.
  useEffect(() => part.current?.scrollIntoView({ block: 'nearest' }), [id]);
  useEffect(
    () =>
      readFeed(
        `board/record/${id}`,
        model.token,
        (line) => {
          if (line.line !== 'record') return;
          const before = line.anew ? EMPTY : (opened.peek()?.state ?? EMPTY);
          const events = line.events.map(migrate).flatMap((one) => (one.kind === 'event' ? [one.event] : []));
          opened.value = { facts: line.facts, state: fold(events, before) };
        },
        () => undefined,
        false,
      ),
    [id],
  );
  const row = model.rows.value.find(({ record }) => record === id);
  const name = row === undefined ? 'this record' : `${whoIs(row)}, begun by ${row.begunBy}`;
  const now = opened.value;
  return (
    <section ref={part} class="board-part board-record" aria-label={`Record: ${name}`}>
      <h2>{name}</h2>
      <button
        type="button"
        class="button"
        onClick={() => {
          model.open.value = null;
          document.querySelector<HTMLElement>(`[data-record="${id}"] .board-open`)?.focus();
        }}
      >
        Back to the patients
      </button>
      {now === null ? (
        <p class="empty">Reading …</p>
      ) : (
        <>
          <div class="choices even">
            {VIEWS.map(([title], index) => (
              <button
                key={title}
                type="button"
                class="button"
                aria-pressed={view.value === index}
                onClick={() => {
                  view.value = index;
                }}
              >
                {title}
              </button>
            ))}
          </div>
          <pre class="board-text">{VIEWS[view.value]?.[1](inputOf(now, postNow(model)))}</pre>
          <Ask row={row} record={id} model={model} />
          <Lines opened={now} />
        </>
      )}
    </section>
  );
}

function inputOf({ facts, state }: Opened, now: number): HandoffInput {
  const { entries, problemChanges } = state;
  const { coverage, flags, scores, scoreCards, problems } = reckon(entries, {
    now,
    problems: problemChanges,
  });
  return { startedAt: facts.startedAt, now, entries, coverage, flags, scores, scoreCards, problems };
}

function Lines({ opened: { facts, state } }: { readonly opened: Opened }) {
  const day = dayOf(facts.startedAt);
  const { startedAt } = facts;
  return (
    <ol class="plain-list" aria-label="Timeline">
      {timelineLines({ startedAt, entries: state.entries, unheard: state.unheard }).map((line) => (
        <li key={line.entries.join() + line.at + line.state} class={`moment ${line.state}`}>
          <span class="when">{clock(line.at, day)}</span> {line.text}
        </li>
      ))}
    </ol>
  );
}
