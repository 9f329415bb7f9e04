// What is still to be said of a phrase that has been begun: the same one whenever it is asked for, so that what comes after a
// word is worked out once for each, however many ways led there.

import type { Tag } from './island.ts';
import { END, type Part, type Tail, type Word } from './parts.ts';

/** What is still to be said of a phrase that has been begun. There is one for each place of the grammar, its callers told apart. */
export interface Rest {
  /**
   * A sequence, of which the items from `at` on are left; a token, of which the words from `at` on are left; a repeat, which
   * comes round once more or not; or a phrase, which ends here.
   */
  readonly part: Part;
  readonly at: number;
  /** what comes after that part; null after a phrase */
  readonly next: Rest | null;
  /** the signs of all that it can go on with, `END`'s among them where the phrase may end here */
  readonly signs: number;
  /** the rests that this one comes after, by what is left of their part; null before there are any */
  inner: Map<Tail | Part, Rest> | null;
  /** what was found to come after a word so far; null before one was asked for */
  steps: Map<Word, readonly Step[]> | null;
}

/** One way on from a rest. */
export interface Step {
  /** the rule of a phrase that ends, the name of a slot, or the word */
  readonly what: string;
  readonly rest: Rest;
  readonly passed: Passed;
}

/** What a way through the grammar collects: its tags in order, and what each unlikely choice costs. */
export interface Passed {
  readonly tags: readonly Tag[];
  readonly costs: readonly number[];
}

/** What is left of a part from `at` on, and then `next`: the same one whenever it is asked for. */
export function restOf(part: Part, at: number, next: Rest): Rest {
  next.inner ??= new Map();
  const place = part.tails[at] ?? part;
  const known = next.inner.get(place);
  if (known !== undefined) return known;
  const made = restMade(part, at, next);
  next.inner.set(place, made);
  return made;
}

export const restMade = (part: Part, at: number, next: Rest | null): Rest => ({
  part,
  at,
  next,
  signs: next === null ? END.sign : signsOf(part, at, next),
  inner: null,
  steps: null,
});

function signsOf(part: Part, at: number, next: Rest): number {
  switch (part.type) {
    case 'sequence':
    case 'words':
      return signsFrom(part, at, next);
    case 'repeat':
      return part.signs | next.signs;
    default:
      return END.sign;
  }
}

/** The signs of all that the items or words from `at` on can begin with, or what comes next where they may be passed. */
export function signsFrom({ tails }: Part, at: number, next: Rest): number {
  const tail = tails[at];
  if (tail === undefined) return next.signs;
  return tail.mayBeEmpty ? tail.signs | next.signs : tail.signs;
}

export const itemsFrom = (sequence: Part, at: number, next: Rest): Rest =>
  at === sequence.items.length ? next : restOf(sequence, at, next);

export const wordsFrom = (token: Part, at: number, next: Rest): Rest =>
  at === token.words.length ? next : restOf(token, at, next);
