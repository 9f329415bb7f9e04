// The statements that a finding of a clause makes: one for each finding at each site, with how its slots came to be known.

import type { Finding, FindingStatement } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { knownSide } from '../sites/side.ts';
import type { HowKnown, Said } from '../talk.ts';
import type { Attributes } from './attributes.ts';
import type { FoundFinding } from './found-finding.ts';

/** One finding at one site; slots of which nothing was said are left out. */
export function findingStatement(
  finding: Finding,
  ref: SiteRef,
  present: boolean,
  { severity, size, count, quality, part }: Attributes,
): FindingStatement {
  const parts = [...new Set([...ref.parts, ...(part ?? [])])];
  return {
    kind: 'finding',
    site: ref.site,
    side: ref.side,
    finding: finding === 'distension' && ref.site === 'neck-veins' ? 'jugular-distension' : finding,
    present,
    ...(parts.length > 0 ? { part: parts } : {}),
    ...(ref.level === null ? {} : { level: ref.level }),
    ...(size === undefined ? {} : { size }),
    ...(severity === undefined ? {} : { severity }),
    ...(count === undefined ? {} : { count }),
    ...(quality === undefined || quality.length === 0 ? {} : { quality }),
  };
}

/** One statement for each finding at each site. */
export const findingsSaid = (one: FoundFinding): readonly Said[] =>
  one.refs.flatMap((ref) =>
    one.findings.map((finding) => ({
      statement: findingStatement(
        finding,
        ref,
        one.present,
        ref.stretch === 'end' ? unmeasured(one.attributes) : one.attributes,
      ),
      known: knownOf(one, ref),
      doubt: one.doubt,
      from: one.from,
      to: one.to,
    })),
  );

// "A ten centimetre cut from elbow to wrist": how long it is, is told of what lies between them.
const unmeasured = ({ size: _, count: __, ...others }: Attributes): Attributes => others;

function knownOf(one: FoundFinding, ref: SiteRef): HowKnown {
  if (one.siteSpoken)
    return { ...(ref.stretch === 'between' ? { site: 'inferred' } : {}), ...knownSide(ref.sideKnown) };
  // The side of a site in mind was spoken once, and not here.
  const carried = !one.sideSpoken && ref.side !== null && ref.sideKnown === 'spoken';
  return {
    site: one.atHome ? 'inferred' : 'carried',
    ...(carried ? { side: 'carried' } : knownSide(ref.sideKnown)),
  };
}
