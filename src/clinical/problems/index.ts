// Promises the present findings as problems by site, worst first, in the order that the responder gives where they do.

import type { SaidProblemChange } from '../../terms/index.ts';
import { reckoned } from '../evidence.ts';
import { COMMON_PRACTICE } from '../source.ts';
import type { Flag } from '../triage/index.ts';
import { givenBy } from './given.ts';
import type { Found, Problem } from './problem.ts';
import { ON_RED } from './rank.ts';

export { PROBLEM_RULES } from './found.ts';
export { graveness, isGrave } from './graveness.ts';
export type { Found, Problem } from './problem.ts';

export interface ProblemList {
  readonly problems: readonly Problem[];
  /** one short question for each change of the responder's that means no problem, or more than one */
  readonly questions: readonly string[];
}

const addedProblem = (text: string): Problem => ({
  id: text,
  text,
  rank: null,
  why: 'added by the responder',
  watchFor: [],
  by: 'responder',
  struck: false,
  ...reckoned([], COMMON_PRACTICE),
});

/**
 * Worst first by the stated ranks, within a rank by its gravest finding, then in exam order (the order of `found`); what the responder put first goes
 * before, what they added comes last, and what they struck stands at the end, marked.
 */
export function problemsOf(
  found: readonly Found[],
  flags: readonly Flag[],
  changes: readonly SaidProblemChange[] = [],
): ProblemList {
  const red = new Set(
    flags.filter((flag) => flag.level === 'red' && flag.state === 'met').flatMap((flag) => flag.evidence),
  );
  const given = givenBy(changes, found);
  const ranked = found
    .map((each) => ({
      graveness: each.graveness,
      problem: each.problem.evidence.some((id) => red.has(id))
        ? { ...each.problem, ...ON_RED }
        : each.problem,
    }))
    // What is equal in both keeps the exam order in which it comes.
    .sort((a, b) => (a.problem.rank ?? 0) - (b.problem.rank ?? 0) || a.graveness - b.graveness)
    .map(({ problem }) => problem);
  const all = [...ranked, ...given.added.map(addedProblem)].map((problem) =>
    given.struck.has(problem.id) ? { ...problem, struck: true } : problem,
  );
  const first = given.first.flatMap((id) => all.filter((problem) => problem.id === id));
  const listed = [...first, ...all.filter((problem) => !given.first.includes(problem.id))];
  return {
    problems: [...listed.filter((problem) => !problem.struck), ...listed.filter((problem) => problem.struck)],
    questions: given.questions,
  };
}
