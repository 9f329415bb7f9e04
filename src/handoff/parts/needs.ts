// When help arrives and what is needed, as far as it was said: the words are quoted, and nothing is made of them.

import { type Entry, standing } from '../../record/entry.ts';
import { clock, type Day, inOrder } from '../../timeline/index.ts';
import { tidy } from '../sentences/list.ts';
import type { Told } from '../sentences/told.ts';

/**
 * Words that tell an arrival that is to come; ours, no source. "Before I arrived", "on our arrival" and "was ten minutes
 * away" tell of what was.
 */
const ARRIVAL =
  /\bE\.?T\.?A\b|(?<!\b(?:was|were|been|had|lay|lying|found)\b[^.,;]{0,40})\b(?:minutes?|mins?|hours?)\s+(?:out|away)\b(?!\s+(?:cold|of it))|\b(?:arrives?|arriving|inbound)\b|(?<!\b(?:on|upon|at|before|since|after|prior to|until|till)\s+(?:(?:my|our|their|the|scene|crew|first)\s+)*)\barrival\b/i;

/** Words that ask for something; ours, no source. "No need", "I need to look" and "I need you to" ask for nothing. */
const NEED =
  /(?<!\b(?:no|not|don't|won't)\s)\bneeds?\b(?!\s+(?:to|you)\b)|\b(?:request\w*|require\w*|send (?:us|me|a|an|the|more)|bring (?:us|a|an|the|more)|ask for)\b/i;

type Kept = Extract<Entry, { kind: 'note' | 'mark' }>;

function quoted(entries: readonly Entry[], pattern: RegExp, title: string, day: Day): readonly Told[] {
  const ordered = inOrder(entries);
  const all: readonly Kept[] = [...standing(ordered, 'mark'), ...standing(ordered, 'note')];
  return all
    .filter(({ text }) => pattern.test(text))
    .map((entry) => ({
      words: `${title}, said at ${clock(entry.at, day)}: “${tidy(entry.text)}”`,
      entries: [entry],
    }));
}

/** `Arrival, said at 14:07: “the aircraft is twelve minutes out”` */
export const arrivals = (entries: readonly Entry[], day: Day): readonly Told[] =>
  quoted(entries, ARRIVAL, 'Arrival', day);

/** `Needed, said at 14:07: “we need a stretcher”` */
export const needs = (entries: readonly Entry[], day: Day): readonly Told[] =>
  quoted(entries, NEED, 'Needed', day).filter(
    (need) => !arrivals(need.entries, day).some(({ entries: [one] }) => one === need.entries[0]),
  );
