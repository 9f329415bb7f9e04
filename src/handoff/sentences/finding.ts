// A group of findings as one sentence: present ones after their place, absent ones under one "no" that names the place.

import { clock, type Day } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import type { FindingGroup } from './groups.ts';
import { and, capital, once, or } from './list.ts';
import { findingPhrase } from './phrase.ts';
import { placeName, thePlace } from './place.ts';
import { idsOf, markOf } from './trust.ts';

/** The sentence without time, mark or full stop. */
export function findingWords({ entries }: FindingGroup): string {
  const [first] = entries;
  const phrases = once(entries.map(findingPhrase));
  if (first.present) return `${capital(placeName(first))}: ${and(phrases)}`;
  // "No swelling of both wrists" could mean that one is swollen; with the place in front it cannot.
  return first.side === 'both'
    ? `${capital(placeName(first))}: no ${or(phrases)}`
    : `No ${or(phrases)} of ${thePlace(first)}`;
}

/** `No deformity, swelling or tenderness of the right wrist (unconfirmed).` */
export function findingSentence(group: FindingGroup, day: Day): Sentence {
  const time = group.timed ? `, at ${clock(group.entries[0].at, day)}` : '';
  return {
    text: `${findingWords(group)}${time}${markOf(group.entries)}.`,
    entries: idsOf(group.entries),
  };
}
