// Composes the findings of a clause: each with its site and side, whether it is there, and what is said of it.

import type { Finding, SeverityWord } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { hasTag, type Island, tagOf, tagsOf } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import { around, type Span } from '../../span.ts';
import type { Token } from '../../token.ts';
import { repeats } from '../negations/list-end.ts';
import { type Reach, reachIn } from '../negations/reach.ts';
import { type Attachment, attach } from '../sites/attach.ts';
import { hasRole, type Item, phrasesAt, pieceOf } from '../sites/item.ts';
import { looseSide } from '../sites/loose-side.ts';
import { sitesOf } from '../sites/sides.ts';
import { type Owned, ownedAttributes } from './attribute-owners.ts';
import { type Attributes, joinAttributes } from './attributes.ts';
import { mindWithBreath } from './breath.ts';
import { hearsBareSite, hearsList, hearsNo, hearsPausedNo, hearsSide, soundsLike } from './doubts.ts';
import { excepted, otherwiseSided } from './exceptions.ts';
import { isAtHome, placesOf } from './finding-place.ts';
import type { ClauseFindings, FoundFinding } from './found-finding.ts';
import { isInPart } from './in-part.ts';
import { isLandmark } from './landmark.ts';
import { isNoFinding } from './no-finding.ts';
import { isOfOtherPart } from './other-part.ts';
import { isBeyondNo, polarityAt } from './polarity.ts';
import { withoutSpared } from './spared.ts';
import { consistent, isSaidTwice, sameSites } from './together.ts';
import { hearsOtherSide, turnedSide } from './turned-side.ts';

/** The clause in hand; `mind` is the site or sites in mind where it names none. */
interface InHand {
  readonly items: readonly Item[];
  readonly tokens: readonly Token[];
  readonly mind: readonly SiteRef[];
  readonly reach: Reach;
  readonly owned: readonly Owned[];
}

/** The findings of a clause. `mind` is the site or sites in mind where it names none; `end` is past its last token. */
export function findingsOf(
  items: readonly Item[],
  tokens: readonly Token[],
  mind: readonly SiteRef[],
  end: number,
): ClauseFindings {
  const reach = reachIn(items, tokens, end);
  const inHand = { items, tokens, mind, reach, owned: ownedAttributes(items, tokens) };
  const usedSites = new Set<number>();
  const found: FoundFinding[] = [];
  for (const [i, group] of attach(items, tokens, undefined, mind.length > 0)) {
    const piece = pieceOf(items[i]);
    const island = piece === null ? null : readingOf(piece, 'findings.finding');
    if (piece === null || island === null) continue;
    const one = [...narrower(piece, island), island].reduce<FoundFinding | null>(
      (before, like) => before ?? findingAt(inOwnMind(inHand, like, found.at(-1)), i, piece, like, group),
      null,
    );
    if (one === null) continue;
    for (const index of group) usedSites.add(index);
    const last = found.at(-1);
    if (last !== undefined && isSaidTwice(last, one))
      found[found.length - 1] = { ...last, to: one.to, spans: [...last.spans, ...one.spans] };
    else found.push(one);
  }
  found.splice(0, found.length, ...withoutSpared(items, found));
  const exceptions = excepted(items, found, mind);
  if (exceptions.site !== null && exceptions.found.length > 0) usedSites.add(exceptions.site);
  // "No swelling except over the left forearm": the forearm is what was not denied.
  const kept = found.filter(
    (one) => one.polarity !== 'negated' || !exceptions.found.some((other) => sameSites(one, other)),
  );
  found.splice(0, found.length, ...kept, ...exceptions.found);
  found.push(...otherwiseSided(items, found));
  return { found: consistent(found), usedSites, reach };
}

// "Two front teeth missing, one next door's loose": what counts at one place alone may have it from the finding that names it itself.
const inOwnMind = (inHand: InHand, island: Island, last: FoundFinding | undefined): InHand =>
  hasTag(island, 'only') && last?.atHome === true ? { ...inHand, mind: last.refs } : inHand;

// "No teeth missing, but that one's wobbly": what the word means at one place alone comes before what it means anywhere.
const narrower = ({ islands }: Piece, island: Island): readonly Island[] =>
  islands.filter(
    (one) =>
      one !== island && one.rule === 'findings.finding' && hasTag(one, 'only') && !hasTag(island, 'only'),
  );

// "Pelvis doesn't move": it is stable, and nobody has lost the use of it.
const isOfStillPelvis = (tokens: readonly Token[], island: Island, refs: readonly SiteRef[]): boolean =>
  hasTag(island, 'finding', 'limited-motion') &&
  tagOf(island, 'present') !== 'false' &&
  refs.every(({ site }) => site === 'pelvis') &&
  tokens.slice(island.from, island.to).some(({ word }) => /^(move|moving|movement)$/.test(word));

const WHEN: ReadonlySet<string> = new Set([
  'when',
  'if',
  'whenever',
  'as',
  'while',
  'until',
  'unless',
  'once',
]);

// "No old injuries to that knee" is of what was, and calls nothing sound now.
const isOfOld = (island: Island, { quality }: Attributes): boolean =>
  hasTag(island, 'finding', 'abnormality') && quality?.includes('old') === true;

const isShaft = (tokens: readonly Token[], { from, to }: Piece): boolean =>
  tokens.slice(from, to).some(({ word }) => /shaft$/.test(word));

const LONG: ReadonlySet<string> = new Set([
  'arm',
  'upper-arm',
  'forearm',
  'leg',
  'thigh',
  'lower-leg',
  'clavicle',
]);

const isLong = ({ site }: SiteRef): boolean => LONG.has(site);

function findingAt(
  { items, tokens, mind, reach, owned }: InHand,
  i: number,
  piece: Piece,
  island: Island,
  group: Attachment,
): FoundFinding | null {
  if (isNoFinding(items, tokens, i, piece, island, group, mind)) return null;
  const phrases = phrasesAt(items, group);
  // "Cut on the left, the other eye is fine": the other has its side.
  const sideless = phrases.every(({ mirrored, sites }) =>
    sites.every(({ side, sideKnown }) => sideKnown !== 'spoken' && !(mirrored && side !== null)),
  );
  const side = sideless
    ? looseSide(items, tokens, i, mind)
    : turnedSide(items, tokens, i, group.at(-1) ?? i, mind);
  const refs = placesOf(
    island,
    sitesOf(phrases, mind),
    mindWithBreath(island, items, tokens, mind),
    side?.side ?? null,
  );
  if (refs.length === 0) return null;
  // "Outer side of the calf tender, inner side fine": a part that the place named is not is another thing's.
  const near = owned.filter((owner) => owner.finding === i && !isOfOtherPart(owner, piece, refs));
  const polarity = polarityAt(items, tokens, i, island, reach);
  const mine = polarity === 'negated' ? near.filter((owner) => !isBehindDenied(owner, phrases)) : near;
  // "Pulls when she lifts it" does not say that she can.
  if (hasTag(island, 'whole') && WHEN.has(tokens[piece.from - 1]?.word ?? '')) return null;
  // "Can lift it a bit" is neither the whole movement nor none of it.
  if (hasTag(island, 'whole') && isInPart(items, tokens, i)) return null;
  // "Deformity mid shaft", with a foot in mind: a shaft is a long bone's.
  const isBehind = group.every((site) => items.slice(site, i).some((item) => hasRole(item, 'finding')));
  if (isBehind && mine.some(({ piece: part }) => isShaft(tokens, part)) && !refs.every(isLong)) return null;
  // "No pus in the blister": the "no" belongs to what is not there.
  const negation =
    polarity === 'stated' && isLandmark(items, tokens, i)
      ? null
      : reach.span(piece.from, isBeyondNo(items, tokens, i, island));
  const spans = [
    piece,
    ...phrases,
    ...mine.map((owner) => owner.piece),
    ...(side === null ? [] : [side.piece]),
    ...(negation === null ? [] : [negation]),
  ];
  const still = polarity === 'stated' && isOfStillPelvis(tokens, island, refs);
  if (
    polarity === 'negated' &&
    isOfOld(island, mine.map((owner) => owner.attributes).reduce(joinAttributes, {}))
  )
    return null;
  const base = !still && tagOf(island, 'present') !== 'false';
  const attributes = mine.map((owner) => owner.attributes).reduce(joinAttributes, ownAttributes(island));
  // "Zero out of ten" says that there is none.
  const none = attributes.severity === 0;
  return {
    piece,
    findings: still ? ['instability'] : (tagsOf(island, 'finding') as Finding[]),
    refs,
    siteSpoken: phrases.length > 0,
    atHome: phrases.length === 0 && isAtHome(island, refs, mind),
    sideSpoken: side !== null,
    polarity,
    present: base !== (polarity === 'negated') && !none,
    attributes,
    ...around(spans),
    spans,
    doubt: [
      ...(side?.doubt ?? []),
      ...soundsLike(phrases, island),
      ...(hasTag(island, 'possible') ? ['Said as possible: was it found?'] : []),
      ...(polarity === 'stated' && base ? hearsNo(items, tokens, i) : []),
      ...hearsSide(items[i - 1], tokens, side !== null),
      ...(side === null ? hearsOtherSide(items, tokens, i, refs) : []),
      ...(polarity === 'negated' && repeats(items, i - 1) ? ['Is this denied too, or is it there?'] : []),
      ...(polarity === 'negated' ? hearsPausedNo(items, tokens, i) : []),
      ...(polarity === 'negated' ? hearsBareSite(items, tokens, i, island) : []),
      ...(polarity === 'negated' ? hearsList(items, tokens, i, attributes.severity) : []),
    ],
  };
}

// "No pain in the neck, a bit in the back": how bad it is behind the place is said of something else.
const isBehindDenied = ({ piece, attributes }: Owned, phrases: readonly Span[]): boolean =>
  attributes.severity !== undefined && phrases.some(({ to }) => piece.from >= to);

const ownAttributes = (island: Island): Attributes => {
  const quality = tagsOf(island, 'quality');
  const severity = tagOf(island, 'severity') as SeverityWord | null;
  return { ...(quality.length > 0 ? { quality } : {}), ...(severity === null ? {} : { severity }) };
};
