// Every entry that stands is one resource, of whatever kind it is; one that no longer stands is none.

import type { Entry } from '../../record/entry.ts';
import { careResource, visitProcedure } from './care.ts';
import { absent, own } from './concept.ts';
import { findingObservation } from './finding.ts';
import { historyResource } from './history.ts';
import { limbEndObservation } from './limb-end.ts';
import { observationOf } from './observation.ts';
import type { Scene } from './scene.ts';
import type { Observation, Resource } from './shapes.ts';
import { vitalObservation } from './vital.ts';
import { plainWords } from './words.ts';

/** Words that were not placed, and moments marked: kept as they were said, with no category that would judge them. */
function keptObservation(entry: Extract<Entry, { kind: 'note' | 'mark' }>, scene: Scene): Observation {
  const valueString = plainWords(entry.text);
  const value = valueString === null ? { dataAbsentReason: absent('unknown', 'No words') } : { valueString };
  return observationOf(entry, scene, { code: own('act', entry.kind), ...value });
}

/** The resource of a standing entry. */
export function resourceOf(entry: Entry, scene: Scene): Resource {
  switch (entry.kind) {
    case 'finding':
      return findingObservation(entry, scene);
    case 'csm':
      return limbEndObservation(entry, scene);
    case 'vital':
      return vitalObservation(entry, scene);
    case 'history':
      return historyResource(entry, scene);
    case 'care':
      return careResource(entry, scene);
    case 'visit':
      return visitProcedure(entry, scene);
    case 'mark':
    case 'note':
      return keptObservation(entry, scene);
  }
}
