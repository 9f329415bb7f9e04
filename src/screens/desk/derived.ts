// What is worked out from the open record, anew whenever it or the time changes.

import { computed, type ReadonlySignal } from '@preact/signals';
import { type Reckoning, reckon } from '../../clinical/index.ts';
import type { HandoffInput } from '../../handoff/index.ts';
import type { Entry } from '../../record/index.ts';
import type { Desk } from './desk.ts';
import { timeIn } from './open-record.ts';

export interface Derived {
  readonly entries: ReadonlySignal<readonly Entry[]>;
  readonly startedAt: ReadonlySignal<string>;
  readonly reckoning: ReadonlySignal<Reckoning>;
  readonly report: ReadonlySignal<HandoffInput>;
}

/** Derived values are worked out only while something shows them. */
export function derive(desk: Desk): Derived {
  const entries = computed(() => desk.record.value?.exam.state.entries ?? []);
  const startedAt = computed(
    () => desk.record.value?.facts.startedAt ?? new Date(desk.wall.value).toISOString(),
  );
  const now = computed(() => {
    const record = desk.record.value;
    return record === null ? desk.wall.value : timeIn(record, desk.wall.value);
  });
  const reckoning = computed(() => reckon(entries.value, { now: now.value }));
  const report = computed((): HandoffInput => {
    const { coverage, flags, scores } = reckoning.value;
    const at = { startedAt: startedAt.value, now: now.value };
    return { ...at, entries: entries.value, coverage, flags, scores };
  });
  return { entries, startedAt, reckoning, report };
}
