// What a question asks after: the findings, the limb check, the topic or the vital sign in its words.

import {
  type Aspect,
  type Finding,
  regionOf,
  type Side,
  type Site,
  type Topic,
  type Vital,
} from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Asked, AskedOne, SiteRef } from '../../context.ts';
import { hasTag, tagOf } from '../../islands/island.ts';
import { isLikely, isSmall, likelyTag, marked, type Piece, readingOf, tagIn } from '../../pieces/piece.ts';
import { type Span, spanned } from '../../span.ts';
import { unique } from '../../unique.ts';
import { csmOf } from '../csm/csm.ts';
import { endsOnSide, toEnd } from '../csm/limb-ends.ts';
import { findingsOf } from '../findings/findings.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import { namedBefore } from '../history/named-before.ts';
import type { Reach } from '../negations/reach.ts';
import { hasRole, type Item, pieceOf, wordsOf } from '../sites/item.ts';
import { sideIn } from '../sites/side-in.ts';
import { plainSite } from '../sites/site-ref.ts';
import { tellsSide } from '../sites/tells-side.ts';
import { type Talk, textOf } from '../talk.ts';

/** What a clause asks after, its items given; null where it asks nothing that an answer could settle. */
export function askedOf(talk: Talk, clause: Clause, items: readonly Item[]): Asked | null {
  const { from, to } = spanned(clause.pieces);
  const { found, reach } = findingsOf(items, talk.tokens, mindOf(talk, clause), to);
  const text = textOf(talk, from, to);
  const named = [
    ...clause.pieces.flatMap((piece) => askedBy(talk, clause, piece) ?? []),
    ...askedFindings(talk, clause, found, text),
  ];
  const side = tellsSide(talk, clause);
  const one =
    named[0] ??
    (side === null ? null : { about: 'side' as const, side }) ??
    askedBare(clause, text) ??
    askedCsm(talk, items, reach) ??
    first(clause.pieces, (piece) => askedNoun(talk, clause, piece)) ??
    askedAgain(talk, items);
  const also = [...named.slice(1), ...(one?.about === 'findings' ? askedNouns(talk, clause) : [])];
  return one === null || also.length === 0 ? one : { ...one, also };
}

/** "Breathe in, any pain?": it is asked of the chest, whatever limb is in mind. */
export function mindOf({ tokens, context }: Talk, { pieces }: Clause): readonly SiteRef[] {
  const { from } = spanned(pieces);
  const start = tokens.slice(0, from).findLastIndex(({ pause }) => pause === 'end' || pause === 'ask') + 1;
  const breath = tokens.slice(start, from).some(({ word }) => /^(breath|breathe|cough)$/.test(word));
  const isLimb = context.sites.some(({ site }) => /^(arm|leg)$/.test(regionOf(site)));
  return breath && isLimb ? [plainSite('chest', null)] : context.sites;
}

// "Any chest pain or trouble breathing?": history that is named beside findings is asked after too.
const askedNouns = (talk: Talk, clause: Clause): readonly AskedOne[] =>
  clause.pieces.flatMap((piece) =>
    readingOf(piece, 'history.ask') === null && piece.role === 'history'
      ? (askedNoun(talk, clause, piece) ?? [])
      : [],
  );

function first(pieces: readonly Piece[], ask: (piece: Piece) => AskedOne | null): AskedOne | null {
  for (const piece of pieces) {
    const asked = ask(piece);
    if (asked !== null) return asked;
  }
  return null;
}

// A phrase of the grammar that is a question by itself ("any allergies", "can you feel me touching").
function askedBy(talk: Talk, clause: Clause, piece: Piece): AskedOne | null {
  const history = readingOf(piece, 'history.ask');
  if (history !== null) {
    const topic = tagOf(history, 'asks') as Topic | null;
    // "Any history of blood clots?": what is asked after follows.
    const end = hasTag(history, 'to-end') ? spanned(clause.pieces).to : piece.to;
    if (topic !== null) return topicOf(talk, { from: piece.from, to: end }, topic, hasTag(history, 'item'));
    const vital = tagOf(history, 'asks-vital') as Vital | null;
    if (vital !== null) return { about: 'vital', vital };
  }
  const aspect = tagIn(piece, 'csm.ask', 'ask') as Aspect | null;
  const near = aspect === null ? [] : talk.context.sites.flatMap((ref) => toEnd(ref, null));
  // Nobody squeezes with a foot.
  const ends = marked(piece, 'hand') ? near.filter(({ site }) => site === 'hand') : near;
  return aspect === null || ends.length === 0 ? null : { about: 'csm', aspects: [aspect], ends };
}

// Marks of phrases that go on with their text.
const OPENING = ['takes', 'whole-on', 'breath', 'denied-on'];

const topicOf = (talk: Talk, { from, to }: Span, topic: Topic, isItem: boolean): AskedOne => ({
  about: 'topic',
  topic,
  ...(isItem ? { item: textOf(talk, from, to) } : {}),
});

// Findings of the same places are asked after as one.
function askedFindings(
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
        present: tagIn(piece, 'findings.finding', 'present') !== 'false',
      })),
    ),
    // "Does it hurt on the outside?" asks of that part and of no more.
    sites: (group[0]?.refs ?? []).map((ref) => withParts(ref, group)),
    negative: group.some(({ polarity }) => polarity === 'negated'),
    either: isEither(clause),
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
const isEither = ({ pieces }: Clause): boolean =>
  pieces.some(
    (piece, i) =>
      marked(piece, 'either') ||
      (isSmall(piece, 'or') &&
        pieces.slice(0, i).some(({ role }) => role === 'site') &&
        pieces.slice(i + 1).some(({ role }) => role === 'site')),
  );

const isWhere = (clause: Clause): boolean =>
  clause.pieces.some((piece) => marked(piece, 'where') || isSmall(piece, 'where'));

// A finding that has no place, since none was said and none is in mind.
function askedBare(clause: Clause, text: string): AskedOne | null {
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

function askedCsm(talk: Talk, items: readonly Item[], reach: Reach): AskedOne | null {
  const [csm] = csmOf(items, talk.tokens, talk.context.sites, reach).found;
  return csm === undefined || csm.ends.length === 0
    ? null
    : { about: 'csm', aspects: csm.aspects, ends: csm.ends };
}

function askedNoun(talk: Talk, clause: Clause, piece: Piece): AskedOne | null {
  if (piece.role === 'history' && readingOf(piece, 'history') !== null) {
    const topic = (tagIn(piece, 'history', 'topic') ?? 'events') as Topic;
    // "Asthma?" asks after one thing, "past history?" after all of it.
    const isItem = topic === 'events' || topic === 'symptoms' || !isLikely(piece, 'noun');
    // "A kiwi allergy?"
    const allergy = namedBefore(talk, clause.pieces, clause.pieces.indexOf(piece), false);
    if (allergy !== null) return topicOf(talk, allergy, topic, true);
    // "Allergic to latex?" asks after that, and after no more.
    const opens = OPENING.some((mark) => isLikely(piece, mark));
    const to = opens ? Math.max(piece.to, spanned(clause.pieces).to) : piece.to;
    return topicOf(talk, { from: piece.from, to }, topic, isItem);
  }
  const vital = piece.role === 'vital' ? (likelyTag(piece, 'vital') as Vital | null) : null;
  return vital === null ? null : { about: 'vital', vital };
}

// "And your back?" asks again what was asked of the site before.
function askedAgain(talk: Talk, items: readonly Item[]): AskedOne | null {
  const before = talk.context.askedBefore;
  // "Did you bang your head?" has a verb of its own.
  if (items.some((item) => hasRole(item, 'unknown'))) return null;
  const sites = items.some((item) => item.type === 'site') ? talk.context.sites : [];
  // "And that?", at the same limb.
  if (before !== null && sites.length === 0 && isPointing(talk, items) && isOfPlace(before)) return before;
  if (sites.length > 0 && before?.about === 'findings') return { ...before, sites, either: false };
  const ends = sites.flatMap((ref) => toEnd(ref, null));
  // "Up here on the thigh?" asks of no foot.
  const isEnd = sites.every(({ site }) => !SEGMENTS.has(site));
  if (ends.length > 0 && isEnd && before?.about === 'csm') return { ...before, ends };
  const side = sideIn(items.flatMap((item) => pieceOf(item) ?? []))?.side ?? null;
  const which = items.some((item) => asksWhich(talk, item));
  return side === null || sites.length > 0 || which ? null : askedOnSide(before, side);
}

const SEGMENTS: ReadonlySet<Site> = new Set([
  'thigh',
  'knee',
  'lower-leg',
  'hip',
  'shoulder',
  'upper-arm',
  'elbow',
  'forearm',
]);

const POINTING = /^(this|that|here|there)$/;
const BESIDE_IT = /^(now|and|one|how|about|what)$/;

const isOfPlace = (before: AskedOne): boolean =>
  before.about === 'csm' || (before.about === 'findings' && before.sites.length > 0);

const isPointing = ({ tokens }: Talk, items: readonly Item[]): boolean => {
  const words = items.map(wordsOf).flatMap(({ from, to }) => tokens.slice(from, to).map(({ word }) => word));
  return (
    words.some((word) => POINTING.test(word)) &&
    words.every((word) => POINTING.test(word) || BESIDE_IT.test(word))
  );
};

// "Left or right?" asks nothing again: it wants the side of what was said.
const asksWhich = ({ tokens }: Talk, item: Item): boolean => {
  const { from, to } = wordsOf(item);
  return to - from > 1 && tokens.slice(from, to).some(({ word }) => word === 'or');
};

// "And on the right?"
function askedOnSide(before: AskedOne | null, side: Side): AskedOne | null {
  if (
    before?.about === 'findings' &&
    before.sites.length > 0 &&
    before.sites.every((ref) => ref.side !== null)
  )
    return { ...before, either: false, sites: unique(before.sites.map(({ site }) => plainSite(site, side))) };
  if (before?.about === 'csm' && before.ends.every((end) => end.side !== null))
    return { ...before, ends: endsOnSide(before.ends, side) };
  return null;
}
