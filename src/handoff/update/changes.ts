// What is new, what was taken back, and what reads otherwise than it did at a given time.

import { type Entry, stands } from '../../record/entry.ts';
import { brief, clock, type Day, inOrder, readingText, series, vitalName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { caresTold } from '../sentences/care.ts';
import { shortCriterion } from '../sentences/criterion-words.ts';
import { csmTold } from '../sentences/csm.ts';
import { csmDetails } from '../sentences/csm-fact.ts';
import { type FindingEntry, isContrary } from '../sentences/fact.ts';
import { findingTold } from '../sentences/finding.ts';
import { findingGroups } from '../sentences/groups.ts';
import { historyTold } from '../sentences/history.ts';
import { keptTogether } from '../sentences/kept.ts';
import type { Told } from '../sentences/told.ts';
import { seriesTold } from '../sentences/vitals.ts';

/** The entries that stand, parted by whether they were said by `since` (milliseconds since the epoch). */
export interface Parted {
  readonly before: readonly Entry[];
  readonly after: readonly Entry[];
}

/** True for an entry that the report before could tell. */
export type IsTold = (entry: Entry) => boolean;

/** By the time: times are kept in whole seconds, so a list of what was told is surer where there is one. */
export const heardBy =
  (since: number): IsTold =>
  ({ heardAt }) =>
    Date.parse(heardAt) <= since;

export function parted(entries: readonly Entry[], isTold: IsTold): Parted {
  const standing = inOrder(entries).filter(stands);
  return {
    before: standing.filter(isTold),
    after: standing.filter((entry) => !isTold(entry)),
  };
}

/** `Pulse: now 124, thready at 14:06; was 112, weak at 13:58` */
export function changedSigns({ before, after }: Parted, day: Day): readonly Told[] {
  const earlier = series(before);
  return series(after).map(({ vital, readings }): Told => {
    const was = earlier.find((one) => one.vital === vital)?.readings.at(-1);
    const now = readings.map((one) => `${readingText(one)} at ${clock(one.at, day)}`).join('; ');
    const then = was === undefined ? '' : `; was ${readingText(was)} at ${clock(was.at, day)}`;
    return {
      words: `${vitalName(vital)}: now ${now}${then}`,
      entries: [...readings, ...(was === undefined ? [] : [was])],
    };
  });
}

/** Findings said since, each with its time, beside what was said to the contrary before. */
export function changedFindings({ before, after }: Parted, day: Day): readonly Told[] {
  const earlier = before.filter((entry): entry is FindingEntry => entry.kind === 'finding');
  return findingGroups(after).map((group) => {
    const told = findingTold({ entries: group.entries, timed: true }, day);
    const contrary = earlier.filter((was) => group.entries.some((now) => isContrary(was, now)));
    const was = findingGroups(contrary).map(
      ({ entries }) => findingTold({ entries, timed: true }, day).words,
    );
    return {
      ...told,
      words: [told.words, ...was.map((words) => `before that: ${words}`)].join('; '),
      entries: [...told.entries, ...contrary],
    };
  });
}

type Csm = Extract<Entry, { kind: 'csm' }>;

const sameEnd = (one: Csm, other: Csm): boolean =>
  one.site === other.site &&
  one.aspect === other.aspect &&
  one.digit === other.digit &&
  (one.side === other.side || one.side === 'both' || other.side === 'both');

/** Limbs' ends said since: what reads otherwise than before is told with what it was. */
export function changedLimbs({ before, after }: Parted, day: Day): readonly Told[] {
  const earlier = before.filter((entry): entry is Csm => entry.kind === 'csm');
  return csmTold(after, day).map((told) => {
    const was = told.entries.flatMap((now) =>
      now.kind !== 'csm'
        ? []
        : earlier.filter(
            (then) =>
              sameEnd(now, then) &&
              (now.present !== then.present || csmDetails(now).join() !== csmDetails(then).join()),
          ),
    );
    const last = was.at(-1);
    return last === undefined
      ? told
      : {
          ...told,
          words: `${told.words}; before that, at ${clock(last.at, day)}: ${csmTold([last], day)[0]?.words ?? ''}`,
          entries: [...told.entries, last],
        };
  });
}

/** Care, history, marks and notes said since. */
export const changedRest = ({ after }: Parted, day: Day): readonly Told[] => [
  ...caresTold(after, day),
  ...after.flatMap((entry) => (entry.kind === 'history' ? [historyTold(entry, day)] : [])),
  ...keptTogether(after, day),
];

/**
 * What was said by then and no longer stands: what took its place since, or, of a struck entry, just that it does not
 * stand. When an entry was struck is not known from it, so this may be told once too often and never too seldom.
 */
export function takenBack(input: HandoffInput, isTold: IsTold): readonly Told[] {
  const byId = new Map(input.entries.map((entry) => [entry.id, entry]));
  return input.entries
    .filter((entry) => !stands(entry) && isTold(entry))
    .flatMap((entry): readonly Told[] => {
      const heir = entry.replacedBy === undefined ? undefined : byId.get(entry.replacedBy);
      if (heir !== undefined && isTold(heir)) return [];
      const now = heir === undefined || !stands(heir) ? '' : `; now: ${brief(heir)}`;
      return [
        {
          words: `Does not stand any more: ${brief(entry)}${now}`,
          entries: now === '' || heir === undefined ? [] : [heir],
        },
      ];
    });
}

/** Criteria that are met and rest on something said since. */
export function metSince(input: HandoffInput, { after }: Parted): readonly Told[] {
  const fresh = new Set(after.map(({ id }) => id));
  return (input.flags ?? [])
    .filter(({ state, evidence }) => state === 'met' && evidence.some((id) => fresh.has(id)))
    .map((flag) => ({
      words: `${flag.level === 'red' ? 'Red' : 'Yellow'} criterion met: ${shortCriterion(flag)}`,
      entries: input.entries.filter(({ id }) => flag.evidence.includes(id)),
      slots: [],
    }));
}

/** Statements told one by one; more are counted, since their words were told before. Our choice, no source. */
const NAMED = 6;

/** What was told as unconfirmed and was confirmed since. */
export function confirmedSince({ before }: Parted, ids: ReadonlySet<string>, day: Day): readonly Told[] {
  const said = before.filter(({ id, state }) => state === 'confirmed' && ids.has(id));
  if (said.length === 0) return [];
  const open = before.filter(({ state, kind }) => state === 'heard' && kind !== 'visit');
  if (open.length === 0) return [{ words: 'All that was told before is confirmed now', entries: said }];
  const told: readonly Told[] = [
    ...series(said).map((one) => seriesTold(one, day)),
    ...findingGroups(said).map((group) => findingTold(group, day)),
    ...csmTold(said, day),
    ...caresTold(said, day),
    ...said.flatMap((entry) => (entry.kind === 'history' ? [historyTold(entry, day)] : [])),
    ...keptTogether(said, day),
  ];
  return told.length > NAMED
    ? [{ words: `Confirmed now: ${said.length} of ${said.length + open.length} statements`, entries: said }]
    : told.map((one) => ({ ...one, words: `Confirmed now: ${one.words}` }));
}
