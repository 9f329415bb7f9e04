// Which earlier entries a statement said anew ("correction, pulse ninety four") takes the place of.

import type { CorrectionTarget } from '../parse/frame.ts';
import type { Statement } from '../terms/index.ts';
import { LIST_TOPICS, namesItemOf } from './change/list-item.ts';
import type { Said } from './effect.ts';
import { type Entry, stands } from './entry.ts';
import type { RecordState } from './state.ts';
import { fits, groupsThatFit } from './target.ts';

/** The earlier entries that the statement replaces, latest first, and whether that had to be guessed. */
export interface Restated {
  readonly entries: readonly Entry[];
  readonly guessed: boolean;
}

type Test = (entry: Entry) => boolean;

/**
 * The sign of the very time that the correction says; failing that, the latest standing entry of the same kind that says the same
 * thing of the same place; failing that, of the other side; failing that, in the last thing said before this utterance's own
 * corrections, the one entry that differs in a single slot. What the same words of correction `listed` before it stays.
 */
export function restated(
  state: RecordState,
  statement: Statement,
  target: CorrectionTarget,
  { utterance, at }: Pick<Said, 'utterance' | 'at'>,
  listed: readonly Entry[],
): Restated {
  const earlier = state.entries.filter(
    (entry) =>
      stands(entry) && entry.kind === statement.kind && fits(entry, target) && !listed.includes(entry),
  );
  const tests = [
    sameMoment(statement, at),
    sameLevel(statement),
    sameItem(statement),
    sameThing(statement, true),
    sameThing(statement, false),
  ];
  // Where a correction names the place that it was not, what was said there is meant.
  if (target.site !== undefined && 'site' in statement && statement.site !== target.site)
    tests.push(elsewhere(statement));
  for (const test of tests) {
    const found = earlier.filter(test).toReversed();
    if (found.length > 0) return { entries: found.slice(0, covers(statement, found)), guessed: false };
  }
  const last = groupsThatFit(state, target).find(({ group }) => !group.id.startsWith(`${utterance}.c`));
  const near = (last?.entries ?? []).filter(nearly(statement));
  return near.length === 1 ? { entries: near, guessed: true } : { entries: [], guessed: false };
}

/** What is now said of both sides takes the place of the left one and the right one. */
function covers(statement: Statement, found: readonly Entry[]): number {
  if (!('side' in statement) || statement.side !== 'both') return 1;
  const [first, second] = found;
  const sides = [first, second].map((entry) => (entry !== undefined && 'side' in entry ? entry.side : null));
  return sides.includes('left') && sides.includes('right') ? 2 : 1;
}

/** The same thing of the very vertebra or rib; of no other one, where one is said. */
const sameLevel =
  (now: Statement): Test =>
  (entry) =>
    now.kind === 'finding' &&
    entry.kind === 'finding' &&
    now.level === entry.level &&
    sameThing(now, true)(entry);

/** The same sign at the very time that the correction says: "the pulse at ten past was ninety". */
const sameMoment =
  (now: Statement, at: string | undefined): Test =>
  (entry) =>
    now.kind === 'vital' &&
    at !== undefined &&
    Date.parse(entry.at) === Date.parse(at) &&
    sameThing(now, true)(entry);

/** What was told of the very thing: of several medicines the one that is named again. */
const sameItem =
  (now: Statement): Test =>
  (entry) =>
    now.kind === 'history' &&
    entry.kind === 'history' &&
    LIST_TOPICS.has(now.topic) &&
    now.topic === entry.topic &&
    namesItemOf(entry.text, now.text);

const elsewhere =
  (now: Statement): Test =>
  (entry) =>
    now.kind === 'finding' && entry.kind === 'finding' && now.finding === entry.finding;

/** The same thing of the same place; of the same side too where `exact` asks for it. */
function sameThing(now: Statement, exact: boolean): Test {
  const sideIsSame: Test = (entry) =>
    !exact || !('side' in now) || !('side' in entry) || overlap(now.side, entry.side);
  return (entry) => {
    if (!sideIsSame(entry)) return false;
    if (now.kind === 'finding' && entry.kind === 'finding') {
      return now.finding === entry.finding && now.site === entry.site;
    }
    if (now.kind === 'csm' && entry.kind === 'csm')
      return now.aspect === entry.aspect && now.site === entry.site;
    if (now.kind === 'vital' && entry.kind === 'vital') return now.vital === entry.vital;
    if (now.kind === 'history' && entry.kind === 'history') return now.topic === entry.topic;
    if (now.kind === 'care' && entry.kind === 'care')
      return now.care === entry.care && now.site === entry.site;
    return now.kind === 'visit' && entry.kind === 'visit' && now.site === entry.site;
  };
}

const overlap = (now: unknown, before: unknown): boolean =>
  now === before ||
  (now === 'both' && (before === 'left' || before === 'right')) ||
  (before === 'both' && now !== null);

/** Another finding at the same place, or the same finding, check or care elsewhere. */
function nearly(now: Statement): Test {
  return (entry) => {
    if (now.kind === 'finding' && entry.kind === 'finding') {
      return now.finding === entry.finding || (now.site === entry.site && overlap(now.side, entry.side));
    }
    if (now.kind === 'csm' && entry.kind === 'csm') return now.aspect === entry.aspect;
    return now.kind === 'care' && entry.kind === 'care' && now.care === entry.care;
  };
}
