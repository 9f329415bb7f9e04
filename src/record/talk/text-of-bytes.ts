// Bytes as UTF-8 text without a byte order mark; bytes that are no UTF-8 are refused with their line, never replaced.

import { type TalkError, talkError } from './talk-error.ts';

const NEWLINE = 0x0a;

/** A decoder of UTF-8 that throws at what is none, such as `new TextDecoder('utf-8', { fatal: true })` (Encoding, WHATWG). */
export interface Utf8 {
  decode(bytes: Uint8Array): string;
}

/** The text of a talk file's bytes. */
export function textOfBytes(
  bytes: Uint8Array,
  decoder: Utf8,
): { readonly kind: 'text'; readonly text: string } | TalkError {
  try {
    return { kind: 'text', text: decoder.decode(bytes) };
  } catch {
    return talkError(firstBadLine(bytes, decoder), 'is not UTF-8 text; save the file as UTF-8');
  }
}

/** A newline's byte is part of no other character in UTF-8, so each line can be tried on its own. */
function firstBadLine(bytes: Uint8Array, decoder: Utf8): number {
  let line = 1;
  for (let start = 0; start < bytes.length; line += 1) {
    const newline = bytes.indexOf(NEWLINE, start);
    const end = newline < 0 ? bytes.length : newline;
    try {
      decoder.decode(bytes.subarray(start, end));
    } catch {
      return line;
    }
    start = end + 1;
  }
  return line;
}
