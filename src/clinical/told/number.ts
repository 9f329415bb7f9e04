// Numbers in told text, in figures or in words up to 999; a text without one gives null, never a guess.

const UNITS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = '_ _ twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** Matches a number in figures or words, for use inside a larger pattern. */
export const NUMBER = `\\b\\d+(?:\\.\\d+)?|\\b(?:(?:${[...UNITS, ...TENS.slice(2), 'hundred'].join('|')}|a(?= hundred))(?:[\\s-]+(?:and[\\s-]+)?)?)+`;

function wordValue(word: string): number | 'hundred' | null {
  if (word === 'hundred') return 'hundred';
  if (word === 'a') return 1;
  const unit = UNITS.indexOf(word);
  if (unit >= 0) return unit;
  const ten = TENS.indexOf(word);
  return ten >= 2 ? ten * 10 : null;
}

/** The value of one number as NUMBER finds it; null where the words do not make one. */
export function numberIn(text: string): number | null {
  const trimmed = text.trim().toLowerCase();
  if (/^\d+(?:\.\d+)?$/.test(trimmed)) return Number(trimmed);
  let total = 0;
  let seen = false;
  for (const word of trimmed.split(/[\s-]+/).filter((each) => each !== '')) {
    if (word === 'and') continue;
    const value = wordValue(word);
    if (value === null) return null;
    total = value === 'hundred' ? (total === 0 ? 1 : total) * 100 : total + value;
    seen = true;
  }
  return seen ? total : null;
}
