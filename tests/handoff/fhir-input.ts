// The FHIR document of invented entries, and its parts by what they are and by the entry they came from.

import { fhirDocument } from '../../src/handoff/fhir/index.ts';
import type { FhirInput } from '../../src/handoff/fhir/input.ts';
import { entryName, urn } from '../../src/handoff/fhir/scene.ts';
import type { Bundle, Observation, Resource } from '../../src/handoff/fhir/shapes.ts';
import { idsIn } from '../../src/handoff/fhir/uuid.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { Statement } from '../../src/terms/index.ts';
import { input, made } from './made-up.ts';

export type { FhirInput };

export const RECORD = 'an invented examination';

export const fhirInputOf = (entries: readonly Entry[], more: Partial<FhirInput> = {}): FhirInput => ({
  ...input(entries),
  record: RECORD,
  ...more,
});

export const documentOf = (entries: readonly Entry[], more: Partial<FhirInput> = {}): Bundle =>
  fhirDocument(fhirInputOf(entries, more));

export const ofType = <T extends Resource['resourceType']>(
  { entry }: Bundle,
  type: T,
): readonly Extract<Resource, { resourceType: T }>[] =>
  entry
    .map(({ resource }) => resource)
    .filter((resource): resource is Extract<Resource, { resourceType: T }> => resource.resourceType === type);

/** The resource of the entry with this id. */
export const resourceFor = ({ entry }: Bundle, id: string): Resource | undefined =>
  entry.find(({ fullUrl }) => fullUrl === urn(idsIn(RECORD)(entryName(id))))?.resource;

/** The one resource of a statement, heard and confirmed unless told otherwise. */
export function resourceOfStatement(
  statement: Statement,
  facts: Parameters<typeof made>[2] = {},
): Resource | undefined {
  return resourceFor(documentOf([made('a', statement, facts)]), 'a');
}

/** The same, where it is an Observation. */
export function observed(statement: Statement, facts: Parameters<typeof made>[2] = {}): Observation {
  const found = resourceOfStatement(statement, facts);
  if (found?.resourceType !== 'Observation') throw new Error(`${found?.resourceType} is no Observation`);
  return found;
}
