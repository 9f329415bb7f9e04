// Circulation, sensation and motion again after a splint, a tourniquet or a move: what was not checked since.

import { ASPECTS, type Care } from '../../terms/index.ts';
import { type Chart, clockText, timeOf } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { LIMB_ENDS } from '../limb-end.ts';
import { isWithin, type Place, placeText } from '../place.ts';
import { sidesOf } from '../side.ts';
import { COMMON_PRACTICE } from '../source.ts';
import { csmAt } from './limb-ends.ts';

export interface Recheck extends Reckoned {
  readonly after: 'splint' | 'tourniquet' | 'move';
  readonly end: Place;
  readonly text: string;
}

const AFTER: Readonly<Partial<Record<Care, 'splint' | 'tourniquet'>>> = {
  splint: 'splint',
  'traction-splint': 'splint',
  sling: 'splint',
  bandage: 'splint',
  reduction: 'splint',
  tourniquet: 'tourniquet',
};

const MOVING =
  'moved|moving|carried|carrying|loaded|loading|rolled|rolling|lifted|lifting|lowered|transferred';
const PATIENT = 'him|her|them|the patient|patient|the casualty|casualty';
const CARRIER =
  'litter|stretcher|sled|sledge|toboggan|basket|backboard|board|vehicle|truck|car|ambulance|helicopter|hut';

/** A move of the patient, as told: a hand that moved or a car that rolled is none. */
const MOVED = new RegExp(
  `\\b(?:log[- ]?roll(?:ed|ing)?|carry-?out|(?:${MOVING}) (?:up |down |over )?(?:${PATIENT})\\b|(?:${MOVING})\\b[^.]*\\b(?:to|onto|on to|into|on) (?:the|a) (?:${CARRIER}))\\b`,
  'i',
);

/** Limbs whose end has all three aspects said after the moment are done; the others name what lacks. */
function after(
  chart: Chart,
  what: Recheck['after'],
  cause: Chart['all'][number],
  ends: readonly Place[],
): readonly Recheck[] {
  return ends.flatMap((end) => {
    const since = ASPECTS.filter(
      (aspect) => !csmAt(chart, end, aspect).some((entry) => timeOf(entry) > timeOf(cause)),
    );
    if (since.length === 0) return [];
    const place = placeText(end.site, end.side);
    const missing = since.map((aspect) => `${aspect} of the ${place}`);
    const text = `recheck the ${place} since the ${what} at ${clockText(cause)}: ${since.join(', ')}`;
    return [{ after: what, end, text, ...reckoned([cause], COMMON_PRACTICE, missing) }];
  });
}

/** What to check again, for the latest care of each limb and for the latest move. */
export function rechecksOf(chart: Chart): readonly Recheck[] {
  const byLimb = LIMB_ENDS.flatMap((end) => {
    const limb = end.site === 'hand' ? (['arm', 'shoulder'] as const) : (['leg'] as const);
    const latest = chart.care.findLast(
      (care) =>
        AFTER[care.care] !== undefined &&
        limb.some((outer) => care.site !== undefined && isWithin(care.site, outer)) &&
        care.site !== undefined &&
        sidesOf(care.site, care.side ?? null).includes(end.side),
    );
    const what = latest === undefined ? undefined : AFTER[latest.care];
    return latest === undefined || what === undefined ? [] : after(chart, what, latest, [end]);
  });
  const moves = chart.words.filter((entry) => MOVED.test(entry.text));
  const [move] = moves.toSorted((a, b) => timeOf(b) - timeOf(a));
  return [...byLimb, ...(move === undefined ? [] : after(chart, 'move', move, LIMB_ENDS))];
}
