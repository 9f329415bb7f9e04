// A record as the bytes that are passed on: its log whole, deflated, and sealed where a passphrase was given.

import type { RecordEvent } from '../../record/index.ts';
import { keyFromPassphrase, type RecordFacts, ROUNDS } from '../../record/store/index.ts';

export interface Contents {
  readonly facts: RecordFacts;
  readonly events: readonly RecordEvent[];
}

export const SCHEMA = 'fieldsay-transfer/1';

/** First byte: the form; second: whether it is sealed. */
const FORM = 1;
const SEALED = 1;
const SALT = 16;
const IV = 12;
/** Form, flag, rounds, salt and iv. */
const HEAD = 2 + 4 + SALT + IV;

type Bytes = Uint8Array<ArrayBuffer>;

async function through(bytes: Bytes, change: GenericTransformStream): Promise<Bytes> {
  const stream = new Blob([bytes]).stream().pipeThrough(change as ReadableWritablePair<Bytes, Bytes>);
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** The bytes of a record; an empty passphrase leaves them open to whoever reads the symbols. */
export async function pack({ facts, events }: Contents, passphrase: string): Promise<Bytes> {
  const text = JSON.stringify({ schema: SCHEMA, facts, events });
  const deflated = await through(new TextEncoder().encode(text), new CompressionStream('deflate-raw'));
  if (passphrase.trim() === '') return joined(Uint8Array.of(FORM, 0), deflated);
  const head = new Uint8Array(HEAD);
  head.set([FORM, SEALED]);
  new DataView(head.buffer).setUint32(2, ROUNDS);
  crypto.getRandomValues(head.subarray(6));
  const { key, iv } = await keyIn(head, passphrase);
  const sealed = await crypto.subtle.encrypt({ name: 'AES-GCM', iv, additionalData: head }, key, deflated);
  return joined(head, new Uint8Array(sealed));
}

export type Unpacked =
  | { readonly kind: 'contents'; readonly schema: unknown; readonly facts: unknown; readonly events: unknown }
  | { readonly kind: 'sealed' }
  | { readonly kind: 'unreadable'; readonly why: string };

const unreadable = (why: string): Unpacked => ({ kind: 'unreadable', why });

/** A log this large is no exam's: an altered transfer could otherwise fill the device. */
const MOST_INFLATED = 64_000_000;

/** What was passed on, still to be checked; `sealed` where it needs a passphrase and none was given. */
export async function unpack(bytes: Bytes, passphrase: string): Promise<Unpacked> {
  const [form, flag] = bytes;
  if (form !== FORM || (flag !== 0 && flag !== SEALED))
    return unreadable('it was made by another version of this page');
  let deflated: Bytes = bytes.slice(2);
  if (flag === SEALED) {
    if (passphrase.trim() === '') return { kind: 'sealed' };
    if (bytes.length < HEAD) return unreadable('it is cut short');
    const head = bytes.slice(0, HEAD);
    try {
      const { key, iv } = await keyIn(head, passphrase);
      const open = { name: 'AES-GCM', iv, additionalData: head };
      deflated = new Uint8Array(await crypto.subtle.decrypt(open, key, bytes.slice(HEAD)));
    } catch {
      return unreadable('the passphrase does not fit, or something in it was altered');
    }
  }
  try {
    const inflated = await through(deflated, limited(MOST_INFLATED));
    const value: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(inflated));
    if (typeof value !== 'object' || value === null) return unreadable('it holds no record');
    const { schema, facts, events } = value as Readonly<Record<string, unknown>>;
    return { kind: 'contents', schema, facts, events };
  } catch {
    return unreadable('its contents cannot be read');
  }
}

/** Inflates up to a number of bytes, and fails beyond. */
function limited(most: number): GenericTransformStream {
  const inflate = new DecompressionStream('deflate-raw');
  let length = 0;
  const count = new TransformStream<Uint8Array, Uint8Array>({
    transform: (piece, controller) => {
      length += piece.length;
      if (length > most) controller.error(new Error('too large'));
      else controller.enqueue(piece);
    },
  });
  return { writable: inflate.writable, readable: inflate.readable.pipeThrough(count) };
}

async function keyIn(
  head: Bytes,
  passphrase: string,
): Promise<{ readonly key: CryptoKey; readonly iv: Bytes }> {
  const rounds = new DataView(head.buffer, head.byteOffset).getUint32(2);
  // A head that asks for a hundred million rounds would stop the page.
  if (rounds > 10 * ROUNDS) throw new Error('too many rounds');
  const salt = head.slice(6, 6 + SALT);
  const key = await keyFromPassphrase(passphrase, salt, rounds);
  return { key, iv: head.slice(6 + SALT) };
}

function joined(one: Uint8Array, other: Uint8Array): Bytes {
  const bytes = new Uint8Array(one.length + other.length);
  bytes.set(one);
  bytes.set(other, one.length);
  return bytes;
}
