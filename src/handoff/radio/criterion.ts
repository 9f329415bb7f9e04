// Red criteria in the fewest words that still cannot be taken for another: they are said twice, and each word is air time.

import type { Flag } from '../input.ts';
import { shortCriterion } from '../sentences/criterion-words.ts';

/**
 * Without a comma, since they are listed with commas. What the criterion goes by (a pressure, a rate) is told as a figure
 * of its own; the published text stands in the written reports. Ours in wording.
 */
const SPOKEN: Readonly<Record<string, string>> = {
  'spinal-injury-with-loss': 'spinal injury with motor or sensory loss',
  'chest-wall': 'unstable chest wall',
  'proximal-long-bones': 'two proximal long bones fractured',
  'ruined-extremity': 'crushed or pulseless limb',
  amputation: 'amputation',
  commands: 'unable to follow commands',
  'breathing-rate': 'breathing rate',
  'room-air-saturation': 'low saturation',
  'systolic-child': 'low systolic for age',
  'systolic-10-to-64': 'low systolic',
  'pulse-over-systolic': 'pulse above systolic',
  'systolic-65-up': 'low systolic for age',
};

/** `low systolic`; a criterion that is not in the table as the written reports have it. */
export const spokenCriterion = (flag: Flag): string => SPOKEN[flag.rule] ?? shortCriterion(flag);
