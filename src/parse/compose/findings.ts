// Composes the findings of a clause: each with its site and side, whether it is there, and what is said of it.

import {
  type Finding,
  type FindingStatement,
  isSite,
  regionOf,
  type Side,
  type Site,
} from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { hasTag, type Island, tagOf, tagsOf } from '../islands/island.ts';
import { isSmall, marked, type Piece, readingOf } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import { attach } from './attach.ts';
import { type Attributes, attributesOf, joinAttributes } from './attributes.ts';
import { type LooseSide, looseSide } from './loose-side.ts';
import { type Polarity, type Reach, reachIn } from './polarity.ts';
import { shareSides, withSides } from './sides.ts';
import type { Item, SitePhrase } from './site-phrase.ts';
import { type HowKnown, plainSite } from './talk.ts';

export interface FoundFinding {
  readonly piece: Piece;
  readonly findings: readonly Finding[];
  readonly refs: readonly SiteRef[];
  /** where the site was said in this clause */
  readonly siteSpoken: boolean;
  /** where the finding names its own site ("tracheal deviation") */
  readonly atHome: boolean;
  /** where a side was said apart from the site */
  readonly sideSpoken: boolean;
  readonly polarity: Polarity;
  readonly present: boolean;
  readonly attributes: Attributes;
  readonly from: number;
  readonly to: number;
  /** pieces of the clause that it took in */
  readonly spans: readonly { readonly from: number; readonly to: number }[];
  readonly doubt: readonly string[];
}

export interface ClauseFindings {
  readonly found: readonly FoundFinding[];
  /** item indexes of the site phrases that findings took */
  readonly usedSites: ReadonlySet<number>;
  readonly reach: Reach;
}

/** The findings of a clause. `mind` is the site or sites in mind where the clause names none. */
export function findingsOf(
  items: readonly Item[],
  tokens: readonly Token[],
  mind: readonly SiteRef[],
  end: number,
): ClauseFindings {
  const reach = reachIn(items, end);
  const attachments = attach(items, tokens);
  const owners = attributeOwners(items, tokens);
  const usedSites = new Set<number>();
  const found: FoundFinding[] = [];
  for (const [i, group] of attachments) {
    const item = items[i];
    const island = item?.type === 'piece' ? readingOf(item.piece, 'findings.finding') : null;
    if (item?.type !== 'piece' || island === null) continue;
    const phrases = group.flatMap((index) => phraseOf(items[index]));
    if (hasTag(island, 'predicate') && !isPredicate(items, tokens, i, group, island, mind)) continue;
    const spokenRefs = shareSides(phrases.flatMap((phrase) => withSides(phrase, mind)));
    const own = phrases.every((phrase) => phrase.sites.every((ref) => ref.sideKnown !== 'spoken'));
    const side = own
      ? looseSide(items, tokens, i, mind)
      : turnedSide(items, tokens, i, group.at(-1) ?? i, mind);
    const placed = placeFor(island, spokenRefs, mind, side?.side ?? null);
    if (placed.length === 0) continue;
    for (const index of group) usedSites.add(index);
    const mine = owners.filter((owner) => owner.finding === i);
    const adjective = hasTag(island, 'adj');
    const polarity = polarityOf(items, tokens, i, island, reach);
    const negationFrom = reach.from(item.piece.from, adjective);
    const negationTo = reach.to(item.piece.from, adjective);
    const spans = [
      item.piece,
      ...phrases,
      ...mine.map(({ piece }) => piece),
      ...(side === null ? [] : [side.piece]),
      ...(negationFrom === null || negationTo === null ? [] : [{ from: negationFrom, to: negationTo }]),
    ];
    const base = tagOf(island, 'present') !== 'false';
    found.push({
      piece: item.piece,
      findings: tagsOf(island, 'finding') as Finding[],
      refs: inMidline(island, placed),
      siteSpoken: phrases.length > 0,
      atHome:
        phrases.length === 0 &&
        placed.every(
          (ref) =>
            homes(island, 'at').includes(ref.site) ||
            (homes(island, 'home').includes(ref.site) && !mind.some((one) => one.site === ref.site)),
        ),
      sideSpoken: side !== null,
      polarity,
      present: base !== (polarity === 'negated'),
      attributes: mine.reduce<Attributes>(
        (all, one) => joinAttributes(all, one.attributes),
        ownAttributes(island),
      ),
      from: Math.min(...spans.map((span) => span.from)),
      to: Math.max(...spans.map((span) => span.to)),
      spans,
      doubt: [
        ...(side?.doubt ?? []),
        ...phrases.flatMap(soundsLike),
        ...(hasTag(island, 'homophone') ? ['A word was taken for a finding that sounds like it.'] : []),
        ...unheardNo(items, i, polarity, base),
      ],
    });
  }
  exceptions(items, found, usedSites, mind);
  otherwiseOn(items, found);
  return { found: consistent(found), usedSites, reach };
}

// "No swelling except the right ankle": what was denied is there at the site that is excepted.
function exceptions(
  items: readonly Item[],
  found: FoundFinding[],
  usedSites: Set<number>,
  mind: readonly SiteRef[],
): void {
  const at = items.findIndex((item) => item.type === 'piece' && marked(item.piece, 'except'));
  const site = at < 0 ? -1 : items.findIndex((item, i) => i > at && item.type === 'site');
  const item = items[site];
  const except = items[at];
  if (item?.type !== 'site' || except?.type !== 'piece') return;
  if (items.slice(at + 1).some((one) => one.type === 'piece' && one.piece.role === 'finding')) return;
  const denied = found.filter((one) => one.polarity === 'negated' && one.piece.to <= except.piece.from);
  const refs = shareSides(withSides(item.phrase, mind));
  for (const one of denied) {
    const last = items.at(-1);
    const attributes = items
      .slice(at + 1, site)
      .flatMap((between) => (between.type === 'piece' ? (attributesOf(between.piece) ?? []) : []));
    found.push({
      ...one,
      refs,
      siteSpoken: true,
      polarity: 'stated',
      present: true,
      attributes: attributes.reduce<Attributes>(joinAttributes, {}),
      from: one.from,
      to: Math.max(item.phrase.to, last?.type === 'site' ? last.phrase.to : 0),
      spans: [...one.spans, item.phrase, { from: except.piece.from, to: item.phrase.to }],
      doubt: soundsLike(item.phrase),
    });
    usedSites.add(site);
  }
}

// "Tender on the left but not the right": what was said of one side is denied, or stated, of the other.
function otherwiseOn(items: readonly Item[], found: FoundFinding[]): void {
  const at = items.findIndex((item) => item.type === 'piece' && marked(item.piece, 'negation', 'stop'));
  if (at < 0) return;
  const rest = items.slice(at + 1).flatMap((item) => (item.type === 'piece' ? [item.piece] : []));
  if (rest.length < items.length - at - 1) return;
  const negation = rest.find((piece) => marked(piece, 'negation', 'before'));
  const side = rest.findLast((piece) => piece.role === 'side');
  const island =
    side === undefined ? null : (readingOf(side, 'sides.side-after') ?? readingOf(side, 'sides.side-before'));
  const named = island === null ? null : tagOf(island, 'side');
  if (negation === undefined || side === undefined || (named !== 'left' && named !== 'right')) return;
  if (rest.some(({ role }) => role === 'finding' || role === 'csm' || role === 'unknown')) return;
  for (const one of found.filter(
    ({ piece, polarity }) => polarity === 'stated' && piece.to <= negation.from,
  )) {
    const refs = one.refs.filter((ref) => ref.side !== null && ref.side !== named && ref.side !== 'both');
    if (refs.length === 0) continue;
    found.push({
      ...one,
      refs: refs.map((ref) => ({ ...ref, side: named, sideKnown: 'spoken' })),
      polarity: 'negated',
      present: !one.present,
      attributes: {},
      to: side.to,
      spans: [...one.spans, { from: negation.from, to: side.to }],
    });
  }
}

// "Abrasion, nothing else" cannot be free of anything: where something is there, the site is not called normal.
const consistent = (found: readonly FoundFinding[]): readonly FoundFinding[] =>
  found.filter(
    (one) =>
      !(one.findings.length === 1 && one.findings[0] === 'abnormality' && !one.present) ||
      !found.some((other) => other.present && sameRefs(other.refs, one.refs)),
  );

const sameRefs = (a: readonly SiteRef[], b: readonly SiteRef[]): boolean =>
  a.some((one) => b.some((other) => one.site === other.site && one.side === other.side));

const soundsLike = (phrase: SitePhrase): readonly string[] =>
  phrase.homophone === null
    ? []
    : [`"${phrase.homophone}" was taken for a side or a site that sounds like it.`];

// The last net under a missed negation: a "no" or "not" straight before a finding that was not read as one is asked about.
function unheardNo(items: readonly Item[], i: number, polarity: Polarity, base: boolean): readonly string[] {
  if (polarity !== 'stated' || !base) return [];
  const before = items[i - 1];
  if (before?.type !== 'piece' || before.piece.role === 'finding') return [];
  const island = readingOf(before.piece, 'negation');
  return island !== null && tagOf(island, 'negation') === 'before' ? ['Is this there, or not there?'] : [];
}

const phraseOf = (item: Item | undefined): readonly SitePhrase[] =>
  item?.type === 'site' ? [item.phrase] : [];

const ownAttributes = (island: Island): Attributes => {
  const quality = tagsOf(island, 'quality');
  return quality.length > 0 ? { quality } : {};
};

// "Soft" and "stable" say that something is absent; only a "not" straight before them turns that round.
function polarityOf(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  island: Island,
  reach: Reach,
): Polarity {
  const item = items[i];
  if (item?.type !== 'piece') return 'stated';
  if (tagOf(island, 'present') !== 'false') return reach.polarity(item.piece.from, hasTag(island, 'adj'));
  for (let k = i - 1; k >= 0; k--) {
    const before = items[k];
    if (before?.type !== 'piece' || (tokens[before.piece.to - 1]?.pause ?? '') !== '') return 'stated';
    const negation = readingOf(before.piece, 'negation');
    if (negation !== null && tagOf(negation, 'negation') === 'before') return 'negated';
    if (before.piece.role !== 'attribute' && !isSmall(before.piece, 'word')) return 'stated';
  }
  return 'stated';
}

// "Fine" counts as what is said of a site straight before it ("the elbow is fine"), "looks fine" of the site in mind too.
function isPredicate(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  group: readonly number[],
  island: Island,
  mind: readonly SiteRef[],
): boolean {
  const site = group.at(-1);
  const nothing = hasTag(island, 'nothing');
  // "Crepitus negative": the word denies the finding before it and says nothing of the site.
  const previous = items[i - 1];
  const denies =
    items[i]?.type === 'piece' &&
    tagOf(readingOf((items[i] as { readonly piece: Piece }).piece, 'negation') ?? island, 'negation') ===
      'after';
  if (denies && previous?.type === 'piece' && previous.piece.role === 'finding') return false;
  // "Nothing deep" says what there is not nothing of.
  if (nothing && goesOn(items, tokens, i)) return false;
  if (site === undefined) {
    if (mind.length === 0) return false;
    const sided = items.slice(0, i).some((item) => item.type === 'piece' && item.piece.role === 'side');
    if (sided) return true;
    return !hasTag(island, 'soft') && tokens.length <= island.to - island.from + 2;
  }
  // "Good range of motion in the elbow" leads to its site.
  const led = items[site]?.type === 'site' && (items[site] as { readonly phrase: SitePhrase }).phrase.led;
  if (site > i) return nothing || (!hasTag(island, 'soft') && (i + 1 === site || led));
  const soft = hasTag(island, 'soft');
  let linked = false;
  for (let k = site + 1; k < i; k++) {
    const item = items[k];
    if (item?.type !== 'piece') return false;
    const { piece } = item;
    if (piece.role === 'unknown' || piece.role === 'mood' || piece.role === 'intention') return false;
    if (isSmall(piece, 'link')) linked = true;
  }
  const last = items[i - 1];
  const to = last?.type === 'site' ? last.phrase.to : last?.type === 'piece' ? last.piece.to : 0;
  const paused = (tokens[to - 1]?.pause ?? '') !== '';
  return (
    linked ||
    !soft ||
    !paused ||
    items.slice(site + 1, i).some((item) => item.type === 'piece' && item.piece.role === 'finding')
  );
}

// "No deformity to either thigh, though the left is swollen": a side between the site and what is said of it.
function turnedSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  if (site >= i) return null;
  const at = items.slice(0, i).findLastIndex((item) => item.type === 'piece' && item.piece.role === 'side');
  if (at <= site) return null;
  const between = items
    .slice(at + 1, i)
    .every((item) => item.type === 'piece' && item.piece.role === 'small');
  return between ? looseSide(items, tokens, i, mind) : null;
}

function goesOn(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const item = items[i];
  const next = items[i + 1];
  if (item?.type !== 'piece' || next?.type !== 'piece') return false;
  if ((tokens[item.piece.to - 1]?.pause ?? '') !== '') return false;
  const { role } = next.piece;
  return role === 'unknown' || role === 'attribute' || role === 'part' || role === 'care' || role === 'vital';
}

/** Where a finding is: the sites said, its own home ("tracheal deviation"), or the sites in mind. */
function placeFor(
  island: Island,
  spoken: readonly SiteRef[],
  mind: readonly SiteRef[],
  side: Side | null,
): readonly SiteRef[] {
  const sided = (refs: readonly SiteRef[]): readonly SiteRef[] =>
    side === null ? refs : refs.map((ref) => ({ ...ref, side, sideKnown: 'spoken' as const }));
  const at = homes(island, 'at');
  const ownSide = tagOf(island, 'both') !== null ? ('both' as const) : null;
  if (at.length > 0) {
    const near =
      spoken.length === 0 || spoken.every((ref) => at.some((site) => regionOf(site) === regionOf(ref.site)));
    const given = side ?? spoken.find((ref) => ref.side !== null)?.side ?? ownSide;
    if (near) {
      const sideKnown = ownSide !== null && given === ownSide ? ('inferred' as const) : undefined;
      return at.map((site) => ({
        ...plainSite(site, given),
        ...(sideKnown === undefined ? {} : { sideKnown }),
      }));
    }
  }
  const only = homes(island, 'for');
  const fits = (ref: SiteRef) =>
    only.some((site) => site === ref.site || regionOf(site) === regionOf(ref.site));
  const refs = spoken.length > 0 ? spoken : sideOfMind(mind, side);
  if (only.length > 0) return refs.length > 0 && refs.every(fits) ? sided(refs) : [];
  if (spoken.length > 0) return sided(spoken);
  const home = homes(island, 'home');
  if (home.length > 0 && !mind.some((ref) => home.some((site) => regionOf(site) === regionOf(ref.site))))
    return home.map((site) => plainSite(site, side));
  return sided(refs);
}

const sideOfMind = (mind: readonly SiteRef[], side: Side | null): readonly SiteRef[] => {
  if (side === null) return mind;
  const seen = new Set<Site>();
  return mind.filter((ref) => !seen.has(ref.site) && seen.add(ref.site));
};

// "Midline tenderness at L three" says the side in its own words.
const inMidline = (island: Island, refs: readonly SiteRef[]): readonly SiteRef[] =>
  tagOf(island, 'side') !== 'midline'
    ? refs
    : refs.map((ref) => (ref.side === null ? { ...ref, side: 'midline', sideKnown: 'spoken' } : ref));

const homes = (island: Island, key: string): readonly Site[] =>
  (tagOf(island, key) ?? '').split('+').filter(isSite);

interface Owner {
  readonly finding: number;
  readonly piece: Piece;
  readonly attributes: Attributes;
}

const CALM = new Set(['small', 'attribute', 'figure', 'part', 'talk', 'answer']);

// An attribute belongs to the finding straight after it, or else to the one before it in the clause.
function attributeOwners(items: readonly Item[], tokens: readonly Token[]): readonly Owner[] {
  const owners: Owner[] = [];
  items.forEach((item, i) => {
    if (item.type !== 'piece') return;
    const count = countOf(items, i);
    const attributes = attributesOf(item.piece) ?? count;
    if (attributes === null) return;
    // A part names where on the site, so it looks back first ("swelling, distal third") and then on ("mid shaft deformity").
    const part = item.piece.role === 'part';
    const finding = near(items, tokens, i, part ? -1 : 1) ?? near(items, tokens, i, part ? 1 : -1);
    if (finding !== null) owners.push({ finding, piece: item.piece, attributes });
  });
  return owners;
}

function near(items: readonly Item[], tokens: readonly Token[], i: number, step: 1 | -1): number | null {
  for (let k = i + step; k >= 0 && k < items.length; k += step) {
    const item = items[k];
    const between = step === 1 ? items[k - 1] : null;
    if (between?.type === 'piece' && (tokens[between.piece.to - 1]?.pause ?? '') !== '') return null;
    if (item === undefined) return null;
    if (item.type === 'site') {
      if (step === 1) return null;
      continue;
    }
    if (item.piece.role === 'finding') {
      const island = item.piece.islands[0];
      return island !== undefined && tagOf(island, 'present') === 'false' ? null : k;
    }
    if (step === 1 && (isSmall(item.piece, 'join') || isSmall(item.piece, 'link'))) return null;
    if (!CALM.has(item.piece.role) && item.piece.role !== 'side' && item.piece.role !== 'vital') return null;
  }
  return null;
}

// A small whole number straight before a finding's name counts it: "two abrasions".
function countOf(items: readonly Item[], i: number): Attributes | null {
  const item = items[i];
  if (item?.type !== 'piece' || item.piece.role !== 'figure') return null;
  const value = readingOf(item.piece, 'small.figure')?.slots[0]?.value ?? 0;
  if (!Number.isInteger(value) || value < 1 || value > 20) return null;
  for (let k = i + 1; k < items.length; k++) {
    const next = items[k];
    if (next?.type !== 'piece') return null;
    if (next.piece.role === 'finding')
      return next.piece.islands[0] !== undefined && !hasTag(next.piece.islands[0], 'adj')
        ? { count: value }
        : null;
    if (next.piece.role !== 'attribute') return null;
  }
  return null;
}

/** One statement for each finding at each site, with how its slots came to be known. */
export function statementsOf(
  one: FoundFinding,
): readonly { statement: FindingStatement; known: HowKnown; doubt: readonly string[] }[] {
  return one.refs.flatMap((ref) =>
    one.findings.map((finding) => ({
      statement: statementOf(one, finding, ref),
      known: {
        ...(one.siteSpoken ? {} : { site: one.atHome ? ('inferred' as const) : ('carried' as const) }),
        ...(ref.sideKnown === 'carried' || ref.sideKnown === 'inferred' ? { side: ref.sideKnown } : {}),
        ...(!one.siteSpoken && !one.sideSpoken && ref.side !== null && ref.sideKnown === 'spoken'
          ? { side: 'carried' as const }
          : {}),
      },
      doubt: one.doubt,
    })),
  );
}

function statementOf(one: FoundFinding, finding: Finding, ref: SiteRef): FindingStatement {
  const { severity, size, count, quality } = one.attributes;
  const part = [...new Set([...ref.parts, ...(one.attributes.part ?? [])])];
  return {
    kind: 'finding',
    site: ref.site,
    side: ref.side,
    finding,
    present: one.present,
    ...(part.length > 0 ? { part } : {}),
    ...(ref.level === null ? {} : { level: ref.level }),
    ...(size === undefined ? {} : { size }),
    ...(severity === undefined ? {} : { severity }),
    ...(count === undefined ? {} : { count }),
    ...(quality === undefined || quality.length === 0 ? {} : { quality }),
  };
}
