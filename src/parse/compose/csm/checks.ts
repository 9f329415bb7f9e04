// What was checked of one limb's end, told in several breaths: "pulse present in the left foot | moves his toes | right foot same".

import type { CsmStatement, Statement } from '../../../terms/index.ts';
import { endOf } from './limb-ends.ts';

/** The checks in mind with these: another end begins anew, and what is told again takes the place of what was told. */
export function withChecks(
  before: readonly CsmStatement[],
  said: readonly Statement[],
): readonly CsmStatement[] {
  return said.reduce<readonly CsmStatement[]>((checks, one) => {
    // What is found elsewhere ends the check of that end.
    const isElsewhere = one.kind === 'finding' && checks.some(({ site }) => endOf(one.site) !== site);
    if (one.kind !== 'csm') return isElsewhere ? [] : checks;
    const same = checks.filter((other) => other.site === one.site && other.side === one.side);
    return [...same.filter((other) => keyOf(other) !== keyOf(one)), one];
  }, before);
}

// A pulse and a refill are both of the circulation.
const keyOf = ({ aspect, pulse, digit, capRefillSeconds }: CsmStatement): string =>
  [aspect, pulse, digit, capRefillSeconds === undefined].join(' ');

/** What "the same" means after this was said last: all that was checked of that end, or what was said last. */
export function toSayAgain(
  last: readonly Statement[],
  checks: readonly CsmStatement[],
): readonly Statement[] {
  const [one] = last;
  const [check] = checks;
  const isOfEnd =
    one?.kind === 'csm' &&
    check !== undefined &&
    last.every((other) => other.kind === 'csm' && other.site === check.site && other.side === check.side);
  return isOfEnd ? checks : last;
}
