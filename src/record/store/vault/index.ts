// Promises that what is kept can be read only with the device's key, and once a passphrase is set only with that.

export { type Opened, openForOne, openVault } from './open.ts';
export { sealAnew } from './seal-anew.ts';
export { addPasskey, changePassphrase, type PassphraseSet, setPassphrase } from './set-passphrase.ts';
export { lockedVault, type Unlocked, unlock, unlockWithSecret, waitToTry } from './unlock.ts';
export { keyFromPassphrase, ROUNDS } from './wrap.ts';
