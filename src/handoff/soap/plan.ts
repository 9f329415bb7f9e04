// Plan: the care that was given with its times, what to look at again, and what a person must settle; it prescribes nothing.

import { standing } from '../../record/entry.ts';
import type { Care } from '../../terms/index.ts';
import { clock, type Day, inOrder, series } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { type CareEntry, careSentences } from '../sentences/care.ts';
import { doubtSentences } from '../sentences/kept.ts';
import { thePlace } from '../sentences/place.ts';
import { markOf } from '../sentences/trust.ts';
import { type HandoffLine, heading, line, plain, type Sentence } from '../text.ts';

/** Care after which circulation, sensation and motion beyond it are looked at again (from memory: NHTSA EMT teaching). */
const BINDING: readonly Care[] = ['tourniquet', 'splint', 'traction-splint', 'bandage', 'sling', 'reduction'];

const beyond = (entry: CareEntry, day: Day): Sentence => ({
  text: `Recheck circulation, sensation and motion beyond the ${entry.care.replace('-', ' ')}${
    entry.site === undefined ? '' : ` on ${thePlace({ site: entry.site, side: entry.side ?? null })}`
  }, on since ${clock(entry.at, day)}${markOf([entry])}.`,
  entries: [entry.id],
});

function rechecks({ entries }: HandoffInput, day: Day): readonly Sentence[] {
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
    ...bound.map((entry) => beyond(entry, day)),
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
