// Opens a sealed message of a phone, or says in plain words why it cannot be taken.

import { type KeptMessage, type Message, open, readMessage } from '../link/index.ts';

/** The message under a subject; a text where it is spoiled. `seq`: the number that its subject gives it. */
export async function openMessage(
  key: CryptoKey,
  subject: string,
  bytes: KeptMessage['bytes'],
  seq: number,
): Promise<Message | string> {
  const opened = await open(key, subject, bytes);
  if (opened.kind === 'altered')
    return 'it was altered on its way, or sealed with another key or for another place';
  if (opened.kind === 'not-sealed') return 'it is not sealed';
  const read = readMessage(opened.value, seq);
  return read.kind === 'message' ? read.message : read.why;
}
