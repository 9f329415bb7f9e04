// What is worked out of the open record only when its change has been drawn, so that an entry never waits for a report.

import { effect, untracked, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';

const NONE: readonly (() => unknown)[] = [];

/**
 * What `work` gives: at once when it is first shown, and then soon after each change was drawn. A view of another
 * record needs another key, lest it show for a moment what was worked out of the one before. Each of the `steps` is done
 * before it after a frame of its own, where `work` would take longer than one.
 */
export function useAfterPaint<T>(work: () => T, steps: readonly (() => unknown)[] = NONE): T {
  const { desk, queue } = useTools();
  const newest = useRef({ work, steps });
  newest.current = { work, steps };
  const first = useRef<{ readonly of: T } | null>(null);
  first.current ??= { of: untracked(work) };
  const shown = useSignal<T>(first.current.of);
  useEffect(() => {
    const name = {};
    // Asked for again in the middle of it, it begins anew: what was half made is of the record before.
    const ask = (at: number): void =>
      queue.ask(name, () => {
        const step = newest.current.steps[at];
        if (step === undefined) {
          shown.value = untracked(newest.current.work);
          return;
        }
        untracked(step);
        ask(at + 1);
      });
    const stop = effect(() => {
      void [desk.record.value, desk.wall.value];
      ask(0);
    });
    return () => {
      stop();
      queue.forget(name);
    };
  }, []);
  return shown.value;
}
