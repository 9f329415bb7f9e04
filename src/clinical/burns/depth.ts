// How deep a burn was said to be; superficial redness is told apart because it is left out of every estimate.

import type { Source } from '../source.ts';

export const DEPTH_SOURCE: Source = {
  cite: 'depth words: health board definition; "estimates of burn area exclude areas of erythema" (forensicmed.co.uk)',
  mark: 'read',
};

export type Depth = 'superficial' | 'partial' | 'full' | 'not said';

// The first that fits counts: "superficial partial thickness" is partial.
const WORDS: readonly (readonly [RegExp, Depth])[] = [
  [/\b(full|third|3rd|fourth|4th|charred|charring|leathery|waxy|white)\b/i, 'full'],
  [/\b(partial|second|2nd|blister\w*|dermal)\b/i, 'partial'],
  [/\b(superficial|first|1st|red|redness|reddened|erythema|sunburn\w*|epidermal)\b/i, 'superficial'],
];

/** The depth that the words of a burn name; the deepest counts where several are named. */
export const depthIn = (words: readonly string[]): Depth =>
  WORDS.find(([pattern]) => pattern.test(words.join(' ')))?.[1] ?? 'not said';
