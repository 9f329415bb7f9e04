// Which passphrases are refused, and the reason in words: what can be tried out in a day is no lock.

/** NIST SP 800-63B-4 section 3.1.1.2 asks for 15 characters where a password stands alone; from memory. */
export const LEAST_LENGTH = 15;
const LEAST_DIFFERENT = 6;

export type PassphraseJudged =
  | { readonly kind: 'taken' }
  | { readonly kind: 'refused'; readonly why: string };

const refused = (why: string): PassphraseJudged => ({ kind: 'refused', why });

/** Judges a passphrase that is to be set; one that is only tried is never judged. */
export function judgePassphrase(passphrase: string): PassphraseJudged {
  const bare = passphrase.replace(/\s/g, '');
  if (bare === '') return refused('There is nothing in it.');
  if (/^\p{Nd}+$/u.test(bare.replace(/[-./]/g, '')))
    return refused(
      'A number alone is refused: whoever holds the device’s data can try out all numbers of that length. Take four or more words.',
    );
  const length = [...passphrase.trim()].length;
  if (length < LEAST_LENGTH)
    return refused(
      `It has ${length} characters; ${LEAST_LENGTH} are the least. Four or five words that do not belong together are easy to keep in mind.`,
    );
  if (new Set(bare.toLowerCase()).size < LEAST_DIFFERENT)
    return refused(`It repeats too few characters; ${LEAST_DIFFERENT} different ones are the least.`);
  return { kind: 'taken' };
}

/** The same words typed on another keyboard give the same text: form NFKC (as SP 800-63B asks; from memory). */
export const settledPassphrase = (passphrase: string): string => passphrase.trim().normalize('NFKC');
