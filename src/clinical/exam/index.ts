// Promises where the examination stands: the taught steps, limbs' ends, focused examinations and rechecks.

export { FOCUS_RULES, type Focus } from './focus.ts';
export { LIMB_END_RULES, type LimbEnd } from './limb-ends.ts';
export { type Recheck, rechecksOf } from './recheck.ts';
export { nextStep, STEP_RULES, type Step, TAUGHT, uncompared } from './steps.ts';
