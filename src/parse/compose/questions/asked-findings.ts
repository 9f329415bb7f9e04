// What a question asks of findings: which, where, and whether of one place or another.

import { type Finding, isPaired, type Vital } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { AskedOne, SiteRef } from '../../context.ts';
import { hasTag, tagOf } from '../../islands/island.ts';
import { isSmall, marked, readingOf, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import { isChatter } from '../light.ts';
import { sideAfter } from '../sites/said-side.ts';
import type { Talk } from '../talk.ts';
import { isLook } from './standing.ts';

/** What a clause asks of the findings it names; those of the same places are asked after as one. */
export function askedFindings(
  talk: Talk,
  clause: Clause,
  found: readonly FoundFinding[],
  text: string,
): readonly AskedOne[] {
  const groups = new Map<string, FoundFinding[]>();
  const offered = sideOffered(talk, clause);
  for (const one of found.filter(({ piece }) => piece.role === 'finding')) {
    // "Where does it hurt?" and "any numbness anywhere?" are asked of no site in mind.
    const isOfMind = isLookedAt(talk, clause) || !(isWhere(clause) || isAfterSigns(talk));
    const refs = one.siteSpoken || isOfMind ? one.refs : [];
    const key = JSON.stringify(refs);
    groups.set(key, [...(groups.get(key) ?? []), { ...one, refs }]);
  }
  return [...groups.values()].map((group) => ({
    about: 'findings',
    findings: group.flatMap(({ piece, findings, attributes }) =>
      findings.map((finding) => ({
        finding: finding === 'pain' && isPressed(talk, clause) ? 'tenderness' : finding,
        quality: attributes.quality ?? [],
        // "Nothing on your back, is there": asked in the negative after anything.
        present: marked(piece, 'nothing') || tagIn(piece, 'findings.finding', 'present') !== 'false',
      })),
    ),
    // "Does it hurt on the outside?" asks of that part and of no more.
    sites: [
      ...(group[0]?.refs ?? []).map((ref) => withParts(offered === null ? ref : onSide(ref, offered), group)),
      ...(groups.size === 1 ? furtherSites(talk, clause, group[0]) : []),
    ],
    negative: group.some(({ polarity, piece }) => polarity === 'negated' || marked(piece, 'nothing')),
    either: offered === null && isEither(talk, clause),
    text,
  }));
}

// "Which wrist hurts, the left?" asks after that one.
function sideOffered({ tokens }: Talk, { pieces }: Clause): 'left' | 'right' | null {
  const sides = pieces.filter(({ role }) => role === 'side');
  const [side] = sides;
  const found = pieces.findIndex(({ role }) => role === 'finding');
  if (side === undefined || sides.length > 1 || side !== pieces.at(-1) || side.weak || found < 0) return null;
  const asksWhich = pieces.slice(0, found).some(({ from }) => tokens[from]?.word === 'which');
  const said = asksWhich ? sideAfter(side) : null;
  return said === 'left' || said === 'right' ? said : null;
}

const onSide = (ref: SiteRef, side: 'left' | 'right'): SiteRef =>
  ref.side === null && isPaired(ref.site) ? { ...ref, side, sideKnown: 'spoken' } : ref;

// "Pressing on your tummy, does that hurt anywhere?": anywhere there.
const isLookedAt = (talk: Talk, clause: Clause): boolean => {
  const before = clauseBefore(talk, clause);
  return before !== undefined && isLook(before);
};

// "When I press on your shin, does that hurt?": what hurts so is tender. "Shout if it hurts" stands for more than one press.
function isPressed(talk: Talk, clause: Clause): boolean {
  if (clause.mood !== 'question') return false;
  const before = clauseBefore(talk, clause);
  if (before === undefined) return false;
  const from = before.pieces[0]?.from ?? 0;
  return PRESSES.test(saidIn(talk.tokens, Math.max(0, from - LEAD), clause.pieces[0]?.from));
}

// "When I", "and if I" may stand in a clause of their own.
const LEAD = 2;

// The clause before, past a "now".
function clauseBefore({ clauses }: Talk, { pieces: [first] }: Clause): Clause | undefined {
  return clauses.findLast(
    ({ pieces }) =>
      (pieces.at(-1)?.to ?? 0) <= (first?.from ?? 0) &&
      !pieces.every((piece) => isChatter(piece) || (piece.role === 'intention' && piece.weak)),
  );
}

const PRESSES =
  /\b(when|if|as|while) (i|we) (just |gently )?(press|push|squeeze|prod|poke|touch|tap)\b|\b(pressing|pushing|squeezing|prodding|poking|tapping)\b/;

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

// "In your neck at all, sir, or in your back?": the places behind the "or" are asked after as well.
const furtherSites = (talk: Talk, clause: Clause, first: FoundFinding | undefined): readonly SiteRef[] =>
  first?.siteSpoken === true && isEither(talk, clause)
    ? talk.context.sites.filter(
        ({ site, side }) =>
          !first.refs.some((ref) => ref.site === site && (side === null || ref.side === side)),
      )
    : [];

// "In your neck or back", "in either knee".
/** True for a question that leaves open which of two places it is of. */
export const isEither = (talk: Talk, { pieces }: Clause): boolean =>
  pieces.some(
    (piece, i) =>
      marked(piece, 'either') ||
      (talk.tokens[piece.from]?.word === 'which' &&
        (pieces.slice(0, i).every(isChatter) || isPaused(talk.tokens, pieces[i - 1] ?? piece))) ||
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
