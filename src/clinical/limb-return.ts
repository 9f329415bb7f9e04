// What was said otherwise of a limb's end that was lost or weak: a pulse that is back, a foot that moves again.

import type { EntryOf } from './chart.ts';
import { isAbsent, isImpaired, limbWord, measureOf } from './limb-end.ts';
import { sidesOf } from './side.ts';

type LimbCheck = EntryOf<'csm'>;

/** Lost, there but weak, whole: more is better. */
const rank = (entry: LimbCheck): number => (!entry.present ? 0 : isImpaired(entry) ? 1 : 2);

const isSameEnd = (one: LimbCheck, other: LimbCheck): boolean =>
  one.site === other.site &&
  one.aspect === other.aspect &&
  one.digit === other.digit &&
  sidesOf(one.site, one.side).some((side) => sidesOf(other.site, other.side).includes(side));

/** The other was looked at in a way that answers this one: a foot that is warm has no pulse for it. */
function isAnswer(entry: LimbCheck, other: LimbCheck): boolean {
  if (measureOf(other) === measureOf(entry)) return true;
  const isBare = ({ pulse, warmth, capRefillSeconds }: LimbCheck): boolean =>
    pulse === undefined && warmth === undefined && capRefillSeconds === undefined;
  return isBare(other) || (isBare(entry) && isAbsent(entry) && other.pulse !== undefined);
}

/** The last check that says that an end is better than `entry` does; those said before it as well only where `any`. */
export function betterThan(
  entry: LimbCheck,
  checks: readonly LimbCheck[],
  when: 'later' | 'any',
): LimbCheck | null {
  const from = when === 'any' ? 0 : checks.indexOf(entry) + 1;
  return (
    checks
      .slice(from)
      .findLast((other) => rank(other) > rank(entry) && isSameEnd(entry, other) && isAnswer(entry, other)) ??
    null
  );
}

/** `intact at 09:15`, `weak at 09:15`; `time` as the report writes it. */
export const betterWords = (entry: LimbCheck, time: string): string =>
  `${isImpaired(entry) ? limbWord(entry) : 'intact'} at ${time}`;
