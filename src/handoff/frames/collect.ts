// Frames gathered in any order, as often as they come; what is missing is always known, and nothing half is handed on.

import { crcText } from './crc32.ts';
import { type Frame, readFrame } from './frame.ts';

export interface Collection {
  readonly transfer: string;
  readonly of: number;
  /** by part, counted from 1 */
  readonly parts: ReadonlyMap<number, Uint8Array<ArrayBuffer>>;
}

export type Taken =
  /** a part that was not there yet */
  | { readonly kind: 'new'; readonly collection: Collection }
  | { readonly kind: 'known' }
  /** it belongs to another transfer than the one begun */
  | { readonly kind: 'other'; readonly frame: Frame }
  | { readonly kind: 'foreign' }
  | { readonly kind: 'damaged'; readonly why: string };

/** The collection after one more symbol's text; null before the first frame. */
export function takeFrame(collection: Collection | null, text: string): Taken {
  const read = readFrame(text);
  if (read.kind !== 'frame') return read;
  const { frame } = read;
  const { transfer, of, part, bytes } = frame;
  if (collection !== null && (collection.transfer !== transfer || collection.of !== of))
    return { kind: 'other', frame };
  if (collection?.parts.has(part) === true) return { kind: 'known' };
  const parts = new Map([...(collection?.parts ?? []), [part, bytes] as const]);
  return { kind: 'new', collection: { transfer, of, parts } };
}

/** The parts that have not come yet, in order. */
export const missingParts = ({ of, parts }: Collection): readonly number[] =>
  Array.from({ length: of }, (_, index) => index + 1).filter((part) => !parts.has(part));

export type Whole =
  | { readonly kind: 'whole'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'missing'; readonly parts: readonly number[] }
  | { readonly kind: 'damaged'; readonly why: string };

/** All the bytes, once every part is there and the checksum of the whole fits. */
export function wholeOf(collection: Collection): Whole {
  const missing = missingParts(collection);
  if (missing.length > 0) return { kind: 'missing', parts: missing };
  const parts = [...collection.parts].sort(([a], [b]) => a - b).map(([, bytes]) => bytes);
  const bytes = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  if (crcText(bytes) !== collection.transfer)
    return { kind: 'damaged', why: 'the parts do not make the whole that was sent' };
  return { kind: 'whole', bytes };
}
