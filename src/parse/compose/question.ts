// Composes a question: what it asks after, and of which sites, for the answer to take up.

import type { Aspect, Topic, Vital } from '../../terms/index.ts';
import type { Clause } from '../clause.ts';
import type { Asked } from '../context.ts';
import { hasTag, tagOf } from '../islands/island.ts';
import { isSmall, marked, type Piece, readingOf } from '../pieces/piece.ts';
import { csmOf, toEnd } from './csm.ts';
import { itemsOf, visitsOf } from './exam.ts';
import { findingsOf } from './findings.ts';
import { bear, place, plainSite, type Talk, textOf } from './talk.ts';

/** Opens the question of a clause; its sites become visits where nobody answers. */
export function ask(talk: Talk, clause: Clause): void {
  const items = itemsOf(talk, clause.pieces);
  const end = clause.pieces.at(-1)?.to ?? 0;
  const said = visitsOf(talk, items, new Set());
  talk.asking.push(...said);
  if (said.length > 0) {
    const sites = said.flatMap(({ statement }) =>
      statement.kind === 'visit' ? [{ ...plainSite(statement.site, statement.side) }] : [],
    );
    const refs = items.flatMap((item) => (item.type === 'site' ? item.phrase.sites : []));
    bear(talk, {
      sites: sites.map((ref, i) => ({
        ...ref,
        sideKnown: refs[i]?.sideKnown ?? (ref.side === null ? null : 'carried'),
        parts: refs[i]?.parts ?? [],
        level: refs[i]?.level ?? null,
      })),
    });
  }
  const asked = askedOf(talk, clause, items, end);
  if (asked === null) return;
  for (const piece of clause.pieces) place(talk, piece);
  bear(talk, { asked, askedBefore: asked });
}

/** Opens the question of "tell me if it hurts" about the site in mind, without a visit where nobody answers. */
export function askQuietly(talk: Talk, clause: Clause): void {
  const items = itemsOf(talk, clause.pieces);
  const asked = askedOf(talk, clause, items, clause.pieces.at(-1)?.to ?? 0);
  if (asked?.about === 'findings' && asked.sites.length > 0) bear(talk, { asked, askedBefore: asked });
}

function askedOf(talk: Talk, clause: Clause, items: ReturnType<typeof itemsOf>, end: number): Asked | null {
  for (const piece of clause.pieces) {
    const direct = askedBy(talk, piece);
    if (direct !== null) return direct;
  }
  const { found, reach } = findingsOf(items, talk.tokens, talk.context.sites, end);
  const asked = found.filter((one) => one.piece.role === 'finding');
  if (asked.length > 0) {
    return {
      about: 'findings',
      findings: asked.flatMap((one) =>
        one.findings.map((finding) => ({ finding, quality: one.attributes.quality ?? [] })),
      ),
      // "Where does it hurt?" and "any numbness anywhere?" are asked of no site in mind.
      sites: asked[0]?.siteSpoken === true || !isWhere(clause) ? (asked[0]?.refs ?? []) : [],
      negative: asked.some((one) => one.polarity === 'negated'),
      text: textOf(talk, clause.pieces[0]?.from ?? 0, end),
    };
  }
  const bare = clause.pieces.flatMap((piece) => {
    const island = readingOf(piece, 'findings.finding');
    return island === null || hasTag(island, 'predicate') ? [] : [island];
  });
  const first = bare[0];
  if (first !== undefined) {
    const finding = tagOf(first, 'finding');
    if (finding !== null && tagOf(first, 'present') !== 'false')
      return {
        about: 'findings',
        findings: [{ finding: finding as never, quality: [] }],
        sites: [],
        negative: false,
        text: textOf(talk, clause.pieces[0]?.from ?? 0, end),
      };
  }
  const csm = csmOf(items, talk.tokens, talk.context.sites, reach).found[0];
  if (csm !== undefined && csm.ends.length > 0) return { about: 'csm', aspects: csm.aspects, ends: csm.ends };
  for (const piece of clause.pieces) {
    const noun = readingOf(piece, 'history');
    if (noun !== null && piece.role === 'history') {
      const topic = (tagOf(noun, 'topic') ?? 'events') as Topic;
      const named = topic === 'events' || topic === 'symptoms';
      return { about: 'topic', topic, ...(named ? { item: textOf(talk, piece.from, piece.to) } : {}) };
    }
    const vital = piece.role === 'vital' ? tagOf(piece.islands[0] ?? EMPTY, 'vital') : null;
    if (vital !== null) return { about: 'vital', vital: vital as Vital };
  }
  // "And your back?" asks again what was asked of the site before.
  const before = talk.context.askedBefore;
  const sites = items.some((item) => item.type === 'site') ? talk.context.sites : [];
  if (sites.length > 0 && before?.about === 'findings') return { ...before, sites };
  const ends = sites.flatMap((ref) => toEnd(ref, null));
  if (ends.length > 0 && before?.about === 'csm') return { ...before, ends };
  return null;
}

const EMPTY = { file: '', rule: '', from: 0, to: 0, tags: [], slots: [], cost: 0 };

const isWhere = (clause: Clause): boolean =>
  clause.pieces.some((piece) => marked(piece, 'where') || isSmall(piece, 'where'));

function askedBy(talk: Talk, piece: Piece): Asked | null {
  const history = readingOf(piece, 'history.ask');
  if (history !== null) {
    const topic = tagOf(history, 'asks') as Topic | null;
    if (topic !== null) {
      const item = hasTag(history, 'item') ? textOf(talk, piece.from, piece.to) : null;
      return { about: 'topic', topic, ...(item === null ? {} : { item }) };
    }
    const vital = tagOf(history, 'asks-vital') as Vital | null;
    if (vital !== null) return { about: 'vital', vital };
  }
  const csm = readingOf(piece, 'csm.ask');
  if (csm === null) return null;
  const aspect = tagOf(csm, 'ask') as Aspect | null;
  const ends = talk.context.sites.flatMap((ref) => toEnd(ref, null));
  return aspect === null || ends.length === 0 ? null : { about: 'csm', aspects: [aspect], ends };
}
