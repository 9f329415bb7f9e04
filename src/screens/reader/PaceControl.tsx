// Slower or faster, until it can be written down at the other end.

import type { Signal } from '@preact/signals';
import { PACE, within } from './pace.ts';

export function PaceControl({ pace }: { readonly pace: Signal<number> }) {
  const set = (by: number) => {
    pace.value = within(pace.value + by);
  };
  return (
    <div class="choices even pace-control">
      <button
        type="button"
        class="button"
        disabled={pace.value <= PACE.least}
        onClick={() => set(-PACE.step)}
      >
        Slower
      </button>
      <p role="status">
        <b>{pace.value}</b> words a minute
      </p>
      <button type="button" class="button" disabled={pace.value >= PACE.most} onClick={() => set(PACE.step)}>
        Faster
      </button>
    </div>
  );
}
