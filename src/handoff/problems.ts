// Present findings as problems, the worst first by a stated order, each beside whatever was said against it.

import { standing } from '../record/entry.ts';
import type { Finding } from '../terms/index.ts';
import type { Day } from '../timeline/index.ts';
import type { HandoffInput } from './input.ts';
import { csmSentences } from './sentences/csm.ts';
import { findingSentence } from './sentences/finding.ts';
import { type FindingEntry, type FindingGroup, findingGroups } from './sentences/groups.ts';
import type { Sentence } from './text.ts';

/**
 * Worst first among findings; what is not listed comes after. Common practice, no source: bleeding, then breathing,
 * then the nerves, then bones and skin. It orders the words of a report and decides nothing else.
 */
const WORST_FIRST: readonly Finding[] = [
  'amputation',
  'bleeding',
  'paradoxical-motion',
  'tracheal-deviation',
  'jugular-distension',
  'impaled-object',
  'puncture',
  'paralysis',
  'weakness',
  'numbness',
  'instability',
  'rigidity',
  'guarding',
  'distension',
  'deformity',
  'avulsion',
  'burn',
  'fluid',
  'priapism',
  'incontinence',
  'crepitus',
  'laceration',
  'swelling',
  'tenderness',
];

/** A lost pulse, feeling or movement stands where paralysis does. */
const CSM_RANK = WORST_FIRST.indexOf('paralysis');

const findingRank = ({ finding, severity }: FindingEntry): number => {
  const place = WORST_FIRST.indexOf(finding);
  // Said to be severe, it comes before all that was not, but after what a criterion rests on.
  return (place < 0 ? WORST_FIRST.length : place) - (severity === 'severe' ? 100 : 0);
};

/** 0 where a red criterion that is met rests on it, 1 for a yellow one, else 2. */
function flagRank(input: HandoffInput, ids: readonly string[]): number {
  const met = (input.flags ?? []).filter(
    ({ state, evidence }) => state === 'met' && evidence.some((id) => ids.includes(id)),
  );
  if (met.some(({ level }) => level === 'red')) return 0;
  return met.length > 0 ? 1 : 2;
}

const meets = (one: FindingEntry, other: FindingEntry): boolean =>
  one.site === other.site &&
  one.finding === other.finding &&
  (one.side === other.side || one.side === 'both' || other.side === 'both') &&
  (one.part === undefined || other.part === undefined || `${one.part}` === `${other.part}`) &&
  (one.level === undefined || other.level === undefined || one.level === other.level);

/** The standing answers that say the opposite of a present finding, in words. */
function against(absent: readonly FindingEntry[], group: FindingGroup, day: Day): readonly Sentence[] {
  const contrary = absent.filter((entry) => group.entries.some((present) => meets(present, entry)));
  return findingGroups(contrary).map((one) => findingSentence({ ...one, timed: true }, day));
}

interface Ranked {
  readonly sentence: Sentence;
  readonly flag: number;
  readonly rank: number;
}

function findingProblem(
  input: HandoffInput,
  group: FindingGroup,
  absent: readonly FindingEntry[],
  day: Day,
): Ranked {
  const contrary = against(absent, group, day);
  const said = findingSentence({ ...group, timed: group.timed || contrary.length > 0 }, day);
  return {
    sentence: {
      text: [said.text, ...contrary.map(({ text }) => `Also said: ${text}`)].join(' '),
      entries: [...said.entries, ...contrary.flatMap(({ entries }) => entries)],
    },
    flag: flagRank(input, said.entries),
    rank: Math.min(...group.entries.map(findingRank)),
  };
}

/** A sentence for each place with a present finding and each limb that is not intact, worst first. */
export function problemSentences(input: HandoffInput, day: Day): readonly Sentence[] {
  const absent = standing(input.entries, 'finding').filter(({ present }) => !present);
  const findings = findingGroups(input.entries)
    .filter(({ entries: [first] }) => first.present)
    .map((group) => findingProblem(input, group, absent, day));
  const limbs = csmSentences(input.entries, day, false).map(
    (sentence): Ranked => ({ sentence, flag: flagRank(input, sentence.entries), rank: CSM_RANK }),
  );
  return [...findings, ...limbs]
    .sort((one, other) => one.flag - other.flag || one.rank - other.rank)
    .map(({ sentence }) => sentence);
}
