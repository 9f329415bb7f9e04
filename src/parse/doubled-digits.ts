// "Double eight" is "eight eight", as figures are read out over a radio.

import { isDigit } from './numbers/index.ts';
import type { Token } from './token.ts';

/** The tokens, each "double" before a digit as that digit; "double vision" stays. */
export function withDoubledDigits(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ word }) => word === 'double')) return tokens;
  const words = tokens.map(({ word }) => word);
  return tokens.map((token, at) => {
    const digit = tokens[at + 1];
    const isDoubled = token.word === 'double' && token.pause === '' && isDigit(words, at + 1);
    return isDoubled && digit !== undefined ? { ...token, word: digit.word } : token;
  });
}
