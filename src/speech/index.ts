// Promises what was said, whichever ear heard it: words with their times and how surely, and speech not understood as such.
//
// A page's worker and Node hear alike (in a bundle, "blob-polyfill" must be engine/blob.js, as vite.config.ts has it):
//
//   const module = await createModule({ print: () => {}, printErr: () => {} });  // the package's default export; in a
//       // page a worker must load it, and it finds its .wasm beside itself or by `locateFile`
//   const models = modelsOf(new Map(MODEL_FILES.map(({ name, of, file }) => [name, its bytes])));
//   const worked = workedOutOf(text);                       // what is listened for, as the build or Node worked it out
//   const hearing = openHearing({ module, models, worked });
//   const stream = hearing.begin(48_000);                   // mono samples at that rate, any block length
//   for (const { utterance, sound } of stream.push(block)) …
//   for (const { utterance, sound } of stream.flush()) …    // at the end, or where the microphone was lost

export {
  ageWords,
  type Calibrated,
  type Calibration,
  calibrationOf,
  calibrationWords,
  gathered,
  stillGood,
} from './calibration.ts';
export { isEcho, type Spoken } from './echo.ts';
export { RATE } from './engine/decoder.ts';
export {
  type Band,
  MODEL_FILES,
  type ModelFile,
  type ModelFiles,
  type Models,
  modelsOf,
  PACKAGE_FOLDER,
} from './engine/model-files.ts';
export type { SoundModule } from './engine/sound-module.ts';
export {
  type Heard,
  type Hearing,
  type HearingParts,
  type HearingStream,
  openHearing,
} from './hearing/hearing.ts';
export type { HearingFiles } from './hearing/hearing-files.ts';
export { isSmallWord } from './hearing/small-words.ts';
export {
  type HeardUtterance,
  hearingOf,
  isNotUnderstood,
  notUnderstood,
  type UtteredWord,
} from './hearing/utterance.ts';
export { type WorkedOut, workOut } from './hearing/work-out.ts';
export { textOf, workedOutOf } from './hearing/worked-out-text.ts';
export { type Advice, adviceOf, decibels, recent } from './level.ts';
