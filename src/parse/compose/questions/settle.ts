// Kinds of open question, and the statements that settle one.

import type { Asked } from '../../context.ts';
import { type Said, state, type Talk } from '../talk.ts';

export type AskedFindings = Extract<Asked, { readonly about: 'findings' }>;
export type AskedCsm = Extract<Asked, { readonly about: 'csm' }>;
export type AskedTopic = Extract<Asked, { readonly about: 'topic' }>;

/** States what an answer settles; the sites of the question leave no visits then. */
export function settle(talk: Talk, said: readonly Said[]): void {
  state(talk, said);
  talk.asking = [];
}
