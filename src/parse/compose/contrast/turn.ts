// What was said of one side, said of the other as a tail has it.

import {
  type CsmStatement,
  type FindingStatement,
  GRADES,
  NO_MOVEMENT,
  REFILL_LIMIT_SECONDS,
  type Side,
  type Statement,
} from '../../../terms/index.ts';
import type { State } from '../../states.ts';
import { otherSide } from '../sites/side.ts';
import { isWholeWithin } from '../vitals/vital-read.ts';
import type { Tail } from './tail.ts';

/** The statement turned to the tail's side, or null where that would say what nobody said. */
export function turned(statement: Statement, tail: Tail): Statement | null {
  if (statement.kind !== 'finding' && statement.kind !== 'csm') return null;
  const other = otherSide(statement.side);
  if (other !== 'left' && other !== 'right') return null;
  if (tail.side !== other && tail.side !== 'mirror') return null;
  return statement.kind === 'finding'
    ? turnedFinding(statement, other, tail)
    : turnedCsm(statement, other, tail);
}

// Only a denial turns a finding: "bruise on the right shin, none on the left". Of one that is absent, "absent" would be
// no denial.
function turnedFinding(one: FindingStatement, side: Side, { state }: Tail): FindingStatement | null {
  const denies = state === 'none' || ((state === 'absent' || state === 'not') && one.present);
  if (!denies) return null;
  const { kind, site, finding, level, quality } = one;
  // No blister there is not nothing there.
  const what = finding === 'abnormality' && quality !== undefined ? { quality } : {};
  return { kind, site, side, finding, present: false, ...(level === undefined ? {} : { level }), ...what };
}

function turnedCsm(one: CsmStatement, side: Side, { state, figure }: Tail): CsmStatement | null {
  const { kind, site, aspect, pulse, digit } = one;
  const base = {
    kind,
    site,
    side,
    aspect,
    ...(pulse === undefined ? {} : { pulse }),
    ...(digit === undefined ? {} : { digit }),
  };
  // "Power five out of five on the left, four on the right".
  if (figure !== null && typeof one.strength === 'number')
    return isWholeWithin(figure, GRADES)
      ? { ...base, present: figure > NO_MOVEMENT, strength: figure }
      : null;
  if (figure !== null)
    return one.capRefillSeconds === undefined
      ? null
      : { ...base, present: figure <= REFILL_LIMIT_SECONDS, capRefillSeconds: figure };
  if (state === 'not' && !one.present) return null;
  const found = state === null ? null : inState(one, state);
  return found === null ? null : { ...base, ...found };
}

export type Found = Pick<CsmStatement, 'present'> & Partial<Pick<CsmStatement, 'quality' | 'strength'>>;

const absent = (): Found => ({ present: false });

type Checked = Pick<CsmStatement, 'aspect'> & Partial<Pick<CsmStatement, 'pulse'>>;

const CSM_STATES: Readonly<Record<State, (one: Checked) => Found | null>> = {
  there: () => ({ present: true }),
  none: absent,
  absent,
  not: absent,
  strong: ({ aspect }) => {
    if (aspect === 'motion') return { present: true, strength: 'strong' };
    return aspect === 'circulation' ? { present: true, quality: ['strong'] } : { present: true };
  },
  weak: ({ aspect }) => {
    if (aspect === 'motion') return { present: true, strength: 'weak' };
    return aspect === 'circulation'
      ? { present: true, quality: ['weak'] }
      : { present: false, quality: ['decreased'] };
  },
  thready: ({ aspect }) => (aspect === 'circulation' ? { present: true, quality: ['thready'] } : null),
  bounding: ({ aspect }) => (aspect === 'circulation' ? { present: true, quality: ['bounding'] } : null),
  less: ({ pulse }) =>
    pulse === undefined ? { present: false, quality: ['decreased'] } : { present: true, quality: ['weak'] },
};

/** What a state word says of a limb's check, or null where it says nothing of that aspect. */
export const inState = (one: Checked, state: State): Found | null => CSM_STATES[state](one);
