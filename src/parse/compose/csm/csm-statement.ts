// The statements that a check of a limb makes: one for each limb's end and aspect.

import type { Aspect, CsmStatement } from '../../../terms/index.ts';
import type { LimbEnd } from '../../context.ts';
import { knownSide } from '../sites/side.ts';
import type { Said } from '../talk.ts';
import type { FoundCsm } from './found-csm.ts';

/** One aspect at one limb's end; slots of which nothing was said are left out. */
export const csmStatement = (
  { site, side, digit }: LimbEnd,
  aspect: Aspect,
  present: boolean,
  details: Partial<CsmStatement> = {},
): CsmStatement => ({
  kind: 'csm',
  site,
  side,
  aspect,
  present,
  ...details,
  ...(digit === undefined ? {} : { digit }),
});

/** One statement for each limb's end and aspect; none where nothing was said of them. */
export function csmSaid(one: FoundCsm): readonly Said[] {
  const { present, from, to, doubt } = one;
  if (present === null) return [];
  return one.ends.flatMap((end) =>
    one.aspects.map((aspect) => ({
      statement: csmStatement(end, aspect, present, one.details),
      known: {
        ...one.known,
        ...(one.endSpoken ? {} : { site: 'carried' as const }),
        ...knownSide(end.sideKnown),
      },
      doubt,
      from,
      to,
    })),
  );
}
