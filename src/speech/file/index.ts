// Promises the utterances of a recorded file, heard by the bundled recogniser in Node, with no network.

export { type HearingSetup, hearFile } from './hear-file.ts';
export type { HeardFile, Unheard } from './hear-sound.ts';
export { dictionaryPath } from './model-paths.ts';
