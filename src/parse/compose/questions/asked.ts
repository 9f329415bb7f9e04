// What a question asks after: the findings, the limb check, the topic or the vital sign in its words.

import { type Aspect, regionOf, type Topic, type Vital } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Asked, AskedOne, SiteRef } from '../../context.ts';
import { hasTag, tagOf } from '../../islands/island.ts';
import { isLikely, likelyTag, marked, type Piece, readingOf, tagIn } from '../../pieces/piece.ts';
import { type Span, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { csmOf } from '../csm/csm.ts';
import { toEnd } from '../csm/limb-ends.ts';
import { findingsOf } from '../findings/findings.ts';
import { namedBefore } from '../history/named-before.ts';
import type { Reach } from '../negations/reach.ts';
import type { Item } from '../sites/item.ts';
import { plainSite } from '../sites/site-ref.ts';
import { tellsSide } from '../sites/tells-side.ts';
import { type Talk, textOf } from '../talk.ts';
import { askedAgain } from './asked-again.ts';
import { askedBare, askedFindings, isEither } from './asked-findings.ts';
import { isHurt } from './echo.ts';

/** What a clause asks after, its items given; null where it asks nothing that an answer could settle. */
export function askedOf(talk: Talk, clause: Clause, items: readonly Item[]): Asked | null {
  const { from, to } = spanned(clause.pieces);
  // What is answered in its breath ("no it's just cold") takes nothing of the question back.
  const { found, reach } = findingsOf(items, talk.tokens.slice(0, to), mindOf(talk, clause), to);
  const text = textOf(talk, from, to);
  // "Was that wrist broken before?" asks of what was, and a "yes" finds nothing there now.
  if (BEFORE.test(text) && found.length > 0) return { about: 'topic', topic: 'past-history', item: text };
  if (LIKE.test(saidIn(talk.tokens, from, to)) && tellsOfPain(talk))
    return { about: 'topic', topic: 'quality' };
  const named = [
    ...clause.pieces.flatMap((piece) => askedBy(talk, clause, piece) ?? []),
    ...askedFindings(talk, clause, found, text),
  ];
  const side = tellsSide(talk, clause);
  const one =
    named[0] ??
    (side === null ? null : { about: 'side' as const, side }) ??
    askedBare(clause, text) ??
    askedCsm(talk, clause, items, reach) ??
    first(clause.pieces, (piece) => askedNoun(talk, clause, piece)) ??
    askedAgain(talk, items);
  const also = [...named.slice(1), ...(one?.about === 'findings' ? askedNouns(talk, clause) : [])];
  return one === null || also.length === 0 ? one : { ...one, also };
}

const BEFORE = /\b(before|in the past|previously)$|\b(have|has) (you|he|she) ever\b|\bever (been|had)\b/i;

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
  const which = isEither(talk, clause) ? { which: { present: true, details: {} } } : {};
  return aspect === null || ends.length === 0 ? null : { about: 'csm', aspects: [aspect], ends, ...which };
}

// "What's it like?" asks after a pain where one was told of, and after anything elsewhere.
const LIKE = /^((and|so) )?what is (it|that) like( now)?$/;

const OF_PAIN: ReadonlySet<Topic> = new Set<Topic>([
  'onset',
  'provocation',
  'quality',
  'radiation',
  'severity',
  'time',
  'symptoms',
  'chief-complaint',
]);

const tellsOfPain = ({ context: { said, askedBefore } }: Talk): boolean =>
  (askedBefore?.about === 'topic' && OF_PAIN.has(askedBefore.topic)) ||
  (askedBefore?.about === 'findings' && askedBefore.findings.some(({ finding }) => isHurt(finding))) ||
  said.some(
    (one) =>
      (one.kind === 'history' && OF_PAIN.has(one.topic)) ||
      (one.kind === 'finding' && isHurt(one.finding)) ||
      (one.kind === 'vital' && one.vital === 'pain-score'),
  );

// Marks of phrases that go on with their text.
const OPENING = ['takes', 'whole-on', 'breath', 'denied-on'];

const topicOf = (talk: Talk, { from, to }: Span, topic: Topic, isItem: boolean): AskedOne => ({
  about: 'topic',
  topic,
  ...(isItem ? { item: textOf(talk, from, to) } : {}),
});

function askedCsm(talk: Talk, clause: Clause, items: readonly Item[], reach: Reach): AskedOne | null {
  const [csm] = csmOf(items, talk.tokens, talk.context.sites, reach).found;
  return csm === undefined || csm.ends.length === 0
    ? null
    : {
        about: 'csm',
        aspects: csm.aspects,
        ends: csm.ends,
        ...(isEither(talk, clause) ? { which: { present: csm.present ?? true, details: csm.details } } : {}),
      };
}

function askedNoun(talk: Talk, clause: Clause, piece: Piece): AskedOne | null {
  if (piece.role === 'history' && readingOf(piece, 'history') !== null) {
    const topic = (tagIn(piece, 'history', 'topic') ?? 'events') as Topic;
    // "What's your teddy's name?"
    const owner = clause.pieces[clause.pieces.indexOf(piece) - 1];
    if (topic === 'name' && owner?.role === 'unknown') return null;
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
