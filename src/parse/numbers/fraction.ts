// Halves, quarters and two thirds, alone or after a whole number, and the counts "a couple" and "a dozen".

import type { NumberReading, Piece } from './reading.ts';
import { isArticle, isDozen } from './words.ts';

interface Part {
  readonly end: number;
  readonly value: number;
}

// Other denominators are ordinals ("a fifth rib", "one third degree burn") and are not read as fractions.
const SAID: readonly (readonly [words: readonly string[], value: number])[] = [
  [['half'], 1 / 2],
  [['quarter'], 1 / 4],
  [['three', 'quarters'], 3 / 4],
  [['3', 'quarters'], 3 / 4],
  [['two', 'thirds'], 2 / 3],
  [['2', 'thirds'], 2 / 3],
];

const FIRST: ReadonlySet<string> = new Set(SAID.map(([[first = '']]) => first));

const startsWith = (words: readonly string[], start: number, said: readonly string[]): boolean =>
  said.every((word, i) => words[start + i] === word);

function partAt(words: readonly string[], start: number): Part | null {
  const first = words[start];
  const one = isArticle(first) || first === 'one' || first === '1';
  const at = one ? start + 1 : start;
  if (!FIRST.has(words[at] ?? '')) return null;
  const found = SAID.find(([said]) => startsWith(words, at, said));
  if (found === undefined) return null;
  const [said, value] = found;
  if (one && said.length > 1) return null;
  return { end: start + (one ? 1 : 0) + said.length, value };
}

const reading = (end: number, value: number, kind: NumberReading['kind']): NumberReading => ({
  end,
  value,
  kind,
  loose: false,
});

/** A fraction by itself; "half an (inch)" and "a quarter of an (inch)" also with the words before the unit. */
export function fractions(words: readonly string[], start: number): readonly NumberReading[] {
  const part = partAt(words, start);
  if (part === null) return [];
  const past = words[part.end] === 'of' ? part.end + 1 : part.end;
  const linked = isArticle(words[past]) && (past > part.end || part.value === 0.5);
  if (part.value === 0.5 && isDozen(words[linked ? past + 1 : part.end])) {
    return [reading((linked ? past + 1 : part.end) + 1, 6, 'whole')];
  }
  const alone = reading(part.end, part.value, 'fraction');
  return linked ? [reading(past + 1, part.value, 'fraction'), alone] : [alone];
}

// "Half of his face", "half of it"; "two and a half of morphine" is an amount.
const isOfAThing = (words: readonly string[], at: number): boolean =>
  words[at] === 'of' &&
  /^(his|her|my|the|their|your|its?|that|this|them|each|an?)?$/.test(words[at + 1] ?? '');

/** "three and a half": a whole number with its fraction, or null ("six and half of his face" has none). */
export function mixed(words: readonly string[], whole: Piece): NumberReading | null {
  if (words[whole.end] !== 'and') return null;
  const part = partAt(words, whole.end + 1);
  if (part === null || isOfAThing(words, part.end)) return null;
  return { end: part.end, value: whole.value + part.value, kind: 'fraction', loose: whole.loose };
}

/** "a couple (of)" and "a dozen". */
export function counts(words: readonly string[], start: number): readonly NumberReading[] {
  const at = isArticle(words[start]) ? start + 1 : start;
  if (isDozen(words[at])) return [reading(at + 1, 12, 'whole')];
  if (words[at] !== 'couple') return [];
  const alone = reading(at + 1, 2, 'whole');
  return words[at + 1] === 'of' ? [reading(at + 2, 2, 'whole'), alone] : [alone];
}
