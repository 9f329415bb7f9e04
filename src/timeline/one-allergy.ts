// A denial of one allergen is none of the others, and must never read as "no allergies".

import type { HistoryStatement } from '../terms/index.ts';

const NEGATIVE =
  /\b(?:no|not|none|nothing|never|nil|nkda|nka|n k d a|n k a|denies|denied|without|isn't|doesn't|don't|aren't)\b/gi;

// With these and a negative word every allergy there is may be denied.
const EVERY =
  /\b(?:i|he|she|they|patient|is|am|are|was|has|have|had|does|did|any|known|other|at|all|to|that|knows?|of|about|so|far|anything|allerg(?:y|ies|ic))\b/gi;

const plain = (text: string): string => text.replace(/’/g, "'");

/** True for a denied allergy that names what it is to: "no kiwi allergy". */
export const deniesOneAllergy = ({ topic, text, present }: HistoryStatement): boolean =>
  topic === 'allergies' &&
  present === false &&
  /\p{L}/u.test(plain(text).replace(NEGATIVE, '').replace(EVERY, ''));

/** "No kiwi allergy" as it was said; where the words have no negative of their own, with one. */
export const oneAllergyDenied = (text: string): string =>
  plain(text).search(NEGATIVE) < 0 ? `denies ${text}` : text;
