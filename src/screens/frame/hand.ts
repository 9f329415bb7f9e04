// Which hand holds the device: what is pressed most stands on the side of its thumb.

import { effect, type Signal } from '@preact/signals';
import { keptChoice } from './kept-choice.ts';

export const HANDS = ['right', 'left'] as const;
export type Hand = (typeof HANDS)[number];

export const HAND_NAMES: Readonly<Record<Hand, string>> = { right: 'Right hand', left: 'Left hand' };

/** The chosen hand, kept on the device and set on the page's root. */
export function createHand(storage: Storage | null, root: HTMLElement): Signal<Hand> {
  const hand = keptChoice(storage, 'fieldsay-hand', HANDS, 'right');
  effect(() => {
    root.dataset.hand = hand.value;
  });
  return hand;
}
