// Which entries are confirmed each on its own, by hand and by voice: those in which what is easily misheard can hide.

import { isPaired, type Topic } from '../terms/index.ts';
import { type Entry, firstTold } from './entry.ts';

/** Topics in which a slip harms: each is confirmed on its own. */
const ALONE: readonly Topic[] = ['allergies', 'medications', 'age', 'weight', 'last-intake', 'time', 'name'];

const NUMBER_WORD =
  /\d|\b(?:zero|oh|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|half|quarter|third|dozen|nought|point|no|not|never|none|nothing|without|denies|\w+n't)\b/i;

const sideOf = (entry: Entry) => ('side' in entry ? (entry.side ?? null) : null);

const lacksSide = (entry: Entry): boolean =>
  'site' in entry && entry.site !== undefined && isPaired(entry.site) && sideOf(entry) === null;

/** Left and right are taken for each other; "both" and the midline are not. */
const isOneSided = (entry: Entry): boolean => sideOf(entry) === 'left' || sideOf(entry) === 'right';

/** The reason where nothing but its side can be misheard. */
export const A_SIDE = 'a side';

/** Why the entry is confirmed on its own, in a few words; null where it may go with others. */
export function aloneBecause(entry: Entry): string | null {
  if ((entry.doubt ?? []).length > 0) return 'a question is open';
  if (lacksSide(entry)) return 'side not said';
  if (Object.keys(entry.known ?? {}).length > 0) return 'not all of it was spoken';
  if ('present' in entry && entry.present === false) return 'a negative';
  if (Date.parse(entry.at) !== Date.parse(firstTold(entry))) return 'a spoken time';
  if (entry.firstHeardAt !== undefined) return 'a correction';
  if (hasNumber(entry)) return 'a number';
  if (entry.kind === 'history' && ALONE.includes(entry.topic)) return 'allergies, drugs and the like';
  if (entry.kind === 'care' && (entry.care === 'medication' || entry.text !== undefined))
    return 'drugs and amounts';
  if ((entry.kind === 'history' || entry.kind === 'note') && NUMBER_WORD.test(entry.text))
    return 'a number or a “no” in the words';
  return isOneSided(entry) ? A_SIDE : null;
}

function hasNumber(entry: Entry): boolean {
  switch (entry.kind) {
    case 'finding':
      return (
        entry.size !== undefined ||
        entry.count !== undefined ||
        entry.level !== undefined ||
        typeof entry.severity === 'number'
      );
    case 'csm':
      return entry.capRefillSeconds !== undefined || typeof entry.strength === 'number';
    case 'vital':
      // Of the vitals only the skin has neither a number nor a yes-or-no in it.
      return entry.vital !== 'skin';
    case 'history':
      return entry.years !== undefined || entry.kg !== undefined;
    default:
      return false;
  }
}
