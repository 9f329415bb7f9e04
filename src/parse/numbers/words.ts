// Every single word that is a number or part of one, and the homophones that a recogniser writes for them.

/** `digit` 0 to 9; `pair` 10 to 99, complete as it stands; `tens` 20 to 90, which may take a digit. */
export interface Numeral {
  readonly size: 'digit' | 'pair' | 'tens';
  readonly value: number;
  readonly loose: boolean;
}

// "niner", "fower" and "fife" are the radiotelephony forms (ICAO Annex 10 vol. II, 5.2.1.4.3.1, from memory).
// Its "tree" is also what people fall out of, so it stands with the homophones.
const DIGITS: Readonly<Record<string, number>> = {
  zero: 0,
  nought: 0,
  naught: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  fower: 4,
  five: 5,
  fife: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  niner: 9,
};

const PAIRS: Readonly<Record<string, number>> = {
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
};

const TENS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
  ninty: 90,
};

const HOMOPHONES: Readonly<Record<string, number>> = { won: 1, to: 2, too: 2, tree: 3, for: 4, ate: 8 };

// "up to ninety", "nine to ten", "for the pain": before a number or a determiner these are what they look like.
const JOINING = new Set(['to', 'too', 'for']);
const DETERMINERS = new Set([
  'a',
  'an',
  'the',
  'his',
  'her',
  'their',
  'your',
  'my',
  'this',
  'that',
  'it',
  'me',
]);

const OH = new Set(['oh', 'o']);

const numerals = (
  size: Numeral['size'],
  table: Readonly<Record<string, number>>,
  loose = false,
): readonly (readonly [string, Numeral])[] =>
  Object.entries(table).map(([word, value]) => [word, { size, value, loose }]);

const FIGURES: readonly (readonly [string, Numeral])[] = Array.from({ length: 100 }, (_, value) => [
  String(value),
  { size: value < 10 ? 'digit' : 'pair', value, loose: false },
]);

const NUMERALS: ReadonlyMap<string, Numeral> = new Map([
  ...numerals('tens', TENS),
  ...numerals('pair', PAIRS),
  ...numerals('digit', DIGITS),
  ...FIGURES,
]);

const LOOSE: ReadonlyMap<string, Numeral> = new Map(numerals('digit', HOMOPHONES, true));

// What else a number may begin with, and what may stand within one.
const BEGINNING: ReadonlySet<string> = new Set(
  'a an oh o point hundred thousand dozen dozens half quarter couple'.split(' '),
);
const WITHIN: ReadonlySet<string> = new Set('and of decimal quarters thirds'.split(' '));

const ZERO = '0'.charCodeAt(0);

/** True for a word that begins with a figure. */
export const isFigure = (word: string): boolean => {
  const first = word.charCodeAt(0) - ZERO;
  return first >= 0 && first <= 9;
};

/** False where no number can begin with this word; homophones count only where `loose`. A cheap test before the reading. */
export const mayBegin = (word: string | undefined, loose: boolean): boolean =>
  word !== undefined &&
  (NUMERALS.has(word) ||
    BEGINNING.has(word) ||
    isFigure(word) ||
    word.startsWith('.') ||
    (loose && LOOSE.has(word)));

/** False where no number goes on with this word, homophones and articles counted in. */
const mayStand = (word: string): boolean => WITHIN.has(word) || mayBegin(word, true);

// The longest number that is said in words takes fewer than these.
const LONGEST = 28;

/** The place of the first word from `start` on that can stand in no number. */
export function pastNumberWords(words: readonly string[], start: number): number {
  let at = start;
  while (at < start + LONGEST && mayStand(words[at] ?? '')) at++;
  return at;
}

/** True for a word from nought to ninety nine with no word after it that could go on with its number. */
export const standsAlone = (words: readonly string[], at: number): boolean =>
  NUMERALS.has(words[at] ?? '') && !mayStand(words[at + 1] ?? '');

/** True where a word that only sounds like a number, or an article, may stand in a number that begins at `start`. */
export function mayBeLoose(words: readonly string[], start: number): boolean {
  for (let at = start; at < start + LONGEST; at++) {
    const word = words[at];
    if (word === undefined) return false;
    if (LOOSE.has(word) || isArticle(word) || isOh(word)) return true;
    if (!mayStand(word)) return false;
  }
  return false;
}

/** The number that the word at `at` is by itself, or null; homophones count only where `loose`. "oh" is in `isOh`. */
export function numeralAt(words: readonly string[], at: number, loose: boolean): Numeral | null {
  const word = words[at];
  if (word === undefined) return null;
  const plain = NUMERALS.get(word) ?? null;
  if (plain !== null || !loose) return plain;
  const homophone = LOOSE.get(word) ?? null;
  if (homophone === null) return null;
  const next = words[at + 1] ?? '';
  if (JOINING.has(word) && (NUMERALS.has(next) || isFigure(next) || DETERMINERS.has(next))) return null;
  return homophone;
}

/** True for the letter as it is said for nought; also an exclamation, so it counts only among digits. */
export const isOh = (word: string | undefined): boolean => word !== undefined && OH.has(word);

export const isArticle = (word: string | undefined): boolean => word === 'a' || word === 'an';

export const isPoint = (word: string | undefined): boolean => word === 'point' || word === 'decimal';

export const isDozen = (word: string | undefined): boolean => word === 'dozen' || word === 'dozens';

/** True for a word that multiplies the number before it, which is therefore no number by itself. */
export const isScale = (word: string | undefined): boolean =>
  word === 'hundred' || word === 'thousand' || isDozen(word);

/** True for a word that makes the number before it a count of parts ("a hundred and three quarters" is no 103). */
export const isDenominator = (word: string | undefined): boolean => word === 'quarters' || word === 'thirds';
