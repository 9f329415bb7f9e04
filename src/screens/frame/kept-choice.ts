// A choice between a few words that the device remembers; no patient's words are ever among them.

import { effect, type Signal, signal } from '@preact/signals';

/** The chosen one, kept under `key`; `otherwise` where none of them is kept. */
export function keptChoice<T extends string>(
  storage: Storage | null,
  key: string,
  all: readonly T[],
  otherwise: T,
): Signal<T> {
  const kept = storage?.getItem(key) ?? null;
  const choice = signal<T>(all.find((one) => one === kept) ?? otherwise);
  effect(() => storage?.setItem(key, choice.value));
  return choice;
}
