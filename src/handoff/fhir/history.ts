// History as it was told: an allergy or a medicine only where one was named as such; a denial never makes one.

import type { Entry } from '../../record/entry.ts';
import { deniesOneAllergy, topicName } from '../../timeline/index.ts';
import { told } from '../sentences/history.ts';
import { absent, hl7, loinc, own, quantity } from './concept.ts';
import { deniesAll } from './denies-all.ts';
import { observationOf, type Said, VITAL_SIGNS } from './observation.ts';
import { entryName, fhirTime, type Scene } from './scene.ts';
import { sentenceOf } from './sentence.ts';
import type { AllergyIntolerance, MedicationStatement, Observation } from './shapes.ts';
import { trustNotes, trustTag, whenConfirmed } from './trust.ts';
import { narrative, noted, plainWords } from './words.ts';

type HistoryEntry = Extract<Entry, { kind: 'history' }>;

/** A denial in the teller's own words, which the record does not mark as one: it must not read as a thing taken. */
const NEGATIVE =
  /\b(no|not|none|nothing|never|nil|nkda|nka|denies|denied|without|isn't|doesn't|don't|aren't)\b/i;

/** The words where they name something that is so; null for a denial and for what names nothing. */
function namedThing(entry: HistoryEntry): string | null {
  const words = plainWords(entry.text);
  return entry.present === false || words === null || NEGATIVE.test(words.replace('’', "'")) ? null : words;
}

function said(entry: HistoryEntry): Said {
  const code = own('topic', entry.topic, topicName(entry.topic));
  // A bare false would deny every allergy there is, or all that the topic holds.
  if (
    deniesOneAllergy(entry) ||
    (entry.present === false && entry.topic !== 'allergies' && !deniesAll(entry))
  ) {
    const words = plainWords(told(entry));
    return words === null
      ? { code, dataAbsentReason: absent('unknown', 'No words') }
      : { code, valueString: words };
  }
  if (entry.present === false) return { code, valueBoolean: false };
  if (entry.kg !== undefined)
    return {
      profile: 'bodyweight',
      category: VITAL_SIGNS,
      code: loinc('Body weight', 'body-weight'),
      method: own('method', 'told'),
      valueQuantity: quantity(entry.kg, 'kg', 'kg'),
    };
  if (entry.years !== undefined) return { code, valueQuantity: quantity(entry.years, 'a', 'years') };
  const valueString = plainWords(entry.text);
  if (valueString !== null) return { code, valueString };
  return { code, dataAbsentReason: absent('unknown', 'No words') };
}

/** The words of a denial stand in its note and its narrative; its value is false where it denies all of its topic, and else what it denies. */
const historyObservation = (entry: HistoryEntry, scene: Scene): Observation =>
  observationOf(entry, scene, said(entry));

const shared = (entry: HistoryEntry, scene: Scene) => ({
  id: scene.idOf(entryName(entry.id)),
  meta: { tag: [trustTag(entry)] },
  text: narrative([sentenceOf(entry, scene.day)]),
  ...noted(trustNotes(entry)),
});

/**
 * `unconfirmed` in FHIR's sense, whatever was confirmed of the words: nobody has tested an allergy that is told of, and
 * what a partner confirms is that it was said. That stands in the tag.
 */
const allergy = (entry: HistoryEntry, substance: string, scene: Scene): AllergyIntolerance => ({
  resourceType: 'AllergyIntolerance',
  ...shared(entry, scene),
  clinicalStatus: hl7('allergyintolerance-clinical', 'active', 'Active'),
  verificationStatus: hl7('allergyintolerance-verification', 'unconfirmed', 'Unconfirmed'),
  code: { text: substance },
  patient: scene.patient,
  encounter: scene.encounter,
  recordedDate: fhirTime(entry.heardAt),
  recorder: scene.responder,
});

const medicine = (entry: HistoryEntry, name: string, scene: Scene): MedicationStatement => ({
  resourceType: 'MedicationStatement',
  ...shared(entry, scene),
  status: whenConfirmed(entry, 'active'),
  medicationCodeableConcept: { text: name },
  subject: scene.patient,
  context: scene.encounter,
  dateAsserted: fhirTime(entry.heardAt),
});

/** The resource of something told. */
export function historyResource(
  entry: HistoryEntry,
  scene: Scene,
): AllergyIntolerance | MedicationStatement | Observation {
  const named = namedThing(entry);
  if (named !== null && entry.topic === 'allergies') return allergy(entry, named, scene);
  if (named !== null && entry.topic === 'medications') return medicine(entry, named, scene);
  return historyObservation(entry, scene);
}
