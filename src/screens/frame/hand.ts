// Which hand holds the device: what is pressed most stands on the side of its thumb.

import { effect, type Signal, signal } from '@preact/signals';

export const HANDS = ['right', 'left'] as const;
export type Hand = (typeof HANDS)[number];

export const HAND_NAMES: Readonly<Record<Hand, string>> = { right: 'Right hand', left: 'Left hand' };

const KEY = 'fieldsay-hand';

/** The chosen hand, kept on the device and set on the page's root. */
export function createHand(storage: Storage | null, root: HTMLElement): Signal<Hand> {
  const hand = signal<Hand>(storage?.getItem(KEY) === 'left' ? 'left' : 'right');
  effect(() => {
    root.dataset.hand = hand.value;
    storage?.setItem(KEY, hand.value);
  });
  return hand;
}
