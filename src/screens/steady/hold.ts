// Holds what is shown while a finger is down: nothing may move between the press and the release.

import { type ReadonlySignal, signal } from '@preact/signals';
import { useRef } from 'preact/hooks';

/** A finger that was never seen to leave holds no longer than this, ms. */
const LONGEST = 5000;

/** True while a finger or a mouse button is down anywhere on the page. */
export function createHold(target: Window): ReadonlySignal<boolean> {
  const down = signal(false);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const release = (): void => {
    clearTimeout(timer);
    // The click comes after the release; it must still find what the finger was on.
    timer = setTimeout(() => {
      down.value = false;
    });
  };
  target.addEventListener(
    'pointerdown',
    () => {
      clearTimeout(timer);
      down.value = true;
      timer = setTimeout(release, LONGEST);
    },
    { capture: true },
  );
  // Whatever the press did has been done when the click has gone all the way up.
  target.addEventListener('click', () => {
    clearTimeout(timer);
    down.value = false;
  });
  for (const end of ['pointerup', 'pointercancel', 'blur'] as const)
    target.addEventListener(end, release, { capture: true });
  return down;
}

/** The value, or the one from before the finger came down for as long as it stays. */
export function useHeld<T>(value: T, down: boolean): T {
  const kept = useRef(value);
  if (!down) kept.current = value;
  return kept.current;
}
