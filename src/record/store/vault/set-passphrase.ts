// Sets or changes the passphrase: in one transaction the device key is gone and the new lock holds.

import { judgePassphrase } from '../../crypt/index.ts';
import { type Bytes, newName, random } from '../bytes.ts';
import type { Keys } from '../sealed.ts';
import type { Shelf } from '../shelf.ts';
import { changeVault, type LockedVault, readVault, TRIES_KEY, VAULT_KEY } from './doc.ts';
import { createInbox } from './inbox.ts';
import { allKeys, PASSKEY_PURPOSE, unlock } from './unlock.ts';
import { keyFromPassphrase, keyFromSecret, keyOf, newRawKey, ROUNDS, unwrap, wrap } from './wrap.ts';

export type PassphraseSet =
  | { readonly kind: 'set'; readonly keys: Keys }
  | { readonly kind: 'refused'; readonly why: string }
  | { readonly kind: 'wrong' | 'wait'; readonly waitMs: number };

const refused = (why: string): PassphraseSet => ({ kind: 'refused', why });

const CHANGED = refused('Another page changed the keys meanwhile. Reload this page and try again.');

async function lockWith(passphrase: string, name: string, raw: Bytes): Promise<LockedVault['passphrase']> {
  const salt = random(16);
  const by = await keyFromPassphrase(passphrase, salt, ROUNDS);
  return { salt, rounds: ROUNDS, ...(await wrap(by, name, raw)) };
}

/**
 * Sets the first passphrase. A new main key is made, since the old one lay beside the device key; what the old one
 * sealed can be read on, and `sealAnew` brings it under the new one.
 */
export async function setPassphrase(shelf: Shelf, passphrase: string): Promise<PassphraseSet> {
  const judged = judgePassphrase(passphrase);
  if (judged.kind === 'refused') return judged;
  const before = await readVault(shelf);
  if (before === null || before === 'unknown' || before.kind !== 'device')
    return refused('A passphrase is set already; change it instead.');
  const oldRaw = await unwrap(before.device, before.main, before.wrapped);
  if (oldRaw === null) return refused('The device key does not fit what is kept here.');
  const [main, raw] = [newName(), newRawKey()];
  const mainKey = await keyOf(raw);
  const keys: Keys = {
    main,
    all: new Map([
      [main, mainKey],
      [before.main, await keyOf(oldRaw)],
    ]),
  };
  const vault: LockedVault = {
    version: 1,
    kind: 'locked',
    main,
    passphrase: await lockWith(passphrase, main, raw),
    passkey: null,
    inbox: await createInbox(keys),
    waiting: [],
    older: [{ name: before.main, ...(await wrap(mainKey, before.main, oldRaw)) }],
  };
  let isSet = false;
  // Another page may have set one while the key was worked out: then that one holds.
  const to = (lies: unknown): LockedVault | undefined => {
    const now = lies as { readonly kind?: unknown; readonly main?: unknown } | undefined;
    isSet = now?.kind === 'device' && now.main === before.main;
    return isSet ? vault : undefined;
  };
  await shelf.write({ change: [{ key: VAULT_KEY, to }], remove: [TRIES_KEY] });
  return isSet ? { kind: 'set', keys } : refused('A passphrase is set already; change it instead.');
}

/** Changes the passphrase; the old one must be given again, whoever holds the page open. `now` in epoch ms. */
export async function changePassphrase(
  shelf: Shelf,
  old: string,
  passphrase: string,
  now: number,
): Promise<PassphraseSet> {
  const judged = judgePassphrase(passphrase);
  if (judged.kind === 'refused') return judged;
  const opened = await unlock(shelf, old, now);
  if (opened.kind === 'not-locked') return refused('No passphrase is set yet.');
  if (opened.kind !== 'open') return opened;
  const vault = await readVault(shelf);
  if (vault === null || vault === 'unknown' || vault.kind !== 'locked')
    return refused('No passphrase is set yet.');
  const lock = await lockWith(passphrase, vault.main, opened.raw);
  if (!(await changeVault(shelf, vault, (now) => ({ ...now, passphrase: lock })))) return CHANGED;
  return { kind: 'set', keys: await allKeys(vault, opened.raw) };
}

/** Lets a passkey open the vault too; the passphrase must be given, and goes on working. */
export async function addPasskey(
  shelf: Shelf,
  passphrase: string,
  made: { readonly credential: Bytes; readonly salt: Bytes; readonly secret: Bytes },
  now: number,
): Promise<PassphraseSet> {
  const opened = await unlock(shelf, passphrase, now);
  if (opened.kind === 'not-locked')
    return refused('Set a passphrase first: a passkey can be lost with its device.');
  if (opened.kind !== 'open') return opened;
  const vault = await readVault(shelf);
  if (vault === null || vault === 'unknown' || vault.kind !== 'locked')
    return refused('No passphrase is set yet.');
  const by = await keyFromSecret(made.secret, made.salt, PASSKEY_PURPOSE);
  const { credential, salt } = made;
  const passkey = { credential, salt, ...(await wrap(by, vault.main, opened.raw)) };
  if (!(await changeVault(shelf, vault, (now) => ({ ...now, passkey })))) return CHANGED;
  return { kind: 'set', keys: opened.keys };
}
