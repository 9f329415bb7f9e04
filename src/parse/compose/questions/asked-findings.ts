// What a question asks of findings: which, where, and whether of one place or another.

import type { Finding, Vital } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { AskedOne, SiteRef } from '../../context.ts';
import { hasTag, tagOf } from '../../islands/island.ts';
import { isSmall, marked, readingOf, tagIn } from '../../pieces/piece.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import type { Talk } from '../talk.ts';

/** What a clause asks of the findings it names; those of the same places are asked after as one. */
export function askedFindings(
  talk: Talk,
  clause: Clause,
  found: readonly FoundFinding[],
  text: string,
): readonly AskedOne[] {
  const groups = new Map<string, FoundFinding[]>();
  for (const one of found.filter(({ piece }) => piece.role === 'finding')) {
    // "Where does it hurt?" and "any numbness anywhere?" are asked of no site in mind.
    const refs = one.siteSpoken || !(isWhere(clause) || isAfterSigns(talk)) ? one.refs : [];
    const key = JSON.stringify(refs);
    groups.set(key, [...(groups.get(key) ?? []), { ...one, refs }]);
  }
  return [...groups.values()].map((group) => ({
    about: 'findings',
    findings: group.flatMap(({ piece, findings, attributes }) =>
      findings.map((finding) => ({
        finding,
        quality: attributes.quality ?? [],
        // "Nothing on your back, is there": asked in the negative after anything.
        present: marked(piece, 'nothing') || tagIn(piece, 'findings.finding', 'present') !== 'false',
      })),
    ),
    // "Does it hurt on the outside?" asks of that part and of no more.
    sites: (group[0]?.refs ?? []).map((ref) => withParts(ref, group)),
    negative: group.some(({ polarity, piece }) => polarity === 'negated' || marked(piece, 'nothing')),
    either: isEither(talk, clause),
    text,
  }));
}

// Signs that are taken at the place in mind, or of it.
const OF_PLACE: ReadonlySet<Vital> = new Set<Vital>(['pain-score', 'capillary-refill', 'skin', 'pupils']);

/** "Pulse ninety." "Any weakness?": after the signs of the whole body the place looked at before is in mind no longer. */
const isAfterSigns = ({ context, frames }: Talk): boolean =>
  context.said.length > 0 &&
  context.said.every((one) => one.kind === 'vital' && !OF_PLACE.has(one.vital)) &&
  context.looked === null &&
  !frames.some((one) => one.frame === 'statement' && one.statement.kind === 'visit');

const withParts = (ref: SiteRef, group: readonly FoundFinding[]): SiteRef => ({
  ...ref,
  parts: [...new Set([...ref.parts, ...group.flatMap(({ attributes }) => attributes.part ?? [])])],
});

// "In your neck or back", "in either knee".
const isEither = (talk: Talk, { pieces }: Clause): boolean =>
  pieces.some(
    (piece, i) =>
      marked(piece, 'either') ||
      (i === 0 && talk.tokens[piece.from]?.word === 'which') ||
      (isSmall(piece, 'or') &&
        pieces.slice(0, i).some(({ role }) => role === 'site') &&
        pieces.slice(i + 1).some(({ role }) => role === 'site')),
  );

const isWhere = (clause: Clause): boolean =>
  clause.pieces.some((piece) => marked(piece, 'where') || isSmall(piece, 'where'));

/** What it asks of a finding that has no place, since none was said and none is in mind; or null. */
export function askedBare(clause: Clause, text: string): AskedOne | null {
  const island = clause.pieces
    .map((piece) => readingOf(piece, 'findings.finding'))
    .find((one) => one !== null && !hasTag(one, 'predicate'));
  const finding = island == null ? null : (tagOf(island, 'finding') as Finding | null);
  if (island == null || finding === null || tagOf(island, 'present') === 'false') return null;
  return {
    about: 'findings',
    findings: [{ finding, quality: [], present: true }],
    sites: [],
    negative: false,
    either: false,
    text,
  };
}
