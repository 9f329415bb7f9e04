// Locks the page when nobody has touched it or spoken to it for the chosen time.

import { effect, type Signal, signal } from '@preact/signals';
import type { Tools } from '../frame/tools.ts';
import { isListening } from '../listen/any-ear.ts';
import { lockPage } from './lock.ts';

/** Minutes; 0 is never. */
export const IDLE_CHOICES = [2, 5, 15, 60, 0] as const;
export type IdleMinutes = (typeof IDLE_CHOICES)[number];
/** Our choice, no source: long enough for a quiet stretch of an examination. */
const DEFAULT: IdleMinutes = 15;
const KEY = 'fieldsay-idle-minutes';
const LOOK_EVERY = 5000;

/** The chosen time, kept on the device. */
export function createIdle(storage: Storage | null): Signal<IdleMinutes> {
  const kept = Number(storage?.getItem(KEY) ?? DEFAULT);
  const idle = signal<IdleMinutes>(IDLE_CHOICES.find((one) => one === kept) ?? DEFAULT);
  effect(() => storage?.setItem(KEY, String(idle.value)));
  return idle;
}

/** Watches the page. While dictation is on nobody need touch it, and it stays open. */
export function lockWhenIdle(tools: Tools, idle: Signal<IdleMinutes>, target: Window): void {
  // Two clocks: one stops while some devices sleep, the other may be set back.
  let last = { wall: Date.now(), running: performance.now() };
  const touched = (): void => {
    last = { wall: Date.now(), running: performance.now() };
  };
  for (const kind of ['pointerdown', 'keydown', 'wheel', 'touchmove'])
    target.addEventListener(kind, touched, { passive: true });
  effect(() => {
    void tools.desk.record.value;
    touched();
  });
  const look = (): void => {
    if (isListening(tools)) touched();
    const passed = Math.max(Date.now() - last.wall, performance.now() - last.running);
    const minutes = idle.peek();
    if (minutes > 0 && passed >= minutes * 60_000 && tools.desk.door.now.peek().state === 'open') {
      touched();
      void lockPage(tools);
    }
  };
  setInterval(look, LOOK_EVERY);
  target.document.addEventListener('visibilitychange', look);
  // A page that comes back from the browser's memory would come back open.
  target.addEventListener('pageshow', (event) => {
    if (event.persisted) target.location.reload();
  });
}
