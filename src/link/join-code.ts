// What a phone needs to join an incident, as one text for a QR symbol; a wrong one is refused with the part that is wrong.

import { type Bytes, base64url, fromBase64url, textOf, utf8 } from './bytes.ts';
import { NAME } from './subjects.ts';

export interface JoinCode {
  /** where the post serves the page, ending in a slash */
  readonly address: string;
  readonly incident: string;
  /** names the phone on the wire */
  readonly device: string;
  /** who carries it, as the post wrote it */
  readonly name: string;
  /** the seed of an nkey (Ed25519): the server knows only its public half */
  readonly seed: string;
  /** the incident's key: 32 bytes */
  readonly key: Bytes;
}

export type JoinRead =
  | { readonly kind: 'code'; readonly code: JoinCode }
  | { readonly kind: 'refused'; readonly why: string };

const SCHEMA = 'fieldsay-join/1';
/** In the address the code stands after the hash, which a browser sends to nobody. */
const MARK = '#join=';
const SEED = /^SU[A-Z2-7]{56}$/;
const LONGEST_NAME = 60;

/** The address to scan or to open: the page of the post, with the code after the hash. */
export function joinText({ address, incident, device, name, seed, key }: JoinCode): string {
  const parts = [SCHEMA, incident, device, name, seed, base64url(key)];
  return `${address}${MARK}${base64url(utf8(JSON.stringify(parts)))}`;
}

const refused = (what: string): JoinRead => ({
  kind: 'refused',
  why: `This is no code to join an incident: ${what}. Ask the post for a fresh one.`,
});

const pageOf = (text: string): string | null => {
  try {
    const { protocol, origin, pathname } = new URL(text);
    return protocol === 'https:' || protocol === 'http:'
      ? `${origin}${pathname.replace(/[^/]*$/, '')}`
      : null;
  } catch {
    return null;
  }
};

/** Reads what was scanned, typed or opened; never throws. */
export function readJoinText(text: string): JoinRead {
  const [before = '', packed] = text.trim().split(MARK);
  if (packed === undefined) return refused('it has no part after “#join=”');
  const address = pageOf(before);
  if (address === null) return refused('it does not begin with the address of a post');
  const bytes = fromBase64url(packed);
  if (bytes === null) return refused('it was cut off or mistyped');
  let parts: unknown;
  try {
    parts = JSON.parse(textOf(bytes));
  } catch {
    return refused('it was cut off or mistyped');
  }
  if (!Array.isArray(parts) || parts[0] !== SCHEMA) return refused('it is of another version');
  const [, incident, device, name, seed, packedKey] = parts.map(String);
  if (incident === undefined || !NAME.test(incident)) return refused('the incident is not named');
  if (device === undefined || !NAME.test(device)) return refused('the device is not named');
  if (seed === undefined || !SEED.test(seed)) return refused('the device’s credential is damaged');
  const key = fromBase64url(packedKey ?? '');
  if (key === null || key.length !== 32) return refused('the incident’s key is damaged');
  return {
    kind: 'code',
    code: { address, incident, device, name: (name ?? '').slice(0, LONGEST_NAME), seed, key },
  };
}

/** True where an address carries a code. */
export const hasJoinCode = (address: string): boolean => address.includes(MARK);
