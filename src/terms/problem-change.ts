// What a responder can do to the problem list: put one first, strike one, or add one that no finding shows.

import type { Site } from './sites.ts';
import type { Side } from './words.ts';

/** Which problem is meant: what was found at a place, or one of the responder's own by its words. */
export type ProblemMeant = { readonly site: Site; readonly side: Side | null } | { readonly words: string };

export type ProblemChange =
  | { readonly change: 'first' | 'strike'; readonly problem: ProblemMeant }
  | { readonly change: 'add'; readonly text: string };

/** A change with when it was said. */
export type SaidProblemChange = ProblemChange & {
  /** ISO 8601 with offset */
  readonly heardAt: string;
};
