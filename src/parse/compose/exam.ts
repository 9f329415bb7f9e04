// Composes a stretch of examination talk: findings, circulation, sensation and motion, care, and the sites looked at.

import { type FindingStatement, isPaired } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { isSmall, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { siteGroup } from './attach.ts';
import { careOf } from './care.ts';
import { csmOf, csmStatements } from './csm.ts';
import { type FoundFinding, findingsOf, statementsOf } from './findings.ts';
import { sideIn } from './side-in.ts';
import { shareSides, withSides } from './sides.ts';
import { type Item, joinSites } from './site-phrase.ts';
import { bear, otherSide, place, type Said, state, type Talk } from './talk.ts';
import { vitalOf } from './vital.ts';

/** The items of a stretch, less the sites whose word means something else here ("be right back"). */
export function itemsOf(talk: Talk, pieces: readonly Piece[]): readonly Item[] {
  const items = joinSites(pieces, talk.tokens, talk.context.sites);
  return items.filter((item, i) => item.type === 'piece' || !item.phrase.doubtful || holds(talk, items, i));
}

// A doubtful word for a site holds where a finding or a link stands beside it, or where it is all that was said.
function holds(talk: Talk, items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.type !== 'site') return false;
  if (item.phrase.to - item.phrase.from === talk.tokens.length) return true;
  const pausedBefore = (talk.tokens[item.phrase.from - 1]?.pause ?? 'end') !== '';
  const paused = (talk.tokens[item.phrase.to - 1]?.pause ?? '') !== '';
  if (pausedBefore && paused) return true;
  return [items[i - 1], items[i + 1]].some((beside, k) => {
    if (k === 1 && paused) return false;
    if (beside?.type === 'site') return true;
    if (beside === undefined) return false;
    const { role } = beside.piece;
    if (role === 'finding' || role === 'negation' || role === 'intention' || role === 'csm') return true;
    return isSmall(beside.piece, 'join') || (k === 1 && isSmall(beside.piece, 'link'));
  });
}

/** States what a stretch of talk says of the examination; returns the pieces it took. */
export function stateExam(talk: Talk, pieces: readonly Piece[], visits: boolean): void {
  const items = itemsOf(talk, pieces);
  const end = pieces.at(-1)?.to ?? 0;
  const mind = talk.context.sites;
  const { found, usedSites, reach } = findingsOf(items, talk.tokens, mind, end);
  const used = new Set(usedSites);
  for (const group of groupsOf(found.filter((one) => one.polarity !== 'possible')))
    stateFindings(talk, group);
  stateScores(talk, items, found, used);
  const csm = csmOf(items, talk.tokens, mind, reach);
  for (const index of csm.usedSites) used.add(index);
  for (const one of csm.found) {
    if (one.refillSeconds !== null) {
      state(talk, [
        {
          statement: { kind: 'vital', vital: 'capillary-refill', value: { seconds: one.refillSeconds } },
          from: one.from,
          to: one.to,
        },
      ]);
      place(talk, ...one.spans);
      continue;
    }
    if (one.present === null || one.ends.length === 0) continue;
    const { from, to, doubt } = one;
    state(
      talk,
      csmStatements(one).map(({ statement, known }) => ({ statement, known, doubt, from, to })),
    );
    place(talk, ...one.spans, { from, to });
  }
  const care = careOf(talk, items, mind, reach);
  for (const index of care.usedSites) used.add(index);
  for (const { statements, from, to, spans } of care.found) {
    state(
      talk,
      statements.map(({ statement, known }) => ({ statement, known, from, to })),
    );
    place(talk, ...spans);
  }
  rememberSites(talk, items, used, found);
  if (visits) stateVisits(talk, items, used);
}

/** Findings that were said as one: the same sites, the same yes or no. */
function groupsOf(found: readonly FoundFinding[]): readonly (readonly FoundFinding[])[] {
  const groups: FoundFinding[][] = [];
  for (const one of found) {
    const last = groups.at(-1);
    const like = last?.[0];
    if (last !== undefined && like !== undefined && JSON.stringify(like.refs) === JSON.stringify(one.refs))
      last.push(one);
    else groups.push([one]);
  }
  return groups;
}

function stateFindings(talk: Talk, group: readonly FoundFinding[]): void {
  const said: Said[] = group.flatMap((one) =>
    statementsOf(one).map(({ statement, known, doubt }) => ({
      statement,
      known,
      doubt,
      from: one.from,
      to: one.to,
    })),
  );
  state(talk, said);
  for (const one of group) place(talk, ...one.spans);
}

// "Left wrist, six out of ten" is how bad the pain is there; with no site it is the pain score.
function stateScores(
  talk: Talk,
  items: readonly Item[],
  found: readonly FoundFinding[],
  used: Set<number>,
): void {
  items.forEach((item) => {
    if (item.type !== 'piece' || item.piece.islands[0]?.rule !== 'vitals.pain-score') return;
    const taken = found.some((one) => one.spans.some((span) => span.from === item.piece.from));
    if (taken) return;
    const read = vitalOf(item.piece.islands[0]);
    if (read === null || read.statement.vital !== 'pain-score') return;
    const { from, to } = item.piece;
    const at = items.findIndex((one) => one.type === 'site');
    const site = items[at];
    if (site?.type === 'site' && !used.has(at)) {
      used.add(at);
      const { score } = read.statement.value;
      const refs = withSides(site.phrase, talk.context.sites);
      const statements = refs.map(
        (ref): FindingStatement => ({
          kind: 'finding',
          site: ref.site,
          side: ref.side,
          finding: 'pain',
          present: score > 0,
          severity: score,
        }),
      );
      state(
        talk,
        statements.map((statement) => ({
          statement,
          from: Math.min(from, site.phrase.from),
          to: Math.max(to, site.phrase.to),
        })),
      );
      place(talk, item.piece, site.phrase);
      return;
    }
    state(talk, [{ statement: read.statement, known: read.known, from, to }]);
    place(talk, item.piece);
  });
}

function rememberSites(
  talk: Talk,
  items: readonly Item[],
  used: ReadonlySet<number>,
  found: readonly FoundFinding[],
): void {
  const last = items.findLastIndex((item) => item.type === 'site');
  if (last >= 0) {
    const refs = refsAt(talk, items, siteGroup(items, talk.tokens, last));
    if (refs.length > 0) bear(talk, { sites: refs.map(whole) });
    return;
  }
  const homes = found.at(-1)?.refs;
  if (homes !== undefined && used.size === 0 && homes.length > 0) bear(talk, { sites: homes.map(whole) });
}

// The site stays in mind, not the spot on it: "tender at T nine" and then "no swelling" is said of the spine.
const whole = (ref: SiteRef): SiteRef => ({ ...ref, parts: [], level: null });

const refsAt = (talk: Talk, items: readonly Item[], indexes: readonly number[]): readonly SiteRef[] =>
  shareSides(
    indexes.flatMap((index) => {
      const item = items[index];
      return item?.type === 'site' ? withSides(item.phrase, talk.context.sites) : [];
    }),
  );

/** What the sites named in a stretch leave behind when nothing was said of them. */
export function visitsOf(talk: Talk, items: readonly Item[], used: ReadonlySet<number>): readonly Said[] {
  const said: Said[] = [];
  items.forEach((item, i) => {
    if (item.type !== 'site' || used.has(i)) return;
    const { from, to } = item.phrase;
    place(talk, item.phrase);
    for (const ref of withSides(item.phrase, talk.context.sites)) {
      const known =
        ref.sideKnown === 'carried' || ref.sideKnown === 'inferred' ? { side: ref.sideKnown } : {};
      said.push({ statement: { kind: 'visit', site: ref.site, side: ref.side }, known, from, to });
    }
  });
  return said;
}

function stateVisits(talk: Talk, items: readonly Item[], used: ReadonlySet<number>): void {
  const said = visitsOf(talk, items, used);
  if (said.length > 0) state(talk, said);
  // A side alone turns the site in mind to it: "now the other side", "starting on the left".
  if (
    items.some((item) => item.type === 'site' || item.piece.role === 'finding' || item.piece.role === 'csm')
  )
    return;
  const piece = items.flatMap((item) =>
    item.type === 'piece' && item.piece.role === 'side' ? [item.piece] : [],
  )[0];
  const mirror = items.find(
    (item) => item.type === 'piece' && readingOf(item.piece, 'sides.mirror') !== null,
  );
  const plain = items.every((item) => item.type === 'piece' && TURNING.has(item.piece.role));
  if (!plain || (mirror === undefined && (piece === undefined || piece.weak))) return;
  const named = mirror !== undefined || piece === undefined ? null : (sideIn([piece])?.side ?? null);
  const refs = talk.context.sites.map((ref) => ({
    ...ref,
    side: isPaired(ref.site) ? (named ?? otherSide(ref.side)) : ref.side,
    sideKnown: 'carried' as const,
  }));
  if (refs.length > 0) bear(talk, { sites: refs });
  if (refs.length > 0) for (const item of items) if (item.type === 'piece') place(talk, item.piece);
}

const TURNING: ReadonlySet<Role> = new Set(['side', 'small', 'talk', 'intention', 'mood', 'negation']);
