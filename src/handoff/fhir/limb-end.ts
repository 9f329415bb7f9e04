// Circulation, sensation or motion of a limb's end: true where it was said to be intact, with what else was said of it.

import { isImpaired } from '../../clinical/index.ts';
import type { Entry } from '../../record/entry.ts';
import { loinc, own, quantity } from './concept.ts';
import { ABNORMAL } from './finding.ts';
import { bodySite, EXAM, observationOf, qualities, withComponents } from './observation.ts';
import type { Scene } from './scene.ts';
import type { Component, Observation } from './shapes.ts';

type CsmEntry = Extract<Entry, { kind: 'csm' }>;

function strength(said: CsmEntry['strength']): readonly Component[] {
  if (said === undefined) return [];
  const code = own('attribute', 'strength');
  return typeof said === 'number'
    ? [{ code, valueQuantity: quantity(said, '{score}', 'of 5') }]
    : [{ code, valueCodeableConcept: own('strength', said) }];
}

const details = (entry: CsmEntry): readonly Component[] => [
  ...(entry.capRefillSeconds === undefined
    ? []
    : [
        {
          code: loinc('Capillary refill', 'capillary-refill'),
          valueQuantity: quantity(entry.capRefillSeconds, 's', 's'),
        },
      ]),
  ...(entry.pulse === undefined
    ? []
    : [{ code: own('attribute', 'pulse-point'), valueCodeableConcept: own('pulse-point', entry.pulse) }]),
  ...(entry.warmth === undefined
    ? []
    : [{ code: own('attribute', 'warmth'), valueCodeableConcept: own('warmth', entry.warmth) }]),
  ...strength(entry.strength),
  ...qualities(entry.quality),
];

/** The body site is the digit where one was named, else the hand or the foot. */
export const limbEndObservation = (entry: CsmEntry, scene: Scene): Observation =>
  observationOf(entry, scene, {
    category: EXAM,
    code: own('limb-end', `${entry.aspect}-intact`),
    bodySite: bodySite({ site: entry.digit ?? entry.site, side: entry.side }),
    valueBoolean: entry.present,
    // A weak grip moves, and is not as it should be.
    ...(isImpaired(entry) ? { interpretation: [ABNORMAL] } : {}),
    ...withComponents(details(entry)),
  });
