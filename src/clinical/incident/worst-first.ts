// The stated rules by which patients are put worst first; common practice, no source, on criteria that have one.

import type { Reckoning } from '../reckoning.ts';

export interface PatientRank {
  /** 1 worst */
  readonly rank: number;
  /** the rule in words, to stand beside the patient */
  readonly why: string;
}

type Looked = Pick<Reckoning, 'flags' | 'patterns' | 'sets'>;

const met = ({ flags }: Looked, level: 'red' | 'yellow'): number =>
  flags.filter((flag) => flag.level === level && flag.state === 'met').length;

/** Without these nobody knows how a patient is, and nobody known to be well may stand before them. */
const NEEDED = ['pulse', 'respirations'] as const;

const lacks = ({ sets }: Looked): boolean => {
  const taken = sets.flatMap(({ vitals }) => vitals);
  return NEEDED.some((vital) => !taken.includes(vital));
};

interface Rule {
  /** the rule, to stand in the list of them */
  readonly rule: string;
  /** why it fits this patient, or null where it does not */
  readonly why: (looked: Looked) => string | null;
}

const criteria = (some: number, level: string): string | null =>
  some === 0 ? null : some === 1 ? `1 ${level} triage criterion met` : `${some} ${level} triage criteria met`;

/** In this order; the first that fits counts. */
const RULES: readonly Rule[] = [
  { rule: 'a red triage criterion is met', why: (looked) => criteria(met(looked, 'red'), 'red') },
  {
    rule: 'a trend for the worse',
    why: ({ patterns }) => (patterns.length > 0 ? 'a trend for the worse' : null),
  },
  {
    rule: 'pulse or breathing was not taken yet',
    why: (looked) => (lacks(looked) ? 'pulse or breathing not taken yet: nothing is known' : null),
  },
  { rule: 'a yellow triage criterion is met', why: (looked) => criteria(met(looked, 'yellow'), 'yellow') },
  {
    rule: 'no criterion is known to be met, and some cannot be decided yet',
    why: ({ flags }) =>
      flags.some(({ level, state }) => level === 'red' && state === 'unknown')
        ? 'no criterion known to be met; some cannot be decided yet'
        : null,
  },
  {
    rule: 'no criterion is met by what was said',
    why: () => 'no criterion met by what was said; that clears nothing',
  },
];

/** The rules in their order, to be shown beside the list that they made. */
export const ORDER_RULES: readonly string[] = RULES.map(({ rule }) => rule);
/** What decides between patients of one rank. */
export const ORDER_WITHIN =
  'Of one rank, more red criteria stand before fewer, longer overdue before shorter, and longer unheard of before later. Closed records stand last.';

/** Where a patient stands among others, and by which rule. */
export function rankOfPatient(looked: Looked): PatientRank {
  for (const [index, { why }] of RULES.entries()) {
    const said = why(looked);
    if (said !== null) return { rank: index + 1, why: said };
  }
  return { rank: RULES.length, why: '' };
}

export interface RankedPatient extends PatientRank {
  readonly record: string;
  readonly reds: number;
  readonly overdueMinutes: number;
  /** epoch ms */
  readonly heardAt: number;
  readonly closed: boolean;
}

/**
 * Worst first: by rank; more red criteria before fewer; longer overdue before shorter; longer unheard of before later.
 * Closed records stand last. Two that are alike keep the order of their identifiers, so that a list does not jump.
 */
export const worstFirst = <P extends RankedPatient>(patients: readonly P[]): readonly P[] =>
  patients.toSorted(
    (a, b) =>
      Number(a.closed) - Number(b.closed) ||
      a.rank - b.rank ||
      b.reds - a.reds ||
      b.overdueMinutes - a.overdueMinutes ||
      a.heardAt - b.heardAt ||
      (a.record < b.record ? -1 : 1),
  );
