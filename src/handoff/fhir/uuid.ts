// Names as version 5 UUIDs: the same name always gives the same one, and no clock or chance is needed.

import { sha1 } from './sha1.ts';

const hex = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

const bytesOf = (uuid: string): readonly number[] =>
  (uuid.replaceAll('-', '').match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16));

const low = (code: number, shift: number): number => 0x80 | ((code >> shift) & 0x3f);

/** The bytes of one character in UTF-8; half a surrogate pair is written as the replacement character. */
function utf8(character: string): readonly number[] {
  const point = character.codePointAt(0) ?? 0;
  const code = point >= 0xd800 && point <= 0xdfff ? 0xfffd : point;
  if (code < 0x80) return [code];
  if (code < 0x800) return [0xc0 | (code >> 6), low(code, 0)];
  if (code < 0x10000) return [0xe0 | (code >> 12), low(code, 6), low(code, 0)];
  return [0xf0 | (code >> 18), low(code, 12), low(code, 6), low(code, 0)];
}

/** The name-based UUID of a name in a namespace, itself a UUID (RFC 9562, section 5.5; from memory). */
export function uuid5(namespace: string, name: string): string {
  const digest = sha1(Uint8Array.from([...bytesOf(namespace), ...[...name].flatMap(utf8)])).slice(0, 16);
  digest[6] = ((digest[6] ?? 0) & 0x0f) | 0x50;
  digest[8] = ((digest[8] ?? 0) & 0x3f) | 0x80;
  const text = hex(digest);
  return [text.slice(0, 8), text.slice(8, 12), text.slice(12, 16), text.slice(16, 20), text.slice(20)].join(
    '-',
  );
}

/** Drawn once at random for this project; the names of examinations stand in it. */
const EXAMINATIONS = '642c9040-dfa3-43a2-a2b7-e34e33e592e4';

/** Names the things of one examination: `idOf('entry/d-3')` is the same in each of its documents, and in no other's. */
export function idsIn(record: string): (name: string) => string {
  const own = uuid5(EXAMINATIONS, record);
  return (name) => uuid5(own, name);
}
