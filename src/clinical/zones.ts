// The zones of the body in which a denial must have been said before a finding can be called absent from all of it.

import type { Site } from '../terms/index.ts';
import { bothOf, wholeOf } from './place.ts';
import type { Zone } from './said.ts';

const pair = (site: Site, parts: readonly Site[] = []): readonly Zone[] =>
  bothOf(site).map((whole) =>
    parts.length === 0
      ? { whole }
      : { whole, parts: parts.map((part) => ({ site: part, side: whole.side })) },
  );

export const HEAD: Zone = { whole: wholeOf('head'), parts: [wholeOf('skull'), wholeOf('face')] };
export const NECK: Zone = { whole: wholeOf('neck') };
export const CHEST: Zone = { whole: wholeOf('chest'), parts: [...bothOf('ribs'), wholeOf('sternum')] };
export const ABDOMEN: Zone = {
  whole: wholeOf('abdomen'),
  parts: [...bothOf('upper-quadrant'), ...bothOf('lower-quadrant')],
};
export const PELVIS: Zone = { whole: wholeOf('pelvis') };
export const BACK: Zone = { whole: wholeOf('back') };

export const SHOULDERS = pair('shoulder');
export const UPPER_ARMS = pair('upper-arm');
export const THIGHS = pair('thigh');
export const ARMS = pair('arm', ['upper-arm', 'elbow', 'forearm', 'wrist', 'hand']);
export const LEGS = pair('leg', ['thigh', 'knee', 'lower-leg', 'ankle', 'foot']);

export const TRUNK: readonly Zone[] = [HEAD, NECK, CHEST, ABDOMEN, PELVIS, BACK];
export const BODY: readonly Zone[] = [...TRUNK, ...SHOULDERS, ...ARMS, ...LEGS];
