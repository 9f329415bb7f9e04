// The head-to-toe examination as it is taught, step by step, and which steps are left.

import { type Region, regionOf, SITES, type Site } from '../../terms/index.ts';
import type { Rule } from '../chart.ts';
import { type CoverageRow, type CoverageState, coverageAt } from '../coverage.ts';
import { bothOf, isWithin, type Place, placeText, wholeOf } from '../place.ts';

export interface Step {
  readonly place: Place;
  readonly region: Region;
  readonly text: string;
  /** `part`: not the step's own site but something within it was examined */
  readonly state: CoverageState | 'part';
}

const pairs = (...sites: readonly Site[]): readonly Place[] => sites.flatMap((site) => bothOf(site));

/** Common practice, as first aid and ambulance courses teach it: head to feet, then the back and flanks. */
export const TAUGHT: readonly Place[] = [
  wholeOf('skull'),
  wholeOf('face'),
  ...pairs('eye', 'ear'),
  wholeOf('nose'),
  wholeOf('mouth'),
  wholeOf('jaw'),
  wholeOf('neck'),
  wholeOf('trachea'),
  ...pairs('clavicle', 'shoulder'),
  ...pairs('upper-arm', 'elbow', 'forearm', 'wrist', 'hand'),
  wholeOf('sternum'),
  ...pairs('ribs'),
  ...pairs('upper-quadrant', 'lower-quadrant'),
  wholeOf('pelvis'),
  ...pairs('thigh', 'knee', 'lower-leg', 'ankle', 'foot'),
  wholeOf('cervical-spine'),
  ...pairs('scapula'),
  wholeOf('thoracic-spine'),
  wholeOf('lumbar-spine'),
  wholeOf('sacrum'),
  wholeOf('tailbone'),
  ...pairs('flank'),
];

const innerOf = (site: Site): readonly Site[] =>
  SITES.filter((inner) => inner !== site && isWithin(inner, site));

/** A rule for each taught step, in order: the state of its site. */
export const STEP_RULES: readonly Rule<Step>[] = TAUGHT.map((place) => {
  const facts = { place, region: regionOf(place.site), text: placeText(place.site, place.side) };
  const inner = innerOf(place.site);
  return (chart) => {
    const own = coverageAt(chart, place.site).find((row) => row.side === place.side)?.state ?? 'not-examined';
    const examined = (row: CoverageRow): boolean =>
      row.state !== 'not-examined' && (place.side === null || row.side === place.side);
    const part = own === 'not-examined' && inner.some((site) => coverageAt(chart, site).some(examined));
    return { ...facts, state: part ? 'part' : own };
  };
});

/** The first taught step of which nothing was said, to go on with; null where none is left. */
export const nextStep = (steps: readonly Step[]): Step | null =>
  steps.find((step) => step.state === 'not-examined') ?? null;

/** Sites of which one side was examined and the other was not. */
export const uncompared = (steps: readonly Step[]): readonly Step[] =>
  steps.filter(
    (step) =>
      step.state === 'not-examined' &&
      steps.some(
        (other) =>
          other.place.site === step.place.site &&
          other.place.side !== step.place.side &&
          (other.state === 'clear' || other.state === 'found'),
      ),
  );
