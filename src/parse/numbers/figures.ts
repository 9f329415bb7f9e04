// Numbers written in figures: "88", "06", "98.6", ".5", "1,200".

import type { NumberReading } from './reading.ts';

/** The reading of one token of figures, or null; a clock time ("14:32") is none. */
export function figures(words: readonly string[], start: number): NumberReading | null {
  const word = words[start] ?? '';
  const end = start + 1;
  if (/^\d{1,15}$/.test(word)) return { end, value: Number(word), kind: 'whole', loose: false, digits: word };
  if (/^\d{1,3}(,\d{3}){1,4}$/.test(word)) {
    return { end, value: Number(word.replaceAll(',', '')), kind: 'whole', loose: false };
  }
  if (/^\d{0,12}\.\d{1,12}$/.test(word)) return { end, value: Number(word), kind: 'decimal', loose: false };
  return null;
}
