// Which problem a responder's word means: exactly one, or the change is left undone and its question is asked.

import type { ProblemMeant, SaidProblemChange } from '../../terms/index.ts';
import { isWithin, placeText } from '../place.ts';
import { sidesOf } from '../side.ts';
import type { Found } from './problem.ts';

/** The responder's changes worked out against what was found. */
export interface Given {
  /** ids that go first, the latest said foremost */
  readonly first: readonly string[];
  readonly added: readonly string[];
  readonly struck: ReadonlySet<string>;
  /** one short question for each change that means no problem, or more than one */
  readonly questions: readonly string[];
}

const plain = (words: string): string => words.trim().toLowerCase();

/** The ids that may be meant: at the very place, else at a part of it; of either side where none was said. */
function meant(problem: ProblemMeant, found: readonly Found[], added: readonly string[]): readonly string[] {
  if ('words' in problem) {
    const words = plain(problem.words);
    const known = [...added, ...found.map((each) => each.problem.id)];
    const same = known.filter((id) => plain(id) === words);
    return same.length > 0 ? same : known.filter((id) => plain(id).includes(words));
  }
  const sides = sidesOf(problem.site, problem.side);
  const sided = found.filter(
    (each) => problem.side === null || sides.includes(null) || sides.includes(each.side),
  );
  const exact = sided.filter((each) => each.site === problem.site);
  const near = exact.length > 0 ? exact : sided.filter((each) => isWithin(each.site, problem.site));
  return near.map((each) => each.problem.id);
}

const named = (problem: ProblemMeant): string =>
  'words' in problem ? problem.words : placeText(problem.site, problem.side).replace(' (side not said)', '');

/** Anything found there since the strike brings the problem back: a strike speaks only of what was known. */
const foundSince = (found: readonly Found[], id: string, heardAt: string): boolean =>
  found.some(
    (each) => each.problem.id === id && each.heardAt.some((heard) => Date.parse(heard) > Date.parse(heardAt)),
  );

/** The changes in the order said; one that is put first after it was struck is back on the list. */
export function givenBy(changes: readonly SaidProblemChange[], found: readonly Found[]): Given {
  let first: readonly string[] = [];
  const added: string[] = [];
  const struck = new Set<string>();
  const questions: string[] = [];
  for (const change of changes) {
    if (change.change === 'add') {
      const text = change.text.trim();
      if (text !== '' && !added.some((other) => plain(other) === plain(text))) added.push(text);
      struck.delete(text);
      continue;
    }
    const ids = meant(change.problem, found, added);
    const both = 'side' in change.problem && change.problem.side === 'both';
    if (ids.length === 0 || (ids.length > 1 && !both)) {
      const what = ids.length === 0 ? 'no such problem' : ids.join(' or ');
      questions.push(`${named(change.problem)}: ${what}. Which is meant?`);
      continue;
    }
    if (change.change === 'first') {
      first = [...ids, ...first.filter((id) => !ids.includes(id))];
      for (const id of ids) struck.delete(id);
    } else for (const id of ids) if (!foundSince(found, id, change.heardAt)) struck.add(id);
  }
  return { first, added, struck, questions };
}
