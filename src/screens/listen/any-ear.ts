// Whichever ear is on: whether somebody is being listened to, and an end to it that loses no word.

import type { Tools } from '../frame/tools.ts';

type Ears = Pick<Tools, 'ear' | 'dictation'>;

/** True while the page listens or means to. */
export function isListening({ ear, dictation }: Ears): boolean {
  const { state } = ear.now.peek();
  return (state !== 'off' && state !== 'stopped') || dictation.now.peek().state === 'listening';
}

/** Stops listening; resolves when what was being said is in the record. */
export async function stopListening({ ear, dictation }: Ears): Promise<void> {
  if (dictation.now.peek().state === 'listening') dictation.turnOff();
  ear.enough();
  await ear.stop();
}
