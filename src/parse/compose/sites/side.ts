// The other side of a side, and how a side came to be known as an entry says it.

import type { Known, Side } from '../../../terms/index.ts';
import type { HowKnown } from '../talk.ts';

/** Left for right and right for left; the others have no other. */
export const otherSide = (side: Side | null): Side | null =>
  side === 'left' ? 'right' : side === 'right' ? 'left' : side;

/** The first of these that is one side of the two, or null. */
export const oneSide = (refs: readonly { readonly side: Side | null }[]): Side | null =>
  refs.find(({ side }) => side === 'left' || side === 'right')?.side ?? null;

/** The `known` slot of a side; none where it was spoken or there is none. */
export const knownSide = (sideKnown: Known | null): HowKnown =>
  sideKnown === 'carried' || sideKnown === 'inferred' ? { side: sideKnown } : {};
