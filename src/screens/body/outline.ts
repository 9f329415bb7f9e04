// The outline of a body seen from the front and from the back, drawn for this page, with the areas that sites are shown at.

import type { Side, Site } from '../../terms/index.ts';
import { band, type Corners, mirrored, shape, WIDTH } from './corners.ts';

export const VIEWS = ['front', 'back'] as const;
export type View = (typeof VIEWS)[number];

/** The half of the silhouette on the viewer's left, from the crown down to the crotch; the other half mirrors it. */
export const HALF_SILHOUETTE =
  'M100 6C84 6 78 20 79 34C80 47 86 57 92 62L91 72C84 79 70 79 62 83C52 87 49 95 49 106L43 140' +
  'C40 155 38 165 36 180L32 206C27 215 24 228 27 240C30 250 39 250 43 242C48 234 50 222 50 212' +
  'C55 195 60 172 62 155C64 143 66 126 68 112C70 130 73 150 72 170C71 190 66 200 64 216' +
  'C61 235 64 268 68 298C70 310 69 320 68 332C67 350 72 370 75 386C75 394 68 402 64 408' +
  'C63 416 85 416 89 408C91 398 90 390 90 384C91 365 95 345 94 325C93 312 95 300 96 290C98 270 99 255 100 240';

export interface Area {
  readonly site: Site;
  /** null where the body has one of it */
  readonly side: Extract<Side, 'left' | 'right'> | null;
  /** clipped by the silhouette when drawn */
  readonly corners: Corners;
}

/** Areas in the middle of the body, and those on the viewer's left, which are there on the other side too. */
interface Drawn {
  readonly middle: readonly (readonly [site: Site, corners: Corners])[];
  readonly paired: readonly (readonly [site: Site, corners: Corners])[];
}

const LIMBS: Drawn['paired'] = [
  ['shoulder', shape('40,70 63,70 64,106 40,106')],
  ['upper-arm', shape('34,106 64,106 69,112 66,144 34,141')],
  ['elbow', shape('32,141 66,144 65,164 30,160')],
  ['forearm', shape('28,160 65,164 56,206 26,200')],
  ['wrist', shape('24,200 56,206 54,215 24,210')],
  ['hand', shape('16,209 54,215 52,254 16,254')],
  ['thigh', band(55, 240, 100, 298)],
  ['knee', band(55, 298, 100, 325)],
  ['lower-leg', band(55, 325, 100, 378)],
  ['ankle', band(55, 378, 100, 393)],
  ['foot', band(55, 393, 100, 420)],
];

const DRAWN: Readonly<Record<View, Drawn>> = {
  front: {
    middle: [
      ['skull', band(70, 0, 130, 28)],
      ['face', band(70, 28, 130, 63)],
      ['neck', band(84, 63, 116, 79)],
      ['sternum', band(93, 87, 107, 152)],
      ['pelvis', band(80, 214, 120, 241)],
    ],
    paired: [
      ['clavicle', shape('63,70 84,70 84,79 100,79 100,87 63,87')],
      ['ribs', shape('64,87 93,87 93,152 67,152 69,112 64,106')],
      ['upper-quadrant', band(66, 152, 100, 183)],
      ['lower-quadrant', band(60, 183, 100, 214)],
      ['hip', band(56, 214, 80, 241)],
      ...LIMBS,
    ],
  },
  back: {
    middle: [
      ['skull', band(70, 0, 130, 62)],
      ['cervical-spine', band(88, 62, 112, 84)],
      ['thoracic-spine', band(90, 84, 110, 152)],
      ['lumbar-spine', band(90, 152, 110, 196)],
      ['sacrum', band(86, 196, 114, 214)],
      ['tailbone', band(90, 214, 110, 228)],
    ],
    paired: [
      ['scapula', shape('63,76 88,76 88,84 90,84 90,126 68,126 64,106')],
      ['flank', shape('66,126 90,126 90,196 60,196')],
      ['buttock', shape('56,196 86,196 86,214 90,214 90,228 100,228 100,241 56,241')],
      ...LIMBS.filter(([site]) => site !== 'foot'),
      ['heel', band(55, 393, 100, 420)],
    ],
  },
};

/** Who looks at a face has the patient's right on their left; who looks at a back has it on their right. */
const sideSeen = (view: View, half: 'left' | 'right'): 'left' | 'right' =>
  (view === 'front') === (half === 'left') ? 'right' : 'left';

const areasOf = (view: View): readonly Area[] => [
  ...DRAWN[view].middle.map(([site, corners]): Area => ({ site, side: null, corners })),
  ...DRAWN[view].paired.flatMap(([site, corners]): readonly Area[] => [
    { site, side: sideSeen(view, 'left'), corners },
    { site, side: sideSeen(view, 'right'), corners: mirrored(corners) },
  ]),
];

/** The areas of each view; sides are the patient's. */
export const AREAS: Readonly<Record<View, readonly Area[]>> = {
  front: areasOf('front'),
  back: areasOf('back'),
};

/** The middle of an area, where its mark stands. */
export function middleOf({ corners }: Area): readonly [x: number, y: number] {
  const xs = corners.map(([x]) => Math.min(Math.max(x, 24), WIDTH - 24));
  const ys = corners.map(([, y]) => y);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}
