// A number said after other things is no correction of a sign it is nothing like: "pulse ninety. Vomited twice. Correction, three".

import type { Entry } from './entry.ts';

/** No sign or age is taken to have been misheard by more than this. A choice of ours, no source. */
const MOST_TIMES = 2;

/** True where each of these has a number and the other one is far from it. */
export const isFarFrom = (entries: readonly Entry[], value: number): boolean => {
  const numbers = entries.flatMap((entry) => numberIn(entry) ?? []);
  return numbers.length > 0 && numbers.every((was) => value > was * MOST_TIMES || was > value * MOST_TIMES);
};

function numberIn(entry: Entry): number | null {
  if (entry.kind === 'history') return entry.years ?? null;
  if (entry.kind !== 'vital') return null;
  switch (entry.vital) {
    case 'pulse':
    case 'respirations':
      return entry.value.rate ?? null;
    case 'blood-pressure':
      return entry.value.systolic;
    case 'oxygen-saturation':
      return entry.value.percent;
    default:
      return null;
  }
}
