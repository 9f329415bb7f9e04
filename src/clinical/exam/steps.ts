// The head-to-toe examination as it is taught, step by step, and which steps are left.

import { type Region, regionOf, type Site } from '../../terms/index.ts';
import type { CoverageRow, CoverageState } from '../coverage.ts';
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

/** The taught steps in order, each with the state of its site. */
export function stepsOf(rows: readonly CoverageRow[]): readonly Step[] {
  const states = new Map(rows.map((row) => [`${row.site} ${row.side ?? ''}`, row.state]));
  const at = (site: Site, side: Place['side']): CoverageState =>
    states.get(`${site} ${side ?? ''}`) ?? 'not-examined';
  return TAUGHT.map((place) => {
    const own = at(place.site, place.side);
    const inner = rows.some(
      (row) =>
        row.state !== 'not-examined' &&
        row.site !== place.site &&
        isWithin(row.site, place.site) &&
        (place.side === null || row.side === place.side),
    );
    return {
      place,
      region: regionOf(place.site),
      text: placeText(place.site, place.side),
      state: own === 'not-examined' && inner ? 'part' : own,
    };
  });
}

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
