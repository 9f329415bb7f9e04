// What was examined and what was not, as one Observation: a place that was not examined is absent data, never a value.

import type { CoverageRow } from '../input.ts';
import { and } from '../sentences/list.ts';
import { placesIn } from '../sentences/unexamined.ts';
import { absent, own } from './concept.ts';
import { bodySite, EXAM } from './observation.ts';
import type { Scene } from './scene.ts';
import type { Component, Observation } from './shapes.ts';
import { statusOfAll } from './trust.ts';
import { narrative } from './words.ts';

const component = (row: CoverageRow): Component => ({
  code: bodySite(row),
  ...(row.state === 'not-examined'
    ? { dataAbsentReason: absent('not-performed', 'Not examined') }
    : { valueCodeableConcept: own('coverage', row.state) }),
});

/** What was not examined, and what was only looked at or felt, in sentences. */
export function coverageSentences(rows: readonly CoverageRow[]): readonly string[] {
  if (rows.length === 0) return ['What was not examined was not worked out.'];
  const none = placesIn(rows, 'not-examined');
  const touched = placesIn(rows, 'touched');
  return [
    none.length === 0 ? 'No site is listed as not examined.' : `Not examined: ${and(none)}.`,
    ...(touched.length === 0 ? [] : [`Touched, with nothing found or denied there: ${and(touched)}.`]),
  ];
}

/** The Observation with a component for each place, or none where coverage was not worked out. */
export function coverageObservations(scene: Scene): readonly Observation[] {
  const rows = scene.input.coverage;
  if (rows.length === 0) return [];
  return [
    {
      resourceType: 'Observation',
      id: scene.idOf('coverage'),
      text: narrative(coverageSentences(rows)),
      status: statusOfAll(scene.input.entries),
      category: EXAM,
      code: own('act', 'coverage'),
      subject: scene.patient,
      encounter: scene.encounter,
      effectiveDateTime: scene.madeAt,
      device: scene.refTo('device'),
      component: rows.map(component),
    },
  ];
}
