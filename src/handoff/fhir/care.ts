// Care given as a Procedure with its time and place, and a medicine given as its administration.

import type { Entry } from '../../record/entry.ts';
import { careName } from '../../timeline/index.ts';
import { own } from './concept.ts';
import { bodySite } from './observation.ts';
import { entryName, fhirTime, type Scene } from './scene.ts';
import { sentenceOf } from './sentence.ts';
import type { MedicationAdministration, Procedure } from './shapes.ts';
import { trustNotes, trustTag, whenConfirmed } from './trust.ts';
import { narrative, noted, plainWords } from './words.ts';

type CareEntry = Extract<Entry, { kind: 'care' }>;
type VisitEntry = Extract<Entry, { kind: 'visit' }>;

const shared = (entry: CareEntry | VisitEntry, scene: Scene) => ({
  id: scene.idOf(entryName(entry.id)),
  meta: { tag: [trustTag(entry)] },
  text: narrative([sentenceOf(entry, scene.day)]),
  status: whenConfirmed(entry, 'completed'),
  subject: scene.patient,
});

/** Dose and route are not recorded apart, so the place of one that has a place is told in its narrative and note. */
const administration = (entry: CareEntry, scene: Scene): MedicationAdministration => ({
  resourceType: 'MedicationAdministration',
  ...shared(entry, scene),
  medicationCodeableConcept: { text: plainWords(entry.text ?? '') ?? 'Medication, not named' },
  context: scene.encounter,
  effectiveDateTime: fhirTime(entry.at),
  ...noted([sentenceOf(entry, scene.day), ...trustNotes(entry)]),
});

/** The responder recorded it; who gave it was not said. */
export function careResource(entry: CareEntry, scene: Scene): MedicationAdministration | Procedure {
  if (entry.care === 'medication') return administration(entry, scene);
  const text = plainWords(entry.text ?? '');
  const name = careName(entry.care);
  return {
    resourceType: 'Procedure',
    ...shared(entry, scene),
    code: own('care', entry.care, text === null ? name : `${name}: ${text}`),
    encounter: scene.encounter,
    performedDateTime: fhirTime(entry.at),
    recorder: scene.responder,
    ...(entry.site === undefined
      ? {}
      : { bodySite: [bodySite({ site: entry.site, side: entry.side ?? null })] }),
    ...noted(trustNotes(entry)),
  };
}

/** A place looked at or felt: an act, since an Observation without a value could be read as one that found nothing. */
export const visitProcedure = (entry: VisitEntry, scene: Scene): Procedure => ({
  resourceType: 'Procedure',
  ...shared(entry, scene),
  code: own('act', 'visit'),
  encounter: scene.encounter,
  performedDateTime: fhirTime(entry.at),
  recorder: scene.responder,
  bodySite: [bodySite(entry)],
  ...noted(trustNotes(entry)),
});
