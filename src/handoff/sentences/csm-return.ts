// A limb's end that was lost or weak, beside what was said of it otherwise: "…; intact at 09:15".

import { betterThan, betterWords } from '../../clinical/index.ts';
import { type Entry, standing } from '../../record/entry.ts';
import { clock, type Day, inOrder } from '../../timeline/index.ts';
import { csmTold } from './csm.ts';
import type { CsmEntry } from './csm-fact.ts';
import { thePlace } from './place.ts';
import { joined, type Told } from './told.ts';

const nameOf = ({ aspect, digit, site, side }: CsmEntry): string =>
  `${aspect} of ${thePlace({ site: digit ?? site, side })}`;

/** The latest word on each aspect of each end that a sentence tells. */
const latestOf = (entries: readonly Entry[]): readonly CsmEntry[] => [
  ...new Map(entries.flatMap((entry) => (entry.kind === 'csm' ? [[nameOf(entry), entry]] : []))).values(),
];

function returnsOf(told: Told, checks: readonly CsmEntry[], when: 'later' | 'any', day: Day) {
  const lost = latestOf(told.entries);
  const back = lost.flatMap((entry) => {
    const better = betterThan(entry, checks, when);
    if (better === null) return [];
    const before = checks.indexOf(better) < checks.indexOf(entry) ? 'before that ' : '';
    return [{ better, words: `${before}${betterWords(better, clock(better.at, day))}` }];
  });
  // Where all that the sentence tells came back alike, its places need no second telling.
  const isWhole = back.length === lost.length && new Set(back.map(({ words }) => words)).size === 1;
  if (isWhole) {
    const [first] = back;
    return first === undefined ? [] : [{ words: first.words, entries: back.map(({ better }) => better) }];
  }
  return back.map(({ better, words }) => ({ words: `${nameOf(better)} ${words}`, entries: [better] }));
}

/** Limbs that are lost or weak, worst first, each beside the last that was said of it to the contrary: since then, or ever. */
export function limbProblems(entries: readonly Entry[], day: Day, when: 'later' | 'any'): readonly Told[] {
  const checks = standing(inOrder(entries), 'csm');
  return csmTold(entries, day, false).map((told) => {
    const back = returnsOf(told, checks, when, day);
    if (back.length === 0) return told;
    const all = joined([told, ...back]);
    const isMarked = all.state === 'inside' || (Array.isArray(told.slots) && told.slots.length > 0);
    const { short, entries: own } = told;
    const [last] = latestOf(own).slice(-1);
    if (short === undefined || last === undefined || isMarked) return all;
    const words = back.map((one) => one.words).join(', ');
    return { ...all, short: `${short} at ${clock(last.at, day)} but ${words}` };
  });
}
