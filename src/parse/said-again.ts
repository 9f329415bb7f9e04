// "One thirty, one three zero": a number that is said again in other words, as over the radio, is one number.

import { mayBegin, readNumbers } from './numbers/index.ts';
import type { Token } from './token.ts';

// Below it two figures may be a left one and a right one.
const LEAST = 10;
// From here on the very same words can be no hours and minutes.
const PAST_HOURS = 60;

/** The tokens, where each number that is said again straight behind itself is said once; its words belong to the first. */
export function withoutSaidAgain(tokens: readonly Token[]): readonly Token[] {
  const words = tokens.map(({ word }) => word);
  const kept: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const again = saidAgain(tokens, words, at);
    const end = again?.to ?? at + 1;
    kept.push(...tokens.slice(at, again?.from ?? end));
    const [last, dropped] = [kept.at(-1), tokens[end - 1]];
    if (again !== null && last !== undefined && dropped !== undefined)
      kept[kept.length - 1] = { ...last, to: dropped.to, pause: dropped.pause };
    at = end;
  }
  return kept.length === tokens.length ? tokens : kept;
}

interface Again {
  /** where the number is said again, and where that ends */
  readonly from: number;
  readonly to: number;
}

function saidAgain(tokens: readonly Token[], words: readonly string[], at: number): Again | null {
  if (!mayBegin(words[at], false) || !goesOnCounting(words, at)) return null;
  for (const first of numbersAt(words, at)) {
    const pause = tokens[first.end - 1]?.pause ?? '';
    if (pause === 'end' || pause === 'ask' || isParted(tokens, at, first.end)) continue;
    for (const second of [...withoutPoint(words, at, first), ...numbersAt(words, first.end)]) {
      if (isParted(tokens, first.end, second.end) || !isOne(at, first, second)) continue;
      const isSameWords = spoken(words, at, first.end) === spoken(words, first.end, second.end);
      const isHours =
        isSameWords && Number(first.values[0]) < PAST_HOURS && !words.slice(at, first.end).includes('point');
      if (isHours || (isSameWords && pause !== '') || countsElse(words, at, second.end)) continue;
      // "One hundred and forty, one forty three": the second is another.
      if (wholeAt(words, first.end, second.end + 1) !== null) continue;
      return { from: first.end, to: second.end };
    }
  }
  return null;
}

/** A number, or two with an "over" between them. */
interface Said {
  readonly end: number;
  readonly values: readonly number[];
}

// Each number that may end before what follows it: "one thirty" of "one thirty one three zero".
function numbersAt(words: readonly string[], at: number): readonly Said[] {
  if (!mayBegin(words[at], false)) return [];
  const found: Said[] = [];
  for (let end = Math.min(words.length, at + MOST_WORDS); end > at; end--) {
    const value = wholeAt(words, at, end);
    if (value !== null) found.push({ end, values: [value] });
    const over = words.slice(at, end).findIndex((word) => /^(over|on)$/.test(word)) + at;
    const [upper, lower] =
      over > at ? [wholeAt(words, at, over), wholeAt(words, over + 1, end)] : [null, null];
    if (upper !== null && lower !== null) found.push({ end, values: [upper, lower] });
  }
  return found;
}

/** True where another number may follow soon: most numbers stand alone, and to read them in every way takes long. */
const goesOnCounting = (words: readonly string[], at: number): boolean =>
  words.slice(at + 1, at + MOST_WORDS + 1).some((word) => mayBegin(word, false));

// "One hundred and thirty four point five".
const MOST_WORDS = 8;

const wholeAt = (words: readonly string[], at: number, end: number): number | null =>
  readNumbers(words.slice(0, end), at).find((one) => one.end === end)?.value ?? null;

function isOne(at: number, first: Said, second: Said): boolean {
  const [value = 0] = first.values;
  if (value < LEAST && Number.isInteger(value)) return false;
  const isLong = first.end - at > 1 || second.end - first.end > 1;
  return isLong && first.values.join(' ') === second.values.join(' ');
}

// "Thirty four point two, thirty four two": the point may be left out.
function withoutPoint(words: readonly string[], at: number, { end, values }: Said): readonly Said[] {
  const plain = words.slice(at, end).filter((word) => word !== 'point');
  const to = end + plain.length;
  const isAgain = plain.length === end - at - 1 && plain.join(' ') === spoken(words, end, to);
  return isAgain ? [{ end: to, values }] : [];
}

const spoken = (words: readonly string[], from: number, to: number): string =>
  words.slice(from, to).join(' ');

const isParted = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to - 1).some(({ pause }) => pause !== '');

// "Pulse ninety ninety percent on air": the second is of another sign.
const countsElse = (words: readonly string[], at: number, end: number): boolean =>
  /^(percent|over|on|systolic|litres?|liters?)$/.test(words[end] ?? '') &&
  !words.slice(Math.max(0, at - 3), at).some((word) => /^(sats?|saturations?|spo2|oxygen)$/.test(word));
