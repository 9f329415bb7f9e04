// What is worked out of the open record only when its change has been drawn, so that an entry never waits for a report.

import { effect, untracked, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';

/**
 * What `work` gives: at once when it is first shown, and then soon after each change was drawn. A view of another
 * record needs another key, lest it show for a moment what was worked out of the one before.
 */
export function useAfterPaint<T>(work: () => T): T {
  const { desk, queue } = useTools();
  const newest = useRef(work);
  newest.current = work;
  const first = useRef<{ readonly of: T } | null>(null);
  first.current ??= { of: untracked(work) };
  const shown = useSignal<T>(first.current.of);
  useEffect(() => {
    const name = {};
    const stop = effect(() => {
      void [desk.record.value, desk.wall.value];
      queue.ask(name, () => {
        shown.value = untracked(() => newest.current());
      });
    });
    return () => {
      stop();
      queue.forget(name);
    };
  }, []);
  return shown.value;
}
