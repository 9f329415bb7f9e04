// A chart cut into patches, so that burns that overlap are counted once.

import { AREAS, type Area, type BurnChart, TWO_SIDED } from './charts.ts';

export type Face = 'front' | 'back';
export type Half = 'upper' | 'lower';

export interface Patch {
  readonly area: Area;
  readonly face: Face;
  readonly side: 'left' | 'right';
  /** the nearer or upper half of the area, or the farther one */
  readonly half: Half;
  /** percent of the body surface */
  readonly percent: number;
}

const FACES: readonly Face[] = ['front', 'back'];
const SIDES = ['left', 'right'] as const;
const HALVES: readonly Half[] = ['upper', 'lower'];

/** All the patches of a chart; their percentages sum to 100. */
export const patchesOf = (chart: BurnChart): readonly Patch[] =>
  AREAS.flatMap((area) => {
    const oneSide = TWO_SIDED.has(area) ? 1 : 0.5;
    return FACES.flatMap((face) =>
      SIDES.flatMap((side) =>
        HALVES.map((half) => ({ area, face, side, half, percent: (chart[area][face] * oneSide) / 2 })),
      ),
    );
  });

export const patchKey = (patch: Patch): string => `${patch.area} ${patch.face} ${patch.side} ${patch.half}`;
