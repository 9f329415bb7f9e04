// Plan: the care that was given with its times, what to look at again, and what a person must settle; it prescribes nothing.

import { standing } from '../../record/entry.ts';
import type { Care } from '../../terms/index.ts';
import { clock, type Day, inOrder, series } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { type CareEntry, careSentences } from '../sentences/care.ts';
import { elapsed } from '../sentences/elapsed.ts';
import { doubtSentences } from '../sentences/kept.ts';
import { thePlace } from '../sentences/place.ts';
import { markOf } from '../sentences/trust.ts';
import { type HandoffLine, heading, line, plain, type Sentence } from '../text.ts';

/** Care after which circulation, sensation and motion beyond it are looked at again (from memory: NHTSA EMT teaching). */
const BINDING: readonly Care[] = ['tourniquet', 'splint', 'traction-splint', 'bandage', 'sling', 'reduction'];

function beyond(entry: CareEntry, now: number, day: Day): Sentence {
  const { care, site, side = null } = entry;
  const place = site === undefined ? '' : ` on ${thePlace({ site, side })}`;
  const on = elapsed(now - Date.parse(entry.at));
  const since = `on since ${clock(entry.at, day)}${on === null ? '' : `, ${on}`}`;
  return {
    text: `Recheck circulation, sensation and motion beyond the ${care.replace('-', ' ')}${place}, ${since}${markOf([entry])}.`,
    entries: [entry.id],
  };
}

/** Alike in care and place: the first of them is the one that counts. */
const isFirst = (entry: CareEntry, index: number, all: readonly CareEntry[]): boolean =>
  all.findIndex(
    ({ care, site, side }) => care === entry.care && site === entry.site && side === entry.side,
  ) === index;

/** What is to be looked at again: the vitals, and the limb beyond whatever binds it. */
export function rechecks({ entries, now }: HandoffInput, day: Day): readonly Sentence[] {
  const bound = standing(inOrder(entries), 'care').filter(({ care }) => BINDING.includes(care));
  const lastSign = series(entries)
    .flatMap(({ readings }) => readings.slice(-1))
    .reduce<Sentence | null>((latest, entry) => {
      const sentence = {
        text: `Recheck vitals; last taken at ${clock(entry.at, day)}.`,
        entries: [entry.id],
      };
      const before = entries.find(({ id }) => id === latest?.entries[0]);
      return before !== undefined && Date.parse(before.at) >= Date.parse(entry.at) ? latest : sentence;
    }, null);
  return [
    lastSign ?? plain('Vitals: none recorded; take a first set.'),
    ...bound.filter(isFirst).map((entry) => beyond(entry, now, day)),
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
