// Written prose becomes words that can be read aloud: no figure, no sign and no unit's abbreviation is left in it.

import { sayFigures } from './digits.ts';

type Rule = readonly [pattern: RegExp, spoken: string | ((...match: string[]) => string)];

const FIGURE = String.raw`(?<=\d\s?)`;

/** Units stand right after a figure; elsewhere the same letters are a word ("in", "g"). Longer ones come first. */
const UNITS: readonly Rule[] = [
  [new RegExp(`${FIGURE}°\\s?C\\b`, 'g'), ' degrees Celsius'],
  [new RegExp(`${FIGURE}°\\s?F\\b`, 'g'), ' degrees Fahrenheit'],
  [new RegExp(`${FIGURE}%`, 'g'), ' percent'],
  [new RegExp(`${FIGURE}mg/dL\\b`, 'gi'), ' milligrams per decilitre'],
  [new RegExp(`${FIGURE}mm\\s?Hg\\b`, 'gi'), ' millimetres of mercury'],
  [new RegExp(`${FIGURE}mcg\\b`, 'gi'), ' micrograms'],
  [
    new RegExp(`${FIGURE}(mm|cm|km|mg|ml|kg)\\b`, 'gi'),
    (_, unit) => ` ${UNIT_WORDS[unit?.toLowerCase() ?? '']}`,
  ],
];

const UNIT_WORDS: Readonly<Record<string, string>> = {
  mm: 'millimetres',
  // A length is that of a finding and stands before it: a three centimetre laceration.
  cm: 'centimetre',
  km: 'kilometres',
  mg: 'milligrams',
  ml: 'millilitres',
  kg: 'kilograms',
};

/** In this order: a slash between figures before the figures themselves, the figures before stray signs. */
const RULES: readonly Rule[] = [
  ...UNITS,
  [/\bside (?:carried|inferred); yes or no (?:carried|inferred)\b/g, 'side and yes or no to be confirmed'],
  [/\b(side|yes or no) (?:carried|inferred)\b/g, '$1 to be confirmed'],
  // A scale's end is its name, not a measured figure.
  [/\bout of 10\b/g, 'out of ten'],
  [/(\d{4})-(\d{2})-(\d{2})/g, (_, year, month, date) => `date ${year} ${month} ${date},`],
  [/(\d{1,2}):(\d{2})/g, '$1 $2'],
  [/(\d)\s?\/\s?(\d)/g, '$1 over $2'],
  [/(\d)\s?[-–]\s?(\d)/g, '$1 to $2'],
  [/(\d)(st|nd|rd|th)\b/g, '$1'],
  [/(?:\d{1,3}(?:,\d{3})+(?!\d)|\d+)(?:\.\d+)?/g, (figures) => ` ${sayFigures(figures ?? '')} `],
  [/\/min(ute)?\b/g, ' per minute'],
  [/×/g, ' times '],
  [/&/g, ' and '],
  [/\+/g, ' plus '],
  [/>=|≥/g, ' at least '],
  [/<=|≤/g, ' at most '],
  [/>/g, ' more than '],
  [/</g, ' less than '],
  [/=/g, ' equals '],
  [/\s*[([]\s*/g, ', '],
  [/\s*[)\]]/g, ''],
  [/[“”"]/g, ''],
  [/\s*[;—]\s*/g, ', '],
  [/[/_–]/g, ' '],
  [/\s+/g, ' '],
  [/\s+([,.:])/g, '$1'],
  [/([,:])(?:\s*,)+/g, '$1'],
  [/,(\s*[.:])/g, '$1'],
];

const GCS_PARTS: Readonly<Record<string, string>> = { E: 'eye', V: 'verbal', M: 'motor' };

/** The letters of the GCS are spoken as words, and only in a sentence that is about it. */
const openGcs = (text: string): string =>
  /^GCS\b/.test(text)
    ? text.replace(/\b([EVM])(?=\d| not testable)/g, (_, letter: string) => `${GCS_PARTS[letter]} `)
    : text;

/** `Pulse: 112 at 14:10 (unconfirmed).` gives `Pulse: one one two at one four one zero, unconfirmed.` */
export const speak = (written: string): string =>
  RULES.reduce(
    (text, [pattern, spoken]) =>
      typeof spoken === 'string' ? text.replace(pattern, spoken) : text.replace(pattern, spoken),
    openGcs(written),
  ).trim();
