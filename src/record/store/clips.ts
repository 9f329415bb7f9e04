// The sound of each utterance, sealed like the log, so that it can be heard again beside its entry; let go when the record is closed.

import type { Bytes } from './bytes.ts';
import { clipKey, placeOf } from './places.ts';
import { isSealed, type Keys, sealBytes, unsealBytes } from './sealed.ts';
import type { Key, Shelf } from './shelf.ts';

export interface Clip {
  /** how it is compressed, as a media type: `audio/vnd.wave;codec=11` */
  readonly type: string;
  readonly bytes: Bytes;
}

const HEAD = 64;

/** The type in the first 64 bytes, so that type and sound are sealed as one. */
function packed({ type, bytes }: Clip): Bytes {
  const all = new Uint8Array(HEAD + bytes.length);
  all.set(new TextEncoder().encode(type).subarray(0, HEAD));
  all.set(bytes, HEAD);
  return all;
}

/** Keeps the sound of an utterance (the id of its event). It rejects with a `StoreFailure`. */
export async function keepClip(
  shelf: Shelf,
  keys: Keys,
  record: string,
  utterance: string,
  clip: Clip,
): Promise<void> {
  const key = clipKey(record, utterance);
  await shelf.write({ put: [{ key, value: await sealBytes(keys, placeOf(key), packed(clip)) }] });
}

/** The sound of an utterance, or null where there is none or it cannot be read. */
export async function readClip(
  shelf: Shelf,
  keys: Keys,
  record: string,
  utterance: string,
): Promise<Clip | null> {
  const key = clipKey(record, utterance);
  const opened = await unsealBytes(keys, placeOf(key), await shelf.get(key));
  if (opened.kind !== 'bytes') return null;
  const type = new TextDecoder().decode(opened.bytes.subarray(0, HEAD)).replace(/\0+$/, '');
  return { type, bytes: opened.bytes.slice(HEAD) };
}

export interface Sound {
  /** utterances of which the sound is kept */
  readonly utterances: readonly string[];
  /** bytes on the disk */
  readonly size: number;
}

/** Of which utterances the sound is kept, and how much room it takes. */
export async function soundOf(shelf: Shelf, record: string): Promise<Sound> {
  const rows = await shelf.under(['clip', record]);
  return {
    utterances: rows.map(({ key }) => String(key[2])),
    size: rows.reduce((sum, { value }) => sum + (isSealed(value) ? value.data.length : 0), 0),
  };
}

export interface SoundPlace {
  readonly key: Key;
  readonly record: string;
  readonly utterance: string;
}

/** Of which utterances sound is kept, of one record or of all, without reading it. */
export const soundKept = async (shelf: Shelf, record?: string): Promise<readonly SoundPlace[]> =>
  (await shelf.keysUnder(record === undefined ? ['clip'] : ['clip', record])).map((key) => ({
    key,
    record: String(key[1]),
    utterance: String(key[2]),
  }));

/** Lets the sound of a record go. */
export const dropClips = (shelf: Shelf, record: string): Promise<void> =>
  shelf.write({ removeUnder: [['clip', record]] });
