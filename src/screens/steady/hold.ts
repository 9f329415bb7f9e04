// Holds what is shown while a finger is down and until the next press: nothing may move under a thumb that is at work.

import { type ReadonlySignal, signal } from '@preact/signals';
import { useRef } from 'preact/hooks';

/** A finger that was never seen to leave holds no longer than this, ms. */
const LONGEST = 5000;

/** A thumb that has just pressed goes on to the next button for about this long, ms. Our choice, no source. */
export const NEXT_PRESS = 700;

/** True while a finger or a mouse button is down anywhere on the page, and for a moment after a press in a list that grows. */
export function createHold(target: Window): ReadonlySignal<boolean> {
  const down = signal(false);
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** ms that the list stays as it is after the finger has left */
  let after = 0;
  const release = (): void => {
    clearTimeout(timer);
    // Even without a next press the click comes after the release; it must still find what the finger was on.
    timer = setTimeout(() => {
      down.value = false;
    }, after);
  };
  target.addEventListener(
    'pointerdown',
    ({ target: pressed }) => {
      clearTimeout(timer);
      after = pressed instanceof Element && pressed.closest('.steady') !== null ? NEXT_PRESS : 0;
      down.value = true;
      timer = setTimeout(release, LONGEST);
    },
    { capture: true },
  );
  for (const end of ['pointerup', 'pointercancel', 'blur'] as const)
    target.addEventListener(end, release, { capture: true });
  return down;
}

/** The value, or the one from before the finger came down for as long as it is held. */
export function useHeld<T>(value: T, held: boolean): T {
  const kept = useRef(value);
  if (!held) kept.current = value;
  return kept.current;
}

interface Named {
  readonly id: string;
  readonly replacedBy?: string;
}

/** Of the entries now, those that were there before, as they stand now, and what took their place. */
export function knownOf<E extends Named>(before: readonly E[], now: readonly E[]): readonly E[] {
  if (before === now) return now;
  const known = new Set(before.map(({ id }) => id));
  return now.filter(({ id, replacedBy }) => {
    if (known.has(id) && replacedBy !== undefined) known.add(replacedBy);
    return known.has(id);
  });
}

/** The entries; while they are held none is added, and what a hand did to those that are there shows at once. */
export function useHeldEntries<E extends Named>(entries: readonly E[], held: boolean): readonly E[] {
  return knownOf(useHeld(entries, held), entries);
}
