// A text in compiled memory, up to the nought that ends it.

import type { SoundModule } from './sound-module.ts';

/** The text at this address; the model's words are ASCII. */
export function textAt(module: SoundModule, address: number): string {
  let end = address;
  while (module.HEAP8[end] !== 0) end += 1;
  return String.fromCharCode(...module.HEAP8.subarray(address, end));
}
