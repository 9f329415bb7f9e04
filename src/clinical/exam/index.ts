// Promises where the examination stands: the taught steps, limbs' ends, focused examinations and rechecks.

export { type Focus, focusOf } from './focus.ts';
export { type LimbEnd, limbEndsOf } from './limb-ends.ts';
export { type Recheck, rechecksOf } from './recheck.ts';
export { nextStep, type Step, stepsOf, TAUGHT, uncompared } from './steps.ts';
