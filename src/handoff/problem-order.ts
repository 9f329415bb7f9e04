// The order of problems: as it was reckoned or given by the responder; else by a stated order of the report's own.

import { graveness } from '../clinical/index.ts';
import type { Entry } from '../record/entry.ts';
import type { HandoffInput } from './input.ts';

/** 0 where a red criterion that is met rests on it, 1 for a yellow one, else 2. */
function flagRank(input: HandoffInput, ids: readonly string[]): number {
  const met = (input.flags ?? []).filter(
    ({ state, evidence }) => state === 'met' && evidence.some((id) => ids.includes(id)),
  );
  if (met.some(({ level }) => level === 'red')) return 0;
  return met.length > 0 ? 1 : 2;
}

/** The place of a group of entries among the problems: the lower, the sooner told. */
export function rankOf(input: HandoffInput): (entries: readonly Entry[]) => number {
  const { problems } = input;
  if (problems === undefined)
    return (entries) =>
      flagRank(
        input,
        entries.map(({ id }) => id),
      ) *
        1000 +
      Math.min(...entries.map(graveness));
  const places = new Map<string, number>();
  for (const [index, { evidence, struck }] of problems.entries())
    for (const id of evidence) if (!places.has(id)) places.set(id, struck ? problems.length + index : index);
  const last = 2 * problems.length;
  // Findings of one place share its problem; among them the worst comes first.
  return (entries) =>
    Math.min(...entries.map(({ id }) => places.get(id) ?? last)) * 1000 + Math.min(...entries.map(graveness));
}
