// A file that a person drops or chooses: a recording is heard, anything else is read as talk.

import type { Tools } from '../frame/tools.ts';
import { openTalkFile } from '../play/open-talk.ts';

/** By its name or by what the device takes it for; its content decides whether it can be heard. */
export const isRecording = ({ name, type }: Pick<File, 'name' | 'type'>): boolean =>
  /\.wave?$/i.test(name) || type.startsWith('audio/');

/** Opens it as a record of its own; resolves when that is done or was said to be impossible. */
export async function openFile(
  { desk, player, ear }: Pick<Tools, 'desk' | 'player' | 'ear'>,
  file: File,
): Promise<void> {
  if (isRecording(file)) await ear.open(file);
  else await openTalkFile(desk, player, file);
}
