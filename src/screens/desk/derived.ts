// What every panel shows of the open record, anew whenever it changes.

import { computed, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '../../record/index.ts';
import type { Desk } from './desk.ts';

export interface Derived {
  readonly entries: ReadonlySignal<readonly Entry[]>;
  /** its name, or null where none is open; unlike the record it stays as it is with each entry */
  readonly recordId: ReadonlySignal<string | null>;
  /** the utterance that an entry was said in, which is so once and for all; none for what a hand entered */
  readonly saidIn: (entry: string) => string | null;
  /** ISO 8601 with offset */
  readonly startedAt: ReadonlySignal<string>;
}

/** The entries of the open record and when it began; now, where none is open. */
export function derive(desk: Desk): Derived {
  const utterances = computed(() => {
    const groups = desk.record.value?.exam.state.groups ?? [];
    return new Map(
      groups.flatMap(({ utterance, entries }) =>
        utterance === null ? [] : entries.map((entry) => [entry, utterance] as const),
      ),
    );
  });
  return {
    entries: computed(() => desk.record.value?.exam.state.entries ?? []),
    recordId: computed(() => desk.record.value?.facts.id ?? null),
    // Looked up without being followed: else each row would be drawn anew with each entry.
    saidIn: (entry) => utterances.peek().get(entry) ?? null,
    startedAt: computed(() => desk.record.value?.facts.startedAt ?? new Date(desk.wall.value).toISOString()),
  };
}
