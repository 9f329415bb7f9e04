// "The ankle is swollen" is also said "the ankle's swollen"; written talk has it in the one way or the other.

/** Words after which "is" is short in other ways, or is a question's. */
const OTHERS = new Set('this that there here what where who which how when why she'.split(' '));

/** The sentence, and again with each "is" after a thing or place said short, where it has such a one. */
export function withShortIs(sentence: string): readonly string[] {
  const short = sentence.replace(/\b([a-z]{3,}) is (?=[a-z])/g, (all, word: string) =>
    OTHERS.has(word) || word.endsWith('s') ? all : `${word}'s `,
  );
  return short === sentence ? [sentence] : [sentence, short];
}
