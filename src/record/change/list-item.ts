// "Allergic to penicillin and latex. Correction, not latex": of a list that was told as one, a denial takes back what it names and no more.

import type { Topic } from '../../terms/index.ts';

/** What is told as a list of things that stand each for itself. */
export const LIST_TOPICS: ReadonlySet<Topic> = new Set([
  'allergies',
  'medications',
  'past-history',
  'symptoms',
]);

// With these alone all of it is denied: "no allergies", "not on any medications".
const NAMES_NOTHING = new Set(
  "no not none nothing never nil any known drug drugs other correction sorry actually wait scratch that this it is isn't was wasn't he she they i patient's patient takes take taking taken on has have had doesn't don't does did didn't a an the to of for at all so just in fact with history past medical allergic allergy allergies allergens medication medications medicine medicines meds tablets pills problems problem conditions condition illness illnesses symptoms symptom complaints complaint anything everything either and or make denies denied regular regularly prescribed".split(
    ' ',
  ),
);

/** Words of one stem say the same: "shortness" and "short", "vomited" and "vomiting". */
const STEM = 4;

const contentOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replaceAll('’', "'")
    .split(/[^\p{L}\p{N}']+/u)
    .filter((word) => word !== '' && !NAMES_NOTHING.has(word));

const isAlike = (one: string, other: string): boolean =>
  one === other ||
  (one.length >= STEM && other.length >= STEM && one.slice(0, STEM) === other.slice(0, STEM));

/** The things of a list as they were told. */
const itemsOf = (text: string): readonly string[] =>
  text
    .split(/\s*,\s*(?:and\s+|or\s+)?|\s+(?:and|or|plus)\s+/iu)
    .map((item) => item.trim())
    .filter((item) => item !== '');

/** What a denial does to what was told. */
export type Denial =
  /** it denies all of it */
  | { readonly kind: 'whole' }
  /** it denies some of the list, and `rest` stands */
  | { readonly kind: 'part'; readonly denied: string; readonly rest: string }
  /** it names what was not told */
  | { readonly kind: 'other' };

/** What these words of denial do to a told text. */
export function denialOf(text: string, words: string): Denial {
  const named = contentOf(words);
  if (named.length === 0) return { kind: 'whole' };
  const items = itemsOf(text);
  const isNamed = (item: string): boolean => {
    const content = contentOf(item);
    return content.some((word) => named.some((one) => isAlike(one, word)));
  };
  const denied = items.filter(isNamed);
  if (denied.length === 0) return { kind: 'other' };
  const rest = items.filter((item) => !isNamed(item));
  if (rest.length === 0) return { kind: 'whole' };
  return { kind: 'part', denied: denied.join(' and '), rest: rest.join(' and ') };
}

/** True where the words name something of a told text. */
export const namesItemOf = (text: string, words: string): boolean =>
  contentOf(words).length > 0 && denialOf(text, words).kind !== 'other';
