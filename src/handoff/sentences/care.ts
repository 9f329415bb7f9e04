// Care that was given, each with its place, its side and its time.

import { type Entry, standing } from '../../record/entry.ts';
import { careName, clock, type Day, inOrder, minuteOf } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { endTold } from './care-ended.ts';
import { tidy } from './list.ts';
import { thePlace } from './place.ts';
import { joined, type Told, written } from './told.ts';
import { saidOffTold, tourniquetsIn } from './tourniquet.ts';

export type CareEntry = Extract<Entry, { kind: 'care' }>;

/** What was said of it, without the care's own name over again: "oxygen on, four litres" is "four litres". */
export function careText({ care, text }: CareEntry): string {
  const said = tidy(text ?? '');
  const name = careName(care).toLowerCase();
  if (!said.toLowerCase().startsWith(name)) return said;
  return said
    .slice(name.length)
    .replace(/^(?:'s)?(?:\s+(?:is|was))?(?:\s+on)?[\s,:]*(?=\s|\w|$)/i, '')
    .trim();
}

const where = ({ site, side }: CareEntry): string =>
  site === undefined ? '' : ` to ${thePlace({ site, side: side ?? null })}`;

/** `Tourniquet to the left thigh at 14:12`; the same care said again is told with its first time, and its entries. */
export function careTold(entry: CareEntry, day: Day, again: readonly CareEntry[] = []): Told {
  const text = careText(entry);
  const what = text === '' ? '' : entry.care === 'medication' ? `: ${text}` : `, ${text}`;
  const comma = what === '' ? '' : ',';
  return {
    words: `${careName(entry.care)}${where(entry)}${what}${comma} at ${clock(entry.at, day)}`,
    entries: [entry, ...again],
  };
}

export const careSentence = (entry: CareEntry, day: Day): Sentence => written(careTold(entry, day));

/** Alike in all that was said, in the same minute. A second dose at another time is a second dose. */
const key = (entry: CareEntry): string =>
  [entry.care, entry.site, entry.side, careText(entry), entry.state, minuteOf(entry.at)].join('|');

/** All standing care, in the order it was given; what goes on beside what was said of its end. */
export function caresTold(entries: readonly Entry[], day: Day): readonly Told[] {
  const cares = standing(inOrder(entries), 'care');
  const tourniquets = cares.some(({ care }) => care === 'tourniquet') ? tourniquetsIn(entries) : [];
  const saidOff = (entry: CareEntry): readonly Told[] =>
    (tourniquets.find((one) => one.entries.includes(entry))?.saidOff ?? []).map((said) =>
      saidOffTold(said, day),
    );
  return cares
    .filter((entry, index) => cares.findIndex((one) => key(one) === key(entry)) === index)
    .map((entry) => {
      const again = cares.filter((one) => one !== entry && key(one) === key(entry));
      const end = endTold(entry, inOrder(entries), day);
      return joined([careTold(entry, day, again), ...saidOff(entry), ...(end === null ? [] : [end])]);
    });
}

export const careSentences = (entries: readonly Entry[], day: Day): readonly Sentence[] =>
  caresTold(entries, day).map(written);
