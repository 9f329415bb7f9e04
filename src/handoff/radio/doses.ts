// Doses of one drug that were given one after another: told as one, so that the second is not left out for want of words.

import type { CareEntry } from '../sentences/care.ts';

/** What is said of many drugs, and names none: how much, how often, by which way and where. */
const NAMES_NONE = new Set(
  `chewed chew swallowed swallow flush one two six ten mil mls mcg neb amp bag the and for his her him per via was has had
  off got ago now too all out given giving gave have having take taken took with without more another again repeat repeated first second third fourth
  last next dose doses spray sprays puff puffs tablet tablets pill pills ampoule vial shot bolus push slow nebuliser nebulised
  nebulizer nebulized mask spacer inhaler through over under into onto left right both thigh deltoid shoulder
  tongue mouth nostril nose line cannula drip orally oral nasally intranasal sublingual subcutaneous intramuscular
  intravenous micrograms microgram milligrams milligram milligrammes grams gram mils millilitres milliliters litre litres
  units point half zero three four five seven eight nine eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen
  nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand minutes minute hours hour after before
  pain water percent board running started going finished`.split(/\s+/),
);

/** The first word that may be a drug's name: what stands behind it ("chewed", "with water") may be said of others too. */
const nameIn = ({ text = '' }: CareEntry): string | null =>
  (text.toLowerCase().match(/\p{L}{3,}/gu) ?? []).find((word) => !NAMES_NONE.has(word)) ?? null;

export interface Doses {
  /** the word that names all of them; null for one dose by itself */
  readonly name: string | null;
  readonly doses: readonly [CareEntry, ...CareEntry[]];
}

/** Each drug with its doses in the order given; drugs that were given again come first. */
export function dosesOf(drugs: readonly CareEntry[]): readonly Doses[] {
  const all: Doses[] = [];
  for (const drug of drugs) {
    const name = nameIn(drug);
    const at = name === null ? -1 : all.findIndex(({ doses: [first] }) => nameIn(first) === name);
    const known = all[at];
    if (known === undefined) all.push({ name: null, doses: [drug] });
    else all[at] = { name, doses: [...known.doses, drug] };
  }
  return [...all.filter(({ doses }) => doses.length > 1), ...all.filter(({ doses }) => doses.length === 1)];
}
