// What pieces would state, without stating it.

import type { StatementFrame } from '../../frame.ts';
import type { Piece } from '../../pieces/piece.ts';
import { bear, type Talk } from '../talk.ts';

/** Reads pieces as a statement; handed in, since a statement may be a correction and a correction a statement. */
export type StateAll = (talk: Talk, pieces: readonly Piece[]) => void;

/** True for what says something: neither a visit nor words that were only kept. */
const isSaid = ({ statement }: StatementFrame): boolean =>
  statement.kind !== 'visit' && statement.kind !== 'note';

/** What these pieces would state. */
export function dryRun(talk: Talk, pieces: readonly Piece[], stateAll: StateAll): readonly StatementFrame[] {
  const copy: Talk = { ...talk, frames: [], placed: [...talk.placed], asking: [] };
  stateAll(copy, pieces);
  const frames = copy.frames.filter((frame): frame is StatementFrame => frame.frame === 'statement');
  // The site that a correction names is the one in mind from then on.
  if (frames.length > 0) bear(talk, { sites: copy.context.sites });
  return frames;
}

/** What these pieces would state besides visits and notes. */
export const wouldSay = (
  talk: Talk,
  pieces: readonly Piece[],
  stateAll: StateAll,
): readonly StatementFrame[] => dryRun(talk, pieces, stateAll).filter(isSaid);
