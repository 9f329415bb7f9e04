// "At sixteen twenty one fifteen": where a time and the figure behind it can be parted in two ways, nobody can tell which was said.

import { readNumbers } from '../numbers/index.ts';
import type { Span } from '../span.ts';
import { readTimes } from '../times/index.ts';
import type { Token } from '../token.ts';

/** True where these words are one time and one figure, in one way only; `time` begins with its first number. */
export function isClearlyParted(tokens: readonly Token[], time: Span, figure: Span): boolean {
  const words = tokens.slice(0, figure.to).map(({ word }) => word);
  for (let end = time.from + 1; end < figure.to; end++) {
    const isTime = readTimes(words.slice(0, end), time.from).some(
      (one) => one.end === end && one.time.kind === 'clock',
    );
    const isElse = end !== time.to && isTime;
    if (isElse && readNumbers(words, end).some((one) => one.end === figure.to)) return false;
  }
  return true;
}
