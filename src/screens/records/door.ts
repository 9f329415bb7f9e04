// Holds the keys while the page is open, and nothing of them once it is locked.

import { type Signal, signal } from '@preact/signals';
import {
  addPasskey,
  changePassphrase,
  isStoreFailure,
  type Keys,
  lockedVault,
  openForOne,
  openVault,
  type PassphraseSet,
  type Shelf,
  sealAnew,
  setPassphrase,
  takeOverOpenRecords,
  type Unlocked,
  unlock,
  unlockWithSecret,
  waitToTry,
} from '../../record/store/index.ts';
import { whyNot } from './words.ts';

export type DoorState =
  | { readonly state: 'opening' }
  /** `one`: begun while locked; it reads nothing that was kept before */
  | { readonly state: 'open'; readonly by: 'device' | 'passphrase' | 'one' }
  | { readonly state: 'locked'; readonly hasPasskey: boolean }
  /** nothing can be kept, and why; talk is taken all the same */
  | { readonly state: 'without'; readonly why: string };

export interface Door {
  readonly now: Signal<DoorState>;
  /** null unless the door is open */
  keys(): Keys | null;
  /** opens the door or finds it locked; may be tried again where there was no storage */
  start(): Promise<void>;
  /** looks whether another page set a passphrase, so that this page can be locked too */
  notice(): Promise<void>;
  /** forgets the keys; does nothing before a passphrase is set. Gives whether it is locked now. */
  lock(): boolean;
  unlock(passphrase: string): Promise<Unlocked['kind']>;
  unlockWithSecret(secret: Uint8Array<ArrayBuffer>): Promise<Unlocked['kind']>;
  /** ms until a passphrase may be tried */
  wait(): Promise<number>;
  beginForOne(): Promise<void>;
  setPassphrase(passphrase: string): Promise<PassphraseSet>;
  changePassphrase(old: string, passphrase: string): Promise<PassphraseSet>;
  addPasskey(passphrase: string, made: Parameters<typeof addPasskey>[2]): Promise<PassphraseSet>;
  /** seals what lies under older keys anew; only for the page that writes */
  sealAnew(): Promise<void>;
}

/** A door to the shelf; `clock` gives epoch ms. */
export function createDoor(shelf: Shelf, clock: () => number): Door {
  const now = signal<DoorState>({ state: 'opening' });
  let held: Keys | null = null;
  let hasPasskey = false;

  const opened = (keys: Keys, by: 'device' | 'passphrase' | 'one'): void => {
    held = keys;
    now.value = { state: 'open', by };
  };
  const settle = (result: Unlocked): Unlocked['kind'] => {
    if (result.kind === 'open') opened(result.keys, 'passphrase');
    return result.kind;
  };

  return {
    now,
    keys: () => held,
    start: async () => {
      try {
        const found = await openVault(shelf);
        if (found.kind === 'locked') {
          hasPasskey = found.hasPasskey;
          now.value = { state: 'locked', hasPasskey };
        } else if (found.kind === 'unusable') now.value = { state: 'without', why: found.why };
        else {
          await takeOverOpenRecords(shelf, found.keys);
          opened(found.keys, 'device');
        }
      } catch (error) {
        if (!isStoreFailure(error)) throw error;
        now.value = { state: 'without', why: whyNot(error) };
      }
    },
    notice: async () => {
      const vault = await lockedVault(shelf).catch(() => null);
      const state = now.value;
      if (vault === null || state.state !== 'open' || state.by !== 'device') return;
      hasPasskey = vault.passkey !== null;
      // What it holds is the key of before, which the vault keeps under the new one: what it seals can be read on.
      now.value = { state: 'open', by: 'passphrase' };
    },
    lock: () => {
      const state = now.value;
      if (state.state !== 'open' || state.by === 'device') return state.state === 'locked';
      held = null;
      now.value = { state: 'locked', hasPasskey };
      return true;
    },
    unlock: async (passphrase) => settle(await unlock(shelf, passphrase, clock())),
    unlockWithSecret: async (secret) => settle(await unlockWithSecret(shelf, secret)),
    wait: () => waitToTry(shelf, clock()),
    beginForOne: async () => opened(await openForOne(shelf), 'one'),
    setPassphrase: async (passphrase) => {
      const set = await setPassphrase(shelf, passphrase);
      if (set.kind === 'set') opened(set.keys, 'passphrase');
      return set;
    },
    changePassphrase: (old, passphrase) => changePassphrase(shelf, old, passphrase, clock()),
    addPasskey: async (passphrase, made) => {
      const set = await addPasskey(shelf, passphrase, made, clock());
      if (set.kind === 'set') hasPasskey = true;
      return set;
    },
    sealAnew: async () => {
      if (held !== null) await sealAnew(shelf, held);
    },
  };
}
