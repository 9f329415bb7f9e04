// Promises the recogniser's model in the browser's own storage: fetched once, checked by SHA-256, there without a network.

export { type Fetched, type FetchParts, fetchModel } from './fetch-model.ts';
export { bytesOf, type ModelPart } from './model-part.ts';
export { type ModelStore, missingFiles, openModelStore, type ReadModel, readModel } from './store.ts';
