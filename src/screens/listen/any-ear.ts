// Whichever ear is on: whether somebody is being listened to, and an end to it that loses no word.

import type { Tools } from '../frame/tools.ts';

type Ears = Pick<Tools, 'ear' | 'dictation'>;

const OFF: readonly string[] = ['none', 'off', 'stopped'];

/** True while the page listens or means to. */
export const isListening = ({ ear, dictation }: Ears): boolean =>
  !OFF.includes(ear.now.peek().state) || !OFF.includes(dictation.now.peek().state);

/** True where the bundled recogniser is there to measure with, and the browser's own does not have the microphone. */
export const canMeasure = ({ ear, dictation }: Ears): boolean =>
  ear.model.value.state === 'stored' && OFF.includes(dictation.now.value.state);

/** Stops listening; resolves when what was being said is in the record. */
export async function stopListening({ ear, dictation }: Ears): Promise<void> {
  dictation.turnOff();
  ear.enough();
  await ear.stop();
}
