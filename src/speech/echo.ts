// Knows the page's own voice again: what is heard right after the page spoke, and equals its words, was said by nobody.

/** Something that the page said aloud, epoch ms; `to` is null while it still sounds. */
export interface Spoken {
  readonly text: string;
  readonly from: number;
  readonly to: number | null;
}

/** A voice hangs in a room, and in a recogniser, for this long after it ended, ms; our choice, no source. */
const HANGS = 1500;
/** A single word such as "yes" is an answer more likely than an echo. */
const FEWEST = 2;

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/’/g, "'")
    .split(/[^a-z0-9']+/)
    .filter((word) => word !== '');

/** True where words heard from `from` on (epoch ms) are a run of what the page said just then. */
export function isEcho(heard: string, from: number, spoken: readonly Spoken[]): boolean {
  const words = wordsOf(heard);
  if (words.length < FEWEST) return false;
  const mine = spoken
    .filter((one) => from >= one.from - HANGS && from <= (one.to ?? Number.POSITIVE_INFINITY) + HANGS)
    .flatMap(({ text }) => wordsOf(text));
  return mine.some((_word, at) => words.every((word, index) => mine[at + index] === word));
}
