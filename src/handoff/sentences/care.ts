// Care that was given, each with its place, its side and its time.

import { type Entry, standing } from '../../record/entry.ts';
import { careName, clock, type Day, inOrder } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { tidy } from './list.ts';
import { thePlace } from './place.ts';
import { idsOf, markOf } from './trust.ts';

export type CareEntry = Extract<Entry, { kind: 'care' }>;

/** `Tourniquet to the left thigh at 14:12 (unconfirmed).` */
export function careSentence(entry: CareEntry, day: Day): Sentence {
  const text = entry.text === undefined ? '' : tidy(entry.text);
  const what = text === '' ? '' : entry.care === 'medication' ? `: ${text}` : `, ${text}`;
  const where =
    entry.site === undefined ? '' : ` to ${thePlace({ site: entry.site, side: entry.side ?? null })}`;
  const comma = what === '' ? '' : ',';
  return {
    text: `${careName(entry.care)}${where}${what}${comma} at ${clock(entry.at, day)}${markOf([entry])}.`,
    entries: idsOf([entry]),
  };
}

/** All standing care, in the order it was given. */
export const careSentences = (entries: readonly Entry[], day: Day): readonly Sentence[] =>
  standing(inOrder(entries), 'care').map((entry) => careSentence(entry, day));
