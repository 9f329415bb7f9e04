// How the page looks: plain (light or dark as the device says), for full sun, or for the night; one control goes round.

import { effect, type Signal } from '@preact/signals';
import { keptChoice } from './kept-choice.ts';

export const LOOKS = ['plain', 'sun', 'night'] as const;
export type Look = (typeof LOOKS)[number];

export const LOOK_NAMES: Readonly<Record<Look, string>> = { plain: 'Plain', sun: 'Sun', night: 'Night' };

/** The look after this one; after the last comes the first. */
export const nextLook = (look: Look): Look => LOOKS[(LOOKS.indexOf(look) + 1) % LOOKS.length] ?? 'plain';

/** The chosen look, kept on the device and set on the page's root. */
export function createLook(storage: Storage | null, root: HTMLElement): Signal<Look> {
  const look = keptChoice(storage, 'fieldsay-look', LOOKS, 'plain');
  effect(() => {
    root.dataset.look = look.value;
  });
  return look;
}
