// Whether what was said up to a pause is whole: whether words that may follow after a breath could change what it means.

/** After a denial its list may go on: "no deformity … swelling or tenderness". */
const DENIALS = new Set(
  "no not without denies isn't can't don't doesn't nothing cannot aren't negative".split(' '),
);
/** What leads from what is denied to the place of it, which ends the list: "no deformity of the left ankle". */
const TO_PLACE = new Set(
  'of in on over to at from behind across around along down under anywhere'.split(' '),
);
/** What leads to something goes on. */
const LEADS = new Set(
  'a an and or but of on over in to at with by is are the his her your their left right both either upper lower proximal distal mid no not from has have had about for than oh point hundred then very really quite behind across around along down under above below near anywhere when just …'.split(
    ' ',
  ),
);
const DIGITS = new Set('one two three four five six seven eight nine'.split(' '));
const TEENS = new Set(
  'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' '),
);
const TENS = new Set('twenty thirty forty fifty sixty seventy eighty ninety'.split(' '));
/** Readings of two parts: "one forty … over ninety", "thirty six … point five". */
const IN_PARTS = new Set('pressure b p temperature temp glucose sugar eyes oxygen'.split(' '));
/** Fewer words are hardly ever whole. */
const FEWEST = 2;

/** True where a short pause may end it; what is in doubt waits for a long one. */
export function isWhole(words: readonly string[]): boolean {
  const last = words.at(-1);
  if (last === undefined || words.length < FEWEST || LEADS.has(last) || words.includes('…')) return false;
  if (last === 'zero' || DIGITS.has(last) || TEENS.has(last) || TENS.has(last)) return isWholeNumber(words);
  const denied = words.findLastIndex((word) => DENIALS.has(word));
  return denied === -1 || words.slice(denied).some((word) => TO_PLACE.has(word));
}

/** Two places of a number, or ten to nineteen, cannot go on; one may: "one … twelve", "ninety … two". */
function isWholeNumber(words: readonly string[]): boolean {
  const [last = '', before = ''] = [words.at(-1), words.at(-2)];
  if (words.some((word) => DENIALS.has(word))) return false;
  // "pressure one thirty over eighty four", "temp thirty six point five": the second part is said, and cannot go on either.
  const isLast = before === 'point' ? DIGITS.has(last) || last === 'zero' : words.includes('over');
  if (words.some((word) => IN_PARTS.has(word)) && !isLast) return false;
  return before === 'point' || (TENS.has(before) ? DIGITS.has(last) : TEENS.has(last));
}
