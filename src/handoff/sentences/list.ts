// Words are joined as English joins them: "a, b and c", "a, b or c".

const joined = (words: readonly string[], last: string): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

/** `a, b and c` */
export const and = (words: readonly string[]): string => joined(words, 'and');

/** `a, b or c`, as it stands under one "no" */
export const or = (words: readonly string[]): string => joined(words, 'or');

/** The same words once each, in the order they first came. */
export const once = (words: readonly string[]): readonly string[] => [...new Set(words)];

/** The first letter as a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What was said or typed may hold a line break; a sentence may not, nor stops of its own at its end. */
export const tidy = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[.,;:\s]+$/, '');
