// How fast a report is read: as slowly as the other end can write it down, set by ear and kept on this device.

import { type Signal, signal } from '@preact/signals';

/** Words a minute. ICAO Doc 9432 allows at most 100, and slower where it is written down (read); 80 is our choice. */
export const PACE = { usual: 80, least: 50, most: 100, step: 5 } as const;

/** From pressing the key to the first word, ms: a radio's first moment is lost (advice to search teams, read). */
export const LEAD_MS = 1500;

const KEY = 'fieldsay-pace';

export const within = (pace: number): number => Math.min(PACE.most, Math.max(PACE.least, pace));

/** The pace in words a minute as it was left, or the usual one. */
export function createPace(storage: Storage | null): Signal<number> {
  const kept = Number(storage?.getItem(KEY) ?? Number.NaN);
  const pace = signal(Number.isInteger(kept) && kept === within(kept) ? kept : PACE.usual);
  pace.subscribe((now) => {
    try {
      storage?.setItem(KEY, String(now));
    } catch {
      // A full or refused storage costs the setting and nothing else.
    }
  });
  return pace;
}

/** How long some words take, ms. */
export const timeFor = (words: number, pace: number): number => (words / pace) * 60_000;

export const wordCount = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length;
