// HL7's own files beside the project, read where they lie.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { Profile } from './fhir-profile.ts';

const FOLDER = new URL('../../../shared/data/fhir/', import.meta.url);

/** False where the data is not beside the project; the tests then say what they need. */
export const hasFhirData: boolean = existsSync(FOLDER);

const json = <T>(path: string): T => JSON.parse(readFileSync(new URL(path, FOLDER), 'utf8')) as T;

/** Example resources of HL7 FHIR 4.0.1 by file name. */
export const example = <T>(name: string): T => json<T>(`examples/${name}.json`);

export const exampleNames = (): readonly string[] =>
  readdirSync(new URL('examples/', FOLDER))
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -5));

/** The vital-signs profiles of HL7 FHIR 4.0.1 by their canonical address. */
export function vitalSignsProfiles(): ReadonlyMap<string, Profile> {
  const { entry } = json<{ entry: { resource: Profile }[] }>('vital-signs-profiles.json');
  return new Map(entry.map(({ resource }) => [resource.url, resource]));
}
