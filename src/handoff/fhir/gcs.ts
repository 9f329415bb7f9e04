// The Glasgow Coma Scale as HL7's example Observation/glasgow has it; a component without a rating says why, never 1.

import type { GcsPart, VitalReading } from '../../terms/index.ts';
import { absent, loinc, loincCoding, ownCoding, quantity } from './concept.ts';
import { GCS_ANSWERS, type LoincName } from './loinc.ts';
import { EXAM, type Said } from './observation.ts';
import type { CodeableConcept, Coding, Component } from './shapes.ts';

type Gcs = Extract<VitalReading, { vital: 'gcs' }>['value'];

const PARTS = [
  { part: 'eye', letter: 'E', name: 'gcs-eye', text: 'GCS eye' },
  { part: 'verbal', letter: 'V', name: 'gcs-verbal', text: 'GCS verbal' },
  { part: 'motor', letter: 'M', name: 'gcs-motor', text: 'GCS motor' },
] as const satisfies readonly { part: keyof Gcs; letter: string; name: LoincName; text: string }[];

/** How HL7 gives a coded answer its number. */
const ORDINAL = 'http://hl7.org/fhir/StructureDefinition/ordinalValue';

function rating(letter: string, score: number): CodeableConcept {
  const extension = [{ url: ORDINAL, valueDecimal: score }];
  const mine = ownCoding('gcs', `${letter}${score}`);
  const answer = GCS_ANSWERS[mine.code];
  const codings: readonly Coding[] = answer === undefined ? [mine] : [mine, loincCoding(answer)];
  const words = mine.display === undefined ? '' : ` (${mine.display})`;
  return { coding: codings.map((coding) => ({ extension, ...coding })), text: `${score}${words}` };
}

function component(row: (typeof PARTS)[number], said: GcsPart | undefined): Component {
  const code = loinc(row.text, row.name);
  if (said === 'NT') return { code, dataAbsentReason: absent('not-performed', 'Not testable') };
  if (said === undefined) return { code, dataAbsentReason: absent('unknown', 'Not said') };
  return { code, valueCodeableConcept: rating(row.letter, said) };
}

/**
 * Components in the order eye, verbal, motor, and the total as said. No total stands where a component is not testable
 * (Teasdale G et al. Lancet Neurol 2014;13:844-854; from memory), and none is worked out here. That "not testable" is
 * `not-performed` is a choice of ours: no published mapping was found.
 */
export function gcs(value: Gcs): Said {
  const code = loinc('Glasgow Coma Scale (GCS)', 'gcs-total');
  const named = PARTS.some(({ part }) => value[part] !== undefined);
  const untestable = PARTS.some(({ part }) => value[part] === 'NT');
  const components = named ? { component: PARTS.map((row) => component(row, value[row.part])) } : {};
  if (untestable) {
    const dataAbsentReason = absent('not-performed', 'No total: a component is not testable');
    return { category: EXAM, code, dataAbsentReason, ...components };
  }
  return value.total === undefined
    ? { category: EXAM, code, dataAbsentReason: absent('unknown', 'Total not said'), ...components }
    : { category: EXAM, code, valueQuantity: quantity(value.total, '{score}', '{score}'), ...components };
}
