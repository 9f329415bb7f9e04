// Kinds of open question, and the statements that settle one.

import type { AskedOne } from '../../context.ts';
import { type Said, state, type Talk } from '../talk.ts';

export type { AskedFindings } from '../talk.ts';
export type AskedCsm = Extract<AskedOne, { readonly about: 'csm' }>;
export type AskedTopic = Extract<AskedOne, { readonly about: 'topic' }>;

/** States what an answer settles; the sites of the question leave no visits then. */
export function settle(talk: Talk, said: readonly Said[]): void {
  state(talk, said);
  talk.asking = [];
}

/** Of the looks of a question, those at places that nothing was settled of. */
export function settledOf(talk: Talk, looks: readonly Said[]): readonly Said[] {
  const settled = new Set(
    talk.frames.flatMap((frame) =>
      frame.frame === 'statement' && frame.statement.kind === 'finding' ? [frame.statement.site] : [],
    ),
  );
  return looks.filter(({ statement }) => statement.kind === 'visit' && !settled.has(statement.site));
}
