// How the page looks: by the device's own setting, or by day, by night, or in full sun, as the person chose.

import { effect, type Signal, signal } from '@preact/signals';

export const LOOKS = ['device', 'day', 'night', 'sun'] as const;
export type Look = (typeof LOOKS)[number];

export const LOOK_NAMES: Readonly<Record<Look, string>> = {
  device: 'As the device',
  day: 'Day',
  night: 'Night',
  sun: 'Full sun',
};

const KEY = 'fieldsay-look';

const isLook = (text: string | null): text is Look => LOOKS.some((look) => look === text);

/** The chosen look, kept on the device and set on the page's root. */
export function createLook(storage: Storage | null, root: HTMLElement): Signal<Look> {
  const kept = storage?.getItem(KEY) ?? null;
  const look = signal<Look>(isLook(kept) ? kept : 'device');
  effect(() => {
    root.dataset.look = look.value;
    storage?.setItem(KEY, look.value);
  });
  return look;
}
