// How much is burned in all, told without a place: "total burn eighteen percent" stands in words, and counts instead of the parts.

import type { Chart, EntryOf } from '../chart.ts';
import { palmPercentIn } from './palms.ts';

export interface TotalSaid {
  readonly percent: number;
  /** the words */
  readonly by: EntryOf<'note'>;
  /** in milliseconds: what is found later is not in it */
  readonly heardAt: number;
}

const OF_BURNS = /\b(burns?|burned|burnt|scalds?|body surface|t ?b ?s ?a)\b/i;
const IN_ALL = /\b(total|overall|altogether|in all|burns (are|is)|t ?b ?s ?a|burned area|body surface)\b/i;
// "Over twenty percent", "no burns total" give no figure to count with.
const NO_FIGURE = /\b(not?|less than|more than|over|under|up to|or|if)\b/i;

/** The last such words, or null where there are none. */
export function totalSaid(chart: Chart): TotalSaid | null {
  for (const by of chart.words.toReversed()) {
    const { kind, text, heardAt } = by;
    if (kind !== 'note' || !OF_BURNS.test(text) || !IN_ALL.test(text) || NO_FIGURE.test(text)) continue;
    const percent = palmPercentIn(text);
    if (percent !== null && percent > 0 && percent <= 100)
      return { percent, by, heardAt: Date.parse(heardAt) };
  }
  return null;
}
