// Whether what was said up to a pause is whole: whether words that may follow after a breath could change what it means.

/** After a denial its list may go on: "no deformity … swelling or tenderness". */
const DENIALS = ['no', 'not', 'without', 'denies', "isn't", "can't", "don't", "doesn't", 'nothing', 'cannot'];
/** A number may go on ("one hundred … and twelve"), and so may what leads to something. */
const LEADS =
  'a an and or but of on over to in at with by is are the his her your their left right both upper lower no not under from has have about for than oh point hundred and then …'.split(
    ' ',
  );
const NUMBERS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety'.split(
    ' ',
  );
/** Fewer words are hardly ever whole. */
const FEWEST = 2;

const MAY_GO_ON = new Set([...LEADS, ...NUMBERS]);

/** True where a short pause may end it; what is in doubt waits for a long one. */
export function isWhole(words: readonly string[]): boolean {
  const last = words.at(-1);
  if (last === undefined || words.length < FEWEST) return false;
  return !MAY_GO_ON.has(last) && !words.some((word) => DENIALS.includes(word) || word === '…');
}
