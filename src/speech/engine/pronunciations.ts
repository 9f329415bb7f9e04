// Pronunciations, the project's own and the model's, read from their files: each word with the ways it is said.

/** The 39 phones of the CMU Pronouncing Dictionary, which the model was trained on. */
export const PHONES: readonly string[] =
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
    ' ',
  );

/** Words to their phones, several ways in the order written. Lines that begin with ;; are comments. */
export function readPronunciations(text: string): ReadonlyMap<string, readonly string[]> {
  const words = new Map<string, readonly string[]>();
  // Without expressions but where a line needs one: the model's dictionary has 130,000 lines.
  for (const line of text.split('\n')) {
    if (line.startsWith(';;')) continue;
    const given =
      line.includes('\t') || line.includes('  ') || line.endsWith('\r') ? line.replace(/\s+/g, ' ') : line;
    const [from, space] = [given.startsWith(' ') ? 1 : 0, given.indexOf(' ', 1)];
    if (space < 0) continue;
    const first = given.slice(from, space);
    const word = first.endsWith(')') ? first.replace(/\(\d+\)$/, '') : first;
    const way = given.slice(space + 1).trimEnd();
    const known = words.get(word);
    words.set(word, known === undefined ? [way] : [...known, way]);
  }
  return words;
}

/** Both; a word that both have keeps its ways in the first, and those of the second come after them. */
export function bothOf(
  one: ReadonlyMap<string, readonly string[]>,
  other: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, readonly string[]> {
  const all = new Map(one);
  for (const [word, ways] of other) all.set(word, [...(all.get(word) ?? []), ...ways]);
  return all;
}

const HISSES = new Set(['S', 'Z', 'SH', 'ZH', 'CH', 'JH']);
const VOICELESS = new Set(['P', 'T', 'K', 'F', 'TH']);

/** The ways to say a word; "ankle's" is said like the plural where no way is written. Empty where it cannot be said. */
export function waysIn(words: ReadonlyMap<string, readonly string[]>): (word: string) => readonly string[] {
  return (word) => {
    const written = words.get(word);
    if (written !== undefined || !word.endsWith("'s")) return written ?? [];
    return (words.get(word.slice(0, -2)) ?? []).map((way) => {
      const last = way.slice(way.lastIndexOf(' ') + 1);
      return `${way} ${HISSES.has(last) ? 'IH Z' : VOICELESS.has(last) ? 'S' : 'Z'}`;
    });
  };
}
