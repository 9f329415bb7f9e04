// Promises that a value which was read back wrong, or not at all, is said to be so; nothing is taken as read back.

export { sayAgain } from './again.ts';
export { compareReadBack, type ReadBackRow } from './compare.ts';
