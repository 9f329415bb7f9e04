// A finding as HL7's example of an examination finding has it: the code, and true or false; here with place and side.

import type { Entry } from '../../record/entry.ts';
import { findingName } from '../../timeline/index.ts';
import { capital } from '../sentences/list.ts';
import { hl7, own, quantity } from './concept.ts';
import { bodySite, EXAM, observationOf, qualities, withComponents } from './observation.ts';
import type { Scene } from './scene.ts';
import type { CodeableConcept, Component, Observation } from './shapes.ts';

type FindingEntry = Extract<Entry, { kind: 'finding' }>;

/** Abnormal, as in HL7's example Observation/abdo-tender. */
export const ABNORMAL: CodeableConcept = hl7('v3-ObservationInterpretation', 'A', 'Abnormal');
/** Not "N": a finding that is not there does not make the place normal. */
const NEGATIVE: CodeableConcept = hl7('v3-ObservationInterpretation', 'NEG', 'Negative');

function severity(said: FindingEntry['severity']): readonly Component[] {
  if (said === undefined) return [];
  const code = own('attribute', 'severity');
  return typeof said === 'number'
    ? [{ code, valueQuantity: quantity(said, '{score}', 'out of 10') }]
    : [{ code, valueCodeableConcept: own('severity', said) }];
}

const details = (entry: FindingEntry): readonly Component[] => [
  ...(entry.part ?? []).map((part) => ({
    code: own('attribute', 'part'),
    valueCodeableConcept: own('part', part),
  })),
  ...(entry.level === undefined ? [] : [{ code: own('attribute', 'level'), valueString: entry.level }]),
  ...(entry.size === undefined
    ? []
    : [{ code: own('attribute', 'size'), valueQuantity: quantity(entry.size.value, 'cm', 'cm') }]),
  ...severity(entry.severity),
  ...(entry.count === undefined ? [] : [{ code: own('attribute', 'count'), valueInteger: entry.count }]),
  ...qualities(entry.quality),
];

/**
 * `valueBoolean` false is a pertinent negative. Interpretation: HL7 CodeSystem v3-ObservationInterpretation. An attribute
 * of a negative narrows what is denied ("no severe pain"), as in the record itself.
 */
export const findingObservation = (entry: FindingEntry, scene: Scene): Observation =>
  observationOf(entry, scene, {
    category: EXAM,
    code: own('finding', entry.finding, capital(findingName(entry.finding))),
    bodySite: bodySite(entry),
    valueBoolean: entry.present,
    interpretation: [entry.present ? ABNORMAL : NEGATIVE],
    ...withComponents(details(entry)),
  });
