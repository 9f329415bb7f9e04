// The scripts that run beside the page: the worker that hears, and the tap beside the sound card.

import tap from '../microphone/tap.ts?worker&url';

/** Address of the script that taps the sound. */
export const tapAddress: string = tap;

/** A new worker that hears. */
export const makeEarWorker = (): Worker =>
  new Worker(new URL('../worker/ear.ts', import.meta.url), { type: 'module', name: 'ear' });
