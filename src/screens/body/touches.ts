// Where on the drawing a finger means which part of the body; a gloved finger need not hit the limb itself.

import { band, type Corners, HEIGHT, mirrored, shape } from './corners.ts';
import type { View } from './outline.ts';

/** Room beside the body, which belongs to the limb next to it: a gloved finger need not hit the limb itself. */
export const MARGIN = 30;

const HEAD: Corners = shape('40,0 160,0 160,70 112,70 112,84 88,84 88,70 40,70');
const LEG = band(-MARGIN, 256, 100, HEIGHT);
// In front the collarbone belongs to the arm's part, from behind the shoulder blade.
const ARM_IN_FRONT: Corners = shape('-30,70 88,70 88,84 64,84 64,256 -30,256');
const ARM_FROM_BEHIND: Corners = shape('-30,70 90,70 90,126 64,126 64,256 -30,256');
const BACK: Corners = shape(
  '90,84 110,84 110,126 136,126 136,190 114,190 114,230 86,230 86,190 64,190 64,126 90,126',
);
const SEAT: Corners = shape('64,190 86,190 86,230 114,230 114,190 136,190 136,256 64,256');

/** Where a finger means which part of the body, by the part's name. */
export const TOUCHES: Readonly<Record<View, Readonly<Record<string, Corners>>>> = {
  front: {
    head: HEAD,
    'arm-right': ARM_IN_FRONT,
    'arm-left': mirrored(ARM_IN_FRONT),
    chest: band(64, 84, 136, 152),
    belly: band(64, 152, 136, 256),
    'leg-right': LEG,
    'leg-left': mirrored(LEG),
  },
  back: {
    head: HEAD,
    'arm-left': ARM_FROM_BEHIND,
    'arm-right': mirrored(ARM_FROM_BEHIND),
    back: BACK,
    belly: SEAT,
    'leg-left': LEG,
    'leg-right': mirrored(LEG),
  },
};
