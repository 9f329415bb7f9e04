// The patient's sex as told; null where none was, or both were.

import type { Chart, EntryOf } from '../chart.ts';

type Sex = 'male' | 'female';

function sexIn({ text, present }: EntryOf<'history'>): readonly Sex[] {
  if (present === false) return [];
  const male = /\b(?:male|man|boy|gentleman)\b/i.test(text);
  const female = /\b(?:female|woman|girl|lady)\b/i.test(text);
  return male === female ? [] : [male ? 'male' : 'female'];
}

export interface SexTold {
  readonly sex: Sex | null;
  /** both were told, each in an entry of its own */
  readonly both: boolean;
  readonly entries: readonly EntryOf<'history'>[];
}

/** Which sex was told, with the entries that tell it. */
export function sexOf(chart: Chart): SexTold {
  const entries = chart.told('sex').filter((entry) => sexIn(entry).length > 0);
  const told = new Set(entries.flatMap(sexIn));
  const [only] = told;
  return { sex: told.size === 1 ? (only ?? null) : null, both: told.size > 1, entries };
}
