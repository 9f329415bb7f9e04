// What was said of circulation, sensation or motion at a limb's end: whole, impaired (weak, decreased) or lost.

import { ASPECTS, type Aspect, isImpaired, isLess, isWeak, LESS_WORD } from '../terms/index.ts';
import type { Chart, EntryOf, Rule } from './chart.ts';
import { bothOf, type Place } from './place.ts';
import { sidesOf } from './side.ts';

type LimbCheck = EntryOf<'csm'>;

/**
 * Wholly gone: said not to be there, and not merely less of it ("decreased sensation", "weak"), nor told by warmth or
 * refill alone, which a cold foot explains.
 */
export const isAbsent = (entry: LimbCheck): boolean =>
  !entry.present &&
  !isLess(entry) &&
  (entry.pulse !== undefined ||
    (entry.warmth === undefined &&
      entry.capRefillSeconds === undefined &&
      (entry.quality ?? []).length === 0));

/** How it is, in a word or two: `intact`, `weak`, `cold`, `refill 4 s`, `absent`. */
export function limbWord(entry: LimbCheck): string {
  if (!isImpaired(entry)) return 'intact';
  if (entry.aspect === 'motion' && isWeak(entry.strength))
    return typeof entry.strength === 'number' ? `strength ${entry.strength} of 5` : (entry.strength ?? '');
  const quality = (entry.quality ?? []).filter((word) => LESS_WORD.test(word));
  if (quality.length > 0) return quality.join(', ');
  if (isAbsent(entry)) return 'absent';
  if (entry.capRefillSeconds !== undefined) return `refill ${entry.capRefillSeconds} s`;
  return entry.warmth ?? 'not intact';
}

/** What was looked at: a pulse, a refill time or warmth; null where the whole aspect was spoken of. */
export function measureOf(entry: LimbCheck): string | null {
  const what = entry.pulse ?? (entry.capRefillSeconds !== undefined ? 'refill' : null);
  const measure = what ?? (entry.warmth === undefined ? null : 'warmth');
  return entry.digit === undefined ? measure : `${entry.digit} ${measure ?? ''}`;
}

/** Spoken of the same thing: a pulse and a refill time may differ and both be right. */
export const measuresMeet = (a: LimbCheck, b: LimbCheck): boolean => {
  const [one, other] = [measureOf(a), measureOf(b)];
  return one === null || other === null || one === other;
};

/**
 * What holds now of checks given earliest first: the latest of each measure, up to the last word on the whole aspect. A
 * foot that is warm since has no pulse for it.
 */
export function standingOf(checks: readonly LimbCheck[]): readonly LimbCheck[] {
  const held = new Map<string, LimbCheck>();
  for (const entry of checks.toReversed()) {
    const measure = measureOf(entry);
    // A pulse felt or missed since settles what was said of the circulation before it.
    if (measure === null && [...held.values()].some(({ pulse }) => pulse !== undefined)) break;
    if (held.has(measure ?? '')) continue;
    held.set(measure ?? '', entry);
    if (measure === null) break;
  }
  return [...held.values()].reverse();
}

/** The checks that are not whole, the lost ones first. */
export const impairedOf = (checks: readonly LimbCheck[]): readonly LimbCheck[] => {
  const impaired = checks.filter(isImpaired);
  return [...impaired.filter(isAbsent), ...impaired.filter((entry) => !isAbsent(entry))];
};

/** How they are together: `absent, cold`; `intact` where none is impaired. */
export function wordsOf(checks: readonly LimbCheck[]): string {
  const impaired = impairedOf(checks);
  return impaired.length === 0 ? 'intact' : [...new Set(impaired.map(limbWord))].join(', ');
}

export { isImpaired, isLess };

export const LIMB_ENDS: readonly Place[] = [...bothOf('hand'), ...bothOf('foot')];

const keyOf = (end: Place, aspect: Aspect): string => `${end.site} ${end.side} ${aspect}`;

/** A rule for each end and aspect, so that the many questions about one share its answer. */
const CHECKS: ReadonlyMap<string, Rule<readonly LimbCheck[]>> = new Map(
  LIMB_ENDS.flatMap((end) =>
    ASPECTS.map((aspect) => [
      keyOf(end, aspect),
      (chart: Chart): readonly LimbCheck[] =>
        chart
          .at(end.site)
          .filter((entry) => entry.kind === 'csm')
          .filter((entry) => entry.aspect === aspect && sidesOf(entry.site, entry.side).includes(end.side)),
    ]),
  ),
);

/** What was said of one aspect of one limb's end or of a digit of it, earliest first. */
export function checksOf(chart: Chart, end: Place, aspect: Aspect): readonly LimbCheck[] {
  const rule = CHECKS.get(keyOf(end, aspect));
  return rule === undefined ? [] : chart.ask(rule);
}
