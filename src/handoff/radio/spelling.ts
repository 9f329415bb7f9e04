// A word can be spelt so that no letter is mistaken for another: the international spelling alphabet.

import { DIGIT_WORDS } from './digits.ts';

/** Source: ICAO Annex 10 volume II figure 5-1; ITU Radio Regulations appendix 14 (read). */
export const SPELLING_ALPHABET = [
  'Alfa',
  'Bravo',
  'Charlie',
  'Delta',
  'Echo',
  'Foxtrot',
  'Golf',
  'Hotel',
  'India',
  'Juliett',
  'Kilo',
  'Lima',
  'Mike',
  'November',
  'Oscar',
  'Papa',
  'Quebec',
  'Romeo',
  'Sierra',
  'Tango',
  'Uniform',
  'Victor',
  'Whiskey',
  'X-ray',
  'Yankee',
  'Zulu',
] as const;

/** The code words of a word's letters and figures, in order. Accents are dropped; other signs have no code word. */
export const spell = (word: string): readonly string[] =>
  [...word.normalize('NFD').toLowerCase()].flatMap((sign) => {
    const letter = SPELLING_ALPHABET.find((code) => code.charAt(0).toLowerCase() === sign);
    const figure = /\d/.test(sign) ? DIGIT_WORDS[Number(sign)] : undefined;
    return letter ?? figure ?? [];
  });
