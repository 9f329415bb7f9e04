// Care that goes on until it is ended, with what was said of its end: the record keeps such talk in words, and a report that told the
// oxygen alone would have it running still. Tourniquets have rules of their own (clinical/tourniquets).

import { quotedWords } from '../../clinical/index.ts';
import { type Entry, stands } from '../../record/entry.ts';
import type { Care } from '../../terms/index.ts';
import { clock, type Day } from '../../timeline/index.ts';
import type { CareEntry } from './care.ts';
import { tidy } from './list.ts';
import type { Told } from './told.ts';

/** How each is named (common practice of responders' talk, no source). */
const NAMES: Partial<Readonly<Record<Care, string>>> = {
  oxygen: 'oxygen|o two|o2|non ?rebreather|mask|nasal cannula',
  collar: '(?:c |cervical )?collar',
  'pelvic-binder': '(?:pelvic )?binder',
  splint: 'splint',
  'traction-splint': '(?:traction )?splint|traction',
  sling: 'sling',
  cpr: 'c p r|cpr|(?:chest )?compressions',
  fluids: 'fluids?|drip|iv|i v|bag',
};
const BETWEEN = String.raw`(?:(?:is|was|has|have|been|now|just|already|the|his|her|their|left|right|arm|leg|ankle|wrist|from|of|on)\s+)*`;
const BEFORE = String.raw`\b(?:stopp(?:ed|ing)|remov(?:ed|ing)|discontinu(?:ed|ing)|ceas(?:ed|ing)|(?:took|taken|taking|came|turned|turning|switched) (?:off|down))\s+`;
const BEHIND = String.raw`(?:(?:taken|came|come|turned|switched|cut)\s+)?(?:off|down)\b|(?:stopped|removed|discontinued|ceased|ended|finished)\b`;
/** Behind these nothing was ended: it is denied, asked, or meant for later. */
const NOT_DONE =
  /\b(?:not|never|don't|do not|didn't|can't|cannot|without|going to|will|want|before|until|if|when|should|could|can|may|might|need|keep|in a (?:minute|moment|second|bit)|later|soon|for a moment|for pulse check|back on|on again)\b|\?/;

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[^a-z0-9'?\s]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** True where the words say that care of this kind has ended. */
export function saysEnded(care: Care, text: string): boolean {
  const name = NAMES[care];
  const words = plain(text);
  if (name === undefined || NOT_DONE.test(words)) return false;
  return (
    new RegExp(`\\b(?:${name})\\s+${BETWEEN}(?:${BEHIND})`).test(words) ||
    new RegExp(`${BEFORE}${BETWEEN}(?:${name})\\b`).test(words)
  );
}

/**
 * What was said of the end of this care after it was given, the first of it; null where nothing was, or where the same was given again
 * after those words. `unclear` where the words may mean another one of its kind.
 */
export function endOf(
  entry: CareEntry,
  entries: readonly Entry[],
): { readonly said: Entry; readonly unclear: boolean } | null {
  const alike = entries.filter(
    (one): one is CareEntry => one.kind === 'care' && one.care === entry.care && stands(one),
  );
  const said = entries.find(
    (one) =>
      (one.kind === 'note' || (one.kind === 'history' && one.topic === 'events')) &&
      stands(one) &&
      Date.parse(one.at) >= Date.parse(entry.at) &&
      saysEnded(entry.care, one.text) &&
      !isOtherSide(entry, one.text),
  );
  if (said === undefined) return null;
  const before = alike.filter((one) => Date.parse(one.at) <= Date.parse(said.at));
  const rivals = before.filter(
    (one) => (one.site !== entry.site || one.side !== entry.side) && !isOtherSide(one, textIn(said)),
  );
  return { said, unclear: rivals.length > 0 };
}

const textIn = (entry: Entry): string => ('text' in entry ? (entry.text ?? '') : '');

const isOtherSide = ({ side }: CareEntry, text: string): boolean => {
  const words = plain(text);
  const [left, right] = [/\bleft\b/.test(words), /\bright\b/.test(words)];
  return (side === 'left' && right && !left) || (side === 'right' && left && !right);
};

/** "Said stopped" of what runs, "said off" of what is worn. */
export const endWord = ({ care }: CareEntry): string => (RUNS.has(care) ? 'said stopped' : 'said off');

const RUNS: ReadonlySet<Care> = new Set(['cpr', 'oxygen', 'fluids']);

/** `said off at 09:15: “oxygen off”`, beside the words of the care. */
export function endTold(entry: CareEntry, entries: readonly Entry[], day: Day): Told | null {
  const end = endOf(entry, entries);
  if (end === null) return null;
  const how = end.unclear
    ? `said at ${clock(end.said.at, day)}, not clear of which`
    : `${endWord(entry)} at ${clock(end.said.at, day)}`;
  return {
    words: tidy(`${how}: ${quotedWords(textIn(end.said))}`),
    entries: [end.said],
  };
}
