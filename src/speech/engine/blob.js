// Stands in for the Blob that the recogniser's package brings along for old browsers, which fails in a worker.

export const Blob = globalThis.Blob;
