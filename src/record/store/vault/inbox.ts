// Puts a data key where only the passphrase takes it out again: what is begun under a locked screen is locked too.

import type { Bytes } from '../bytes.ts';
import { type Keys, seal, unseal } from '../sealed.ts';
import type { InboxKey, LockedVault } from './doc.ts';
import { keyFromSecret, unwrap, wrap } from './wrap.ts';

const CURVE = { name: 'ECDH', namedCurve: 'P-256' } as const;
const PLACE = 'fieldsay-inbox/1';

const rawPublic = async (key: CryptoKey): Promise<Bytes> =>
  new Uint8Array(await crypto.subtle.exportKey('raw', key));
const publicOf = (raw: Bytes): Promise<CryptoKey> => crypto.subtle.importKey('raw', raw, CURVE, true, []);

async function shared(mine: CryptoKey, theirs: CryptoKey, sender: Bytes): Promise<CryptoKey> {
  const bits = await crypto.subtle.deriveBits({ name: 'ECDH', public: theirs }, mine, 256);
  return keyFromSecret(new Uint8Array(bits), sender, PLACE);
}

/** A new inbox; its private half is sealed under the main key. */
export async function createInbox(keys: Keys): Promise<LockedVault['inbox']> {
  const pair = await crypto.subtle.generateKey(CURVE, true, ['deriveBits']);
  const jwk = await crypto.subtle.exportKey('jwk', pair.privateKey);
  return { publicKey: await rawPublic(pair.publicKey), privateKey: await seal(keys, PLACE, jwk) };
}

export async function putIn(publicKey: Bytes, name: string, raw: Bytes): Promise<InboxKey> {
  const pair = await crypto.subtle.generateKey(CURVE, false, ['deriveBits']);
  const sender = await rawPublic(pair.publicKey);
  const by = await shared(pair.privateKey, await publicOf(publicKey), sender);
  return { name, sender, ...(await wrap(by, name, raw)) };
}

/** The data keys that wait in the inbox, as raw bytes by name; one that cannot be opened is left out. */
export async function takeOut(keys: Keys, vault: LockedVault): Promise<ReadonlyMap<string, Bytes>> {
  const found = new Map<string, Bytes>();
  if (vault.waiting.length === 0) return found;
  const opened = await unseal(keys, PLACE, vault.inbox.privateKey);
  if (opened.kind !== 'value') return found;
  const mine = await crypto.subtle.importKey('jwk', opened.value as JsonWebKey, CURVE, false, ['deriveBits']);
  for (const one of vault.waiting) {
    const by = await shared(mine, await publicOf(one.sender), one.sender);
    const raw = await unwrap(by, one.name, one);
    if (raw !== null) found.set(one.name, raw);
  }
  return found;
}
