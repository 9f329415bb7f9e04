// What rules answered before, with the slices each of them looked at: a rule is asked again only where one of those changed.

import type { Entry } from '../record/entry.ts';
import { chartOfSlices, type Rule } from './chart.ts';
import { type Cut, cutAfter, type SliceName } from './slice.ts';

interface Answered {
  readonly answer: unknown;
  readonly looked: ReadonlySet<SliceName>;
}

/** A value: it is never changed, so that two reckonings may go on from the same one. */
export interface Memo {
  readonly cut: Cut;
  readonly answers: ReadonlyMap<Rule<unknown>, Answered>;
}

export interface Asked {
  /** the rule's answer: the very same object as before where no entry that it looked at has changed */
  readonly ask: <T>(rule: Rule<T>) => T;
  /** what was asked up to now, for the next time */
  readonly memo: () => Memo;
}

const touches = (looked: ReadonlySet<SliceName>, changed: ReadonlySet<SliceName>): boolean => {
  const [few, many] = looked.size < changed.size ? [looked, changed] : [changed, looked];
  for (const name of few) if (many.has(name)) return true;
  return false;
};

/** The answers that no change touches. */
function untouched(before: Memo, changed: ReadonlySet<SliceName>): Map<Rule<unknown>, Answered> {
  const kept = new Map<Rule<unknown>, Answered>();
  for (const [rule, answered] of before.answers)
    if (!touches(answered.looked, changed)) kept.set(rule, answered);
  return kept;
}

/** Puts rules to the entries. A rule must be the same function each time to be known again. */
export function askAfter(before: Memo | null, entries: readonly Entry[]): Asked {
  const { changed, ...cut } = cutAfter(before?.cut ?? null, entries);
  const answers =
    before === null || changed === null ? new Map<Rule<unknown>, Answered>() : untouched(before, changed);
  // What the rule in hand has looked at; a rule that asks another one waits for it with its own.
  let looked = new Set<SliceName>();
  const answered = (rule: Rule<unknown>): Answered => {
    const known = answers.get(rule);
    if (known !== undefined) return known;
    const waiting = looked;
    looked = new Set();
    const fresh = { answer: rule(chart), looked };
    looked = waiting;
    answers.set(rule, fresh);
    return fresh;
  };
  const chart = chartOfSlices(cut.slices, {
    noted: (name) => {
      looked.add(name);
    },
    ask: <T>(rule: Rule<T>): T => {
      const { answer, looked: there } = answered(rule);
      // Whatever the other rule looked at, the one that asked it rests on too.
      for (const name of there) looked.add(name);
      return answer as T;
    },
  });
  return {
    // The answers are kept by the rule itself, so what lies there is that rule's answer.
    ask: <T>(rule: Rule<T>): T => answered(rule).answer as T,
    memo: () => ({ cut, answers }),
  };
}
