// What the page says where the device could not keep or give something, in words that name what to do.

import { type FailureKind, isStoreFailure } from '../../record/store/index.ts';

const WORDS: Readonly<Record<FailureKind, string>> = {
  unavailable:
    'this browser gives the page no storage. A private window may be why; open the page in a plain one.',
  blocked: 'an older version of this page is open elsewhere and holds the storage. Close it there.',
  newer: 'the storage was made by a later version of this page. Reload this page to bring it up to date.',
  full: 'the device has no room left. Free some room, or export and remove an old record.',
  aborted: 'the browser broke the writing off. It is tried again by itself.',
  request: 'the browser refused to write. It is tried again by itself.',
  taken: 'another page wrote to this record at the same moment. Reload this page to see both.',
};

/** Why the device's storage failed, to follow a colon. */
export const whyNot = (thrown: unknown): string =>
  isStoreFailure(thrown) ? WORDS[thrown.failure] : 'the browser gave no reason.';

/** What is said while something stands on the screen and not on the disk. */
export const notKept = (thrown: unknown): string =>
  `NOT KEPT on this device; a reload would lose what is new: ${whyNot(thrown)}`;
