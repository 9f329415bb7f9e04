// "Isn't it", "aren't you": the words at the end of what is told that ask for a yes.

import { saidIn, type Token } from '../token.ts';
import type { Piece } from './piece.ts';

const TAG = /^(is|has|does|did|was|do|are|have|would|were) not (it|he|she|they|you)$/;

/** True for such words as all of a piece. */
export const isTag = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  to - from === 3 && TAG.test(saidIn(tokens, from, to));
