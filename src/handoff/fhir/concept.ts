// Codes, quantities and reasons for absent data, written one way throughout a document.

import { SYSTEMS, type SystemName, systemUrl } from './codes.ts';
import { LOINC, type LoincName } from './loinc.ts';
import type { CodeableConcept, Coding, Quantity } from './shapes.ts';

const LOINC_SYSTEM = 'http://loinc.org';
const HL7 = 'http://terminology.hl7.org/CodeSystem';

/** A code of ours; its display stands in the table of its system. */
export function ownCoding(system: SystemName, code: string): Coding {
  const display = SYSTEMS[system].concepts.find((concept) => concept.code === code)?.display;
  return { system: systemUrl(system), code, ...(display === undefined ? {} : { display }) };
}

/** A concept of ours; `text` is what a reader is shown, else the display. */
export function own(system: SystemName, code: string, text?: string): CodeableConcept {
  const coding = ownCoding(system, code);
  const shown = text ?? coding.display;
  return { coding: [coding], ...(shown === undefined ? {} : { text: shown }) };
}

export const loincCoding = ({
  code,
  display,
}: {
  readonly code: string;
  readonly display: string;
}): Coding => ({
  system: LOINC_SYSTEM,
  code,
  display,
});

/** A concept with one or more LOINC codes for it. */
export const loinc = (text: string, ...names: readonly LoincName[]): CodeableConcept => ({
  coding: names.map((name) => loincCoding(LOINC[name])),
  text,
});

/** A concept of one of HL7's code systems. */
export const hl7 = (system: string, code: string, display: string): CodeableConcept => ({
  coding: [{ system: `${HL7}/${system}`, code, display }],
});

/** Why there is no value (HL7 CodeSystem data-absent-reason). */
export const ABSENT = { unknown: 'Unknown', 'not-performed': 'Not Performed' } as const;

export const absent = (reason: keyof typeof ABSENT, text: string): CodeableConcept => ({
  ...hl7('data-absent-reason', reason, ABSENT[reason]),
  text,
});

/** Stands in the place of a value that nobody said. */
export const UNSAID = {
  extension: [{ url: 'http://hl7.org/fhir/StructureDefinition/data-absent-reason', valueCode: 'unknown' }],
} as const;

/** A number in a unit of UCUM; `unit` is how it is shown. */
export const quantity = (value: number, code: string, unit: string): Quantity => ({
  value,
  unit,
  system: 'http://unitsofmeasure.org',
  code,
});
