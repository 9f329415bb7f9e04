// What every resource of one document refers to: the patient, the encounter, the people, and the day of the start.

import { formatIso, parseIso } from '../../parse/times/index.ts';
import { type Day, dayOf } from '../../timeline/index.ts';
import type { FhirInput } from './input.ts';
import type { Reference } from './shapes.ts';
import { idsIn } from './uuid.ts';

export interface Scene {
  readonly input: FhirInput;
  /** the UUID of a named thing of this examination */
  readonly idOf: (name: string) => string;
  readonly refTo: (name: string) => Reference;
  readonly patient: Reference;
  readonly encounter: Reference;
  readonly responder: Reference;
  readonly day: Day;
  /** when the document is made, by the clock of the place where the examination began */
  readonly madeAt: string;
}

export const urn = (id: string): string => `urn:uuid:${id}`;

/** The name of an entry's resource among the things of its examination. */
export const entryName = (entryId: string): string => `entry/${entryId}`;

/** An ISO 8601 time as FHIR's dateTime has it, with seconds and an offset. */
export function fhirTime(iso: string): string {
  const read = parseIso(iso);
  return read === null ? iso : formatIso(read.epochMs, read.offset);
}

export function sceneOf(input: FhirInput): Scene {
  const idOf = idsIn(input.record);
  const refTo = (name: string): Reference => ({ reference: urn(idOf(name)) });
  return {
    input,
    idOf,
    refTo,
    patient: refTo('patient'),
    encounter: refTo('encounter'),
    responder: refTo('responder'),
    day: dayOf(input.startedAt),
    madeAt: formatIso(input.now, parseIso(input.startedAt)?.offset ?? 'Z'),
  };
}
