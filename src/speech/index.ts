// Promises what was said, whichever ear heard it: words with their times and how surely, and speech not understood as such.

export type { HearingFiles } from './hearing/hearing-files.ts';
export { type HeardUtterance, isNotUnderstood, notUnderstood } from './hearing/utterance.ts';
