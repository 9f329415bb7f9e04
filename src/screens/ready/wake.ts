// Keeps the screen awake while a record of a patient is open, and takes the lock anew whenever the page is seen again.

import { effect, type ReadonlySignal, signal } from '@preact/signals';

export type WakeState = 'none' | 'off' | 'on' | 'refused';

/** `wanted` says whether the screen is to stay awake now. */
export function keepAwake(wanted: ReadonlySignal<boolean>, target: Document): ReadonlySignal<WakeState> {
  const wake = 'wakeLock' in navigator ? navigator.wakeLock : null;
  const now = signal<WakeState>(wake === null ? 'none' : 'off');
  let held: WakeLockSentinel | null = null;
  let asking = false;

  const settle = async (): Promise<void> => {
    if (wake === null || asking) return;
    if (!wanted.peek()) {
      await held?.release();
      held = null;
      now.value = 'off';
      return;
    }
    if (target.visibilityState !== 'visible' || (held !== null && !held.released)) return;
    asking = true;
    try {
      held = await wake.request('screen');
      now.value = 'on';
      held.addEventListener('release', () => {
        now.value = 'off';
      });
    } catch {
      // Browsers refuse it on a low battery and in the background.
      now.value = 'refused';
    } finally {
      asking = false;
    }
  };

  effect(() => {
    void wanted.value;
    void settle();
  });
  target.addEventListener('visibilitychange', () => void settle());
  return now;
}
