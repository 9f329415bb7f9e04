// The project's own pronunciations, read from their file: each word with the ways it is said.

/** The 39 phones of the CMU Pronouncing Dictionary, which the model was trained on. */
export const PHONES: readonly string[] =
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
    ' ',
  );

/** Words to their phones, several ways in the order written. Lines that begin with ;;; are comments. */
export function readPronunciations(text: string): ReadonlyMap<string, readonly string[]> {
  const words = new Map<string, readonly string[]>();
  for (const line of text.split(/\r?\n/)) {
    if (line.trim() === '' || line.startsWith(';;;')) continue;
    const [first = '', ...phones] = line.trim().split(/\s+/);
    const word = first.replace(/\(\d+\)$/, '');
    words.set(word, [...(words.get(word) ?? []), phones.join(' ')]);
  }
  return words;
}
