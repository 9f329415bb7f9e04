// Vitals of one minute as the standard's panel of vital signs, which points to them and holds no value of its own.

import { type Entry, standing } from '../../record/entry.ts';
import type { Vital } from '../../terms/index.ts';
import { clock, inOrder, minuteOf } from '../../timeline/index.ts';
import { loinc } from './concept.ts';
import { profileUrl, VITAL_SIGNS } from './observation.ts';
import { entryName, fhirTime, type Scene } from './scene.ts';
import type { Observation } from './shapes.ts';
import { observationStatus } from './trust.ts';
import { narrative } from './words.ts';

/** Those with a profile of their own; the panel may hold no others. */
const MEMBERS: readonly Vital[] = [
  'pulse',
  'respirations',
  'blood-pressure',
  'oxygen-saturation',
  'temperature',
];

type VitalEntry = Extract<Entry, { kind: 'vital' }>;

function panel(first: VitalEntry, members: readonly VitalEntry[], scene: Scene): Observation {
  return {
    resourceType: 'Observation',
    id: scene.idOf(`panel/${minuteOf(first.at)}`),
    meta: { profile: [profileUrl('vitalspanel')] },
    text: narrative([`Vital signs at ${clock(first.at, scene.day)}: ${members.length} readings.`]),
    // A panel is no surer than the least sure of its members.
    status: members.every((member) => observationStatus(member) === 'final') ? 'final' : 'preliminary',
    category: VITAL_SIGNS,
    code: loinc('Vital signs', 'vital-signs-panel'),
    subject: scene.patient,
    encounter: scene.encounter,
    effectiveDateTime: fhirTime(first.at),
    performer: [scene.responder],
    hasMember: members.map(({ id }) => scene.refTo(entryName(id))),
  };
}

/** A panel for each minute with two vitals or more. */
export function panels(scene: Scene): readonly Observation[] {
  const minutes = new Map<number, VitalEntry[]>();
  for (const entry of standing(inOrder(scene.input.entries), 'vital')) {
    if (!MEMBERS.includes(entry.vital)) continue;
    const minute = minuteOf(entry.at);
    minutes.set(minute, [...(minutes.get(minute) ?? []), entry]);
  }
  return [...minutes.values()].flatMap((members) => {
    const [first, second] = members;
    return first === undefined || second === undefined ? [] : [panel(first, members, scene)];
  });
}
