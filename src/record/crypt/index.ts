// Promises rules for passphrases and for waiting after wrong ones, as plain functions.

export {
  judgePassphrase,
  LEAST_LENGTH,
  type PassphraseJudged,
  settledPassphrase,
} from './passphrase-rules.ts';
export { NO_TRIES, seenAt, stillToWait, type Tries } from './tries.ts';
