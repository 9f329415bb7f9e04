// An entry as an Observation: the parts that all of them share, so that status, time and words are never forgotten.

import type { Entry } from '../../record/entry.ts';
import type { Level, Part, Side, Site } from '../../terms/index.ts';
import { capital } from '../sentences/list.ts';
import { placeName } from '../sentences/place.ts';
import { absent, hl7, own } from './concept.ts';
import { entryName, fhirTime, type Scene } from './scene.ts';
import { sentenceOf } from './sentence.ts';
import type { CodeableConcept, Component, Observation } from './shapes.ts';
import { observationStatus, trustNotes, trustTag } from './trust.ts';
import { narrative, noted, plainWords } from './words.ts';

/** Categories of HL7's CodeSystem observation-category. */
export const EXAM = [hl7('observation-category', 'exam', 'Exam')] as const;
export const VITAL_SIGNS = [hl7('observation-category', 'vital-signs', 'Vital Signs')] as const;

/** What an Observation says; who, when and how far it can be relied on are added. */
export type Said = Pick<Observation, 'code'> &
  Partial<Omit<Observation, 'id' | 'meta' | 'text' | 'resourceType' | 'status'>> & {
    /** a vital-signs profile of the standard, by its id */
    readonly profile?: string;
  };

export const profileUrl = (id: string): string => `http://hl7.org/fhir/StructureDefinition/${id}`;

/** The Observation of one entry. */
export function observationOf(entry: Entry, scene: Scene, { profile, ...said }: Said): Observation {
  return {
    resourceType: 'Observation',
    id: scene.idOf(entryName(entry.id)),
    meta: {
      ...(profile === undefined ? {} : { profile: [profileUrl(profile)] }),
      tag: [trustTag(entry)],
    },
    text: narrative([sentenceOf(entry, scene.day)]),
    status: observationStatus(entry),
    subject: scene.patient,
    encounter: scene.encounter,
    effectiveDateTime: fhirTime(entry.at),
    issued: fhirTime(entry.heardAt),
    performer: [scene.responder],
    ...noted(trustNotes(entry)),
    ...said,
  };
}

interface Place {
  readonly site: Site;
  readonly side: Side | null;
  readonly part?: readonly Part[];
  readonly level?: Level;
}

/** The place with its side in the code and in the words; the words also say where a side was not said. */
export const bodySite = (place: Place): CodeableConcept =>
  own('place', place.side === null ? place.site : `${place.side}-${place.site}`, capital(placeName(place)));

/** A component for each quality, in the words said. */
export const qualities = (words: readonly string[] | undefined): readonly Component[] =>
  (words ?? []).flatMap((word) => {
    const valueString = plainWords(word);
    return valueString === null ? [] : [{ code: own('attribute', 'quality'), valueString }];
  });

/** The components, or nothing: the standard has no empty lists. */
export const withComponents = (component: readonly Component[]): Pick<Said, 'component'> =>
  component.length === 0 ? {} : { component };

/** The components that are all an Observation says; where there are none, that nothing was said. */
export const onlyComponents = (component: readonly Component[]): Partial<Said> =>
  component.length === 0 ? { dataAbsentReason: absent('unknown', 'Not said') } : { component };
