// Bytes cut into frames, each of which says whose part it is, which of how many, and how to tell that it was read right.

import { fromBase45, toBase45 } from './base45.ts';
import { crcText } from './crc32.ts';

/** What every frame begins with, and the version of its form. */
const MARK = 'FIELDSAY1';

/** Bytes in a frame: a symbol of version 15 or so, which a phone reads from another phone's screen. Our choice. */
export const FRAME_BYTES = 360;
/** For a camera that has trouble: larger squares, more frames. */
export const COARSE_BYTES = 140;
/** More frames than these are no transfer of ours: 4000 × 360 bytes. */
const MOST = 4000;

export interface Frame {
  /** checksum of all the bytes; also names the transfer */
  readonly transfer: string;
  /** counts from 1 */
  readonly part: number;
  readonly of: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** The text of each frame, `FIELDSAY1/<checksum of all>/<part>/<of>/<checksum of this>/<bytes as base45>`. */
export function framesOf(bytes: Uint8Array, size: number = FRAME_BYTES): readonly string[] {
  const of = Math.max(1, Math.ceil(bytes.length / size));
  const transfer = crcText(bytes);
  return Array.from({ length: of }, (_, index) => {
    const part = bytes.slice(index * size, (index + 1) * size);
    return [MARK, transfer, index + 1, of, crcText(part), toBase45(part)].join('/');
  });
}

export type FrameRead =
  | { readonly kind: 'frame'; readonly frame: Frame }
  /** some other QR symbol */
  | { readonly kind: 'foreign' }
  | { readonly kind: 'damaged'; readonly why: string };

const FORM = /^FIELDSAY1\/([0-9A-F]{8})\/(\d{1,4})\/(\d{1,4})\/([0-9A-F]{8})\/([\s\S]*)$/;

const damaged = (why: string): FrameRead => ({ kind: 'damaged', why });

/** What a symbol's text is. */
export function readFrame(text: string): FrameRead {
  if (!text.startsWith('FIELDSAY')) return { kind: 'foreign' };
  if (!text.startsWith(`${MARK}/`)) return damaged('it is of another version of this transfer');
  const [, transfer = '', partText, ofText, checksum, body = ''] = FORM.exec(text) ?? [];
  const [part, of] = [Number(partText), Number(ofText)];
  if (transfer === '' || part < 1 || part > of || of > MOST) return damaged('its head cannot be read');
  const bytes = fromBase45(body);
  if (bytes === null) return damaged('it holds signs that are none of ours');
  if (crcText(bytes) !== checksum) return damaged('its checksum does not fit');
  return { kind: 'frame', frame: { transfer, part, of, bytes } };
}
