// What every panel shows of the open record, anew whenever it changes.

import { computed, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '../../record/index.ts';
import type { Desk } from './desk.ts';

export interface Derived {
  readonly entries: ReadonlySignal<readonly Entry[]>;
  /** the utterance that each entry was said in; none for what a hand entered */
  readonly saidIn: ReadonlySignal<ReadonlyMap<string, string>>;
  /** ISO 8601 with offset */
  readonly startedAt: ReadonlySignal<string>;
}

/** The entries of the open record and when it began; now, where none is open. */
export const derive = (desk: Desk): Derived => ({
  entries: computed(() => desk.record.value?.exam.state.entries ?? []),
  saidIn: computed(() => {
    const groups = desk.record.value?.exam.state.groups ?? [];
    return new Map(
      groups.flatMap(({ utterance, entries }) =>
        utterance === null ? [] : entries.map((entry) => [entry, utterance] as const),
      ),
    );
  }),
  startedAt: computed(() => desk.record.value?.facts.startedAt ?? new Date(desk.wall.value).toISOString()),
});
