// What findings of one clause are to each other: the same told twice, or such as cannot stand together.

import type { SiteRef } from '../../context.ts';
import type { FoundFinding } from './found-finding.ts';

/** "Scraped up road rash": one thing in two words. */
export const isSaidTwice = (last: FoundFinding, one: FoundFinding): boolean =>
  last.piece.to === one.piece.from &&
  last.polarity === one.polarity &&
  last.present &&
  one.present &&
  JSON.stringify([last.findings, last.refs, last.attributes]) ===
    JSON.stringify([one.findings, one.refs, one.attributes]);

/** "Abrasion, nothing else" cannot be free of anything: where something is there, the site is not called normal. */
export const consistent = (found: readonly FoundFinding[]): readonly FoundFinding[] =>
  found.filter(
    (one) =>
      one.present ||
      one.findings.length !== 1 ||
      one.findings[0] !== 'abnormality' ||
      !found.some((other) => other.present && shareSite(other.refs, one.refs)),
  );

/** True for the same finding of a site that both have. */
export const sameSites = (a: FoundFinding, b: FoundFinding): boolean =>
  a.findings[0] === b.findings[0] && a.refs.length > 0 && shareSite(a.refs, b.refs);

const shareSite = (a: readonly SiteRef[], b: readonly SiteRef[]): boolean =>
  a.some((one) => b.some((other) => one.site === other.site && one.side === other.side));
