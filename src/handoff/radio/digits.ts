// Figures as they are spoken on a radio: digit by digit, exact thousands as such, "niner" for nine and never "oh".

/** Plain English words, as a person reads them off a screen; "niner" since "nine" is mistaken for "five". */
export const DIGIT_WORDS = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'niner',
] as const;

/** How they are pronounced. Source: a US Navy training manual's page quoting ACP 125 (read). */
export const DIGIT_SOUNDS = [
  'ZE-RO',
  'WUN',
  'TOO',
  'TREE',
  'FOW-er',
  'FIFE',
  'SIX',
  'SEV-en',
  'AIT',
  'NIN-ER',
] as const;

export interface FigureWords {
  readonly digits: readonly string[];
  readonly thousand: string;
  readonly decimal: string;
}

const PLAIN: FigureWords = { digits: DIGIT_WORDS, thousand: 'thousand', decimal: 'decimal' };

/** The sounds as words; the source prints thousand as "Tou-zand" and decimal as "DAY-SEE-MAL". */
export const SOUNDS: FigureWords = { digits: DIGIT_SOUNDS, thousand: 'TOU-ZAND', decimal: 'DAY-SEE-MAL' };

const oneByOne = (figures: string, words: FigureWords): string =>
  [...figures].map((figure) => words.digits[Number(figure)] ?? '').join(' ');

/**
 * `112` gives "one one two", `36.8` "three six decimal eight", `16000` "one six thousand".
 * @param figures digits with at most one point; commas between thousands are dropped. Leading zeros are spoken.
 */
export function sayFigures(figures: string, words: FigureWords = PLAIN): string {
  const [whole = '', fraction] = figures.replaceAll(',', '').split('.');
  const thousands = fraction === undefined && /^[1-9]\d*000$/.test(whole);
  const said = thousands
    ? `${oneByOne(whole.slice(0, -3), words)} ${words.thousand}`
    : oneByOne(whole, words);
  return fraction === undefined || fraction === ''
    ? said
    : `${said} ${words.decimal} ${oneByOne(fraction, words)}`;
}
