// What of an entry was not spoken, in words a partner understands at once.

import type { Entry } from '../../record/index.ts';

const SLOTS: Readonly<Record<string, string>> = {
  present: 'yes or no',
  at: 'time',
  value: 'number',
  topic: 'question',
  vital: 'which sign',
};

const HOW = { carried: 'carried over', inferred: 'worked out' } as const;

/** `side carried over`, `yes or no worked out`: each slot that was not spoken. */
export const originMarks = (entry: Entry): readonly string[] =>
  Object.entries(entry.known ?? {}).map(([slot, how]) => `${SLOTS[slot] ?? slot} ${HOW[how]}`);
