// The record as one FHIR R4 document: what stands, how far it is confirmed, and what was not examined.

import { stands } from '../../record/entry.ts';
import { compositionOf } from './composition.ts';
import { coverageObservations } from './coverage.ts';
import type { FhirInput } from './input.ts';
import { panels } from './panel.ts';
import { patientOf } from './patient.ts';
import { deviceOf, encounterOf, peopleOf } from './people.ts';
import { partnerConfirmed, provenancesOf } from './provenance.ts';
import { resourceOf } from './resource.ts';
import { type Scene, sceneOf, urn } from './scene.ts';
import type { Bundle, Reference, Resource } from './shapes.ts';

const refs = (resources: readonly Resource[]): readonly Reference[] =>
  resources.map(({ id }) => ({ reference: urn(id) }));

/** Names this one document: the moment it was made and what stood then. */
function documentName({ input }: Scene): string {
  const standing = input.entries.filter(stands).map(({ id, state }) => `${id} ${state}`);
  return ['document', `${input.now}`, ...standing].join('\n');
}

/**
 * The document (HL7 FHIR R4, 4.0.1, Bundle of type `document`). Every standing entry is one resource. Entries that were
 * struck or replaced are left out altogether, since a reader that overlooks `entered-in-error` would take them as true;
 * the record itself keeps them. All identifiers are version 5 UUIDs of the examination's name and the entry's id, so
 * that the same record always gives the same document.
 */
export function fhirDocument(input: FhirInput): Bundle {
  const scene = sceneOf(input);
  const vitals = panels(scene);
  const coverage = coverageObservations(scene);
  const provenances = provenancesOf(scene);
  const id = scene.idOf(documentName(scene));
  const resources: readonly Resource[] = [
    compositionOf(scene, { signs: refs(vitals), coverage: refs(coverage) }),
    patientOf(scene),
    encounterOf(scene),
    ...peopleOf(scene, partnerConfirmed(provenances, scene)),
    deviceOf(scene),
    ...input.entries.filter(stands).map((entry) => resourceOf(entry, scene)),
    ...vitals,
    ...coverage,
    ...provenances,
  ];
  return {
    resourceType: 'Bundle',
    id,
    identifier: { system: 'urn:ietf:rfc:3986', value: urn(id) },
    type: 'document',
    timestamp: scene.madeAt,
    entry: resources.map((resource) => ({ fullUrl: urn(resource.id), resource })),
  };
}
