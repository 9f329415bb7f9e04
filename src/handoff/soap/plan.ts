// Plan: the care that was given with its times, what to look at again, and what a person must settle; it prescribes nothing.

import { offOf, type Tourniquet } from '../../clinical/index.ts';
import { standing } from '../../record/entry.ts';
import type { Care } from '../../terms/index.ts';
import { clock, type Day, inOrder, series, vitalName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { type CareEntry, careSentences } from '../sentences/care.ts';
import { endOf } from '../sentences/care-ended.ts';
import { elapsed } from '../sentences/elapsed.ts';
import { doubtSentences } from '../sentences/kept.ts';
import { thePlace } from '../sentences/place.ts';
import { joined, type Told, written } from '../sentences/told.ts';
import { saidOffTold, tourniquetsIn } from '../sentences/tourniquet.ts';
import { type HandoffLine, heading, line, plain, type Sentence } from '../text.ts';

/** Care after which circulation, sensation and motion beyond it are looked at again (from memory: NHTSA EMT teaching). */
const BINDING: readonly Care[] = ['tourniquet', 'splint', 'traction-splint', 'bandage', 'sling', 'reduction'];

const placeOf = ({ site, side = null }: CareEntry): string =>
  site === undefined ? '' : ` on ${thePlace({ site, side })}`;

function beyond(entry: CareEntry, now: number, day: Day, isOn = true): Told {
  const on = elapsed(now - Date.parse(entry.at));
  // A reduction is done once, and what was said to be off is not counted on.
  const at = clock(entry.at, day);
  const since =
    entry.care === 'reduction'
      ? `at ${at}`
      : isOn
        ? `on since ${at}${on === null ? '' : `, ${on}`}`
        : `on at ${at}`;
  return {
    words: `${RECHECK} beyond the ${entry.care.replace('-', ' ')}${placeOf(entry)}, ${since}`,
    entries: [entry],
  };
}

const RECHECK = 'Recheck circulation, sensation and motion';

/** One that was said to be off is not counted on; what was said is told beside its time. */
function beyondTourniquet(one: Tourniquet, now: number, day: Day): Told {
  const [entry] = one.entries;
  const on = offOf(one) === null ? beyond(entry, now, day) : null;
  const was = `${RECHECK} beyond the tourniquet${placeOf(entry)}, on at ${clock(entry.at, day)}`;
  return joined([
    on ?? { words: was, entries: [entry] },
    ...one.saidOff.map((said) => saidOffTold(said, day)),
  ]);
}

/** Alike in care and place: the first of them is the one that counts. */
const isFirst = (entry: CareEntry, index: number, all: readonly CareEntry[]): boolean =>
  all.findIndex(
    ({ care, site, side }) => care === entry.care && site === entry.site && side === entry.side,
  ) === index;

/** When signs were last taken; where the one read longest ago was not read in that minute, when that was and which it is. */
function lastSigns(entries: HandoffInput['entries'], day: Day): Sentence | null {
  const [oldest, ...others] = series(entries)
    .flatMap(({ readings }) => readings.slice(-1))
    .sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
  if (oldest === undefined) return null;
  const latest = others.at(-1) ?? oldest;
  const last = `Recheck vitals; last taken at ${clock(latest.at, day)}`;
  return clock(oldest.at, day) === clock(latest.at, day)
    ? { text: `${last}.`, entries: [latest.id] }
    : {
        text: `${last}, ${vitalName(oldest.vital)} at ${clock(oldest.at, day)}.`,
        entries: [latest.id, oldest.id],
      };
}

/** What is to be looked at again: the vitals, and the limb beyond whatever binds it. */
export function rechecks({ entries, now }: HandoffInput, day: Day): readonly Sentence[] {
  const bound = standing(inOrder(entries), 'care').filter(({ care }) => BINDING.includes(care));
  const tourniquets = tourniquetsIn(entries).map((one) => ({
    first: one.entries[0],
    told: beyondTourniquet(one, now, day),
  }));
  const others = bound
    .filter(isFirst)
    .filter(({ care }) => care !== 'tourniquet')
    .map((first) => ({ first, told: beyond(first, now, day, endOf(first, inOrder(entries)) === null) }));
  const lastSign = lastSigns(entries, day);
  return [
    lastSign ?? plain('Vitals: none recorded; take a first set.'),
    ...[...tourniquets, ...others]
      .sort((one, other) => bound.indexOf(one.first) - bound.indexOf(other.first))
      .map(({ told }) => written(told)),
  ];
}

export function plan(input: HandoffInput, day: Day): readonly HandoffLine[] {
  const care = careSentences(input.entries, day);
  return [
    heading('PLAN'),
    ...(care.length === 0 ? [plain('Care given: not recorded.')] : care).map(line),
    ...rechecks(input, day).map(line),
    ...doubtSentences(input.entries).map(line),
  ];
}
