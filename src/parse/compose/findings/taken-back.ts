// Whether what was said of a place is taken back in the same breath: "the wrist looks bent but it's not", "was swollen, isn't now".

import type { Piece } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';

const TAKEN_BACK =
  /^((but|though|although|and|well|then) )*((it|they|he|she|that) )?(is|are|was|were|does|do|did) not( (now|any|more|anymore|though|really|actually|longer|at|all))*$/;

// "Grazed, oh no, that's just mud": it is something else.
const IS_ELSE = /^(oh |ah )?no (that|it|this|they) (is|was|are) (just|only) /;

/** True where nothing but such words stands between the finding and the end of its breath, or the next pause after them. */
export function isTakenBack(tokens: readonly Token[], { to }: Piece): boolean {
  const words: string[] = [];
  for (const { word, pause } of tokens.slice(to, to + LONGEST)) {
    words.push(word);
    if (pause !== '' && words.includes('not')) break;
  }
  return TAKEN_BACK.test(words.join(' ')) || IS_ELSE.test(words.join(' '));
}

const LONGEST = 9;
