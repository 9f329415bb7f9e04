// The FHIR documents of 500 invented records by a fixed seed: the same in every run.

import fc from 'fast-check';
import { type Bundle, fhirDocument } from '../../src/handoff/fhir/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { fhirRecord } from '../handoff/fhir-arbitrary.ts';
import { fhirInputOf } from '../handoff/fhir-input.ts';
import { nothingExamined } from '../handoff/made-up.ts';

export const RECORDS: readonly (readonly Entry[])[] = fc.sample(fhirRecord, { numRuns: 500, seed: 401 });

/** One in ten has a place for each site that was not examined; it is much the longest part of a document. */
export const bundlesMade = (): readonly Bundle[] =>
  RECORDS.map((entries, index) =>
    fhirDocument(fhirInputOf(entries, { coverage: index % 10 === 0 ? nothingExamined : [], flags: [] })),
  );
