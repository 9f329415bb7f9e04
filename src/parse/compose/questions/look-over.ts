// "Left wrist swollen." "And the right?" "Nothing.": a question with nothing but the other side in it turns to that side.

import { isPaired } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { saidIn, type Token } from '../../token.ts';
import { sideAfter } from '../sites/said-side.ts';
import { otherSide } from '../sites/side.ts';
import { bear, type Talk } from '../talk.ts';

/** Bears the side that alone is asked after in mind, of the one place that was. */
export function lookOver(talk: Talk, { pieces }: Clause): void {
  const { sites } = talk.context;
  const [ref, ...others] = sites;
  if (ref === undefined || others.length > 0 || !isPaired(ref.site)) return;
  if (!pieces.every((piece) => isSide(piece) || isBeside(piece, talk.tokens))) return;
  const said = pieces.filter(isSide).map(sideAfter).at(-1) ?? null;
  const was = ref.side === 'left' || ref.side === 'right' ? ref.side : null;
  const side = said === 'mirror' ? (was === null ? null : otherSide(was)) : said;
  if (side === 'left' || side === 'right') bear(talk, { sites: [{ ...ref, side, sideKnown: 'spoken' }] });
}

// A bare "right?" asks whether it was heard.
const isSide = ({ role, weak }: Piece): boolean => role === 'side' && !weak;

// "What about the right?", and not "is it the right?".
const isBeside = ({ role, from, to }: Piece, tokens: readonly Token[]): boolean =>
  role === 'small' ||
  role === 'talk' ||
  (role === 'asking' && /^(what|how) about\b/.test(saidIn(tokens, from, to)));
