// Promises the record as a FHIR R4 document in which nothing unconfirmed is final, nothing struck stands, and nothing
// that was not examined has a value.

export { codeSystems, systemUrl } from './codes.ts';
export { confirmationsOf } from './confirmations.ts';
export { fhirDocument } from './document.ts';
export type { Confirmation, FhirInput } from './input.ts';
export { LOINC, LOINC_NOTICE } from './loinc.ts';
export type * from './shapes.ts';
