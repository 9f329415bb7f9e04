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

const count = (some: number, what: string): string => `${some} ${what}${some === 1 ? '' : 's'}`;

/** In this order; the first that fits counts. */
const RULES: readonly ((looked: Looked) => string | null)[] = [
  (looked) =>
    met(looked, 'red') > 0
      ? `${count(met(looked, 'red'), 'red triage criterion').replace('criterions', 'criteria')} met`
      : null,
  ({ patterns }) => (patterns.length > 0 ? 'a trend for the worse' : null),
  (looked) => (lacks(looked) ? 'pulse or breathing not taken yet: nothing is known' : null),
  (looked) =>
    met(looked, 'yellow') > 0
      ? `${count(met(looked, 'yellow'), 'yellow triage criterion').replace('criterions', 'criteria')} met`
      : null,
  ({ flags }) =>
    flags.some(({ level, state }) => level === 'red' && state === 'unknown')
      ? 'no criterion known to be met; some cannot be decided yet'
      : null,
  () => 'no criterion met by what was said; that clears nothing',
];

/** Where a patient stands among others, and by which rule. */
export function rankOfPatient(looked: Looked): PatientRank {
  for (const [index, rule] of RULES.entries()) {
    const why = rule(looked);
    if (why !== null) return { rank: index + 1, why };
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
