// Composes circulation, sensation and motion at a limb's end from the phrases of a clause and the limb they mean.

import {
  ASPECTS,
  type Aspect,
  type CsmStatement,
  DIGITS,
  type Digit,
  type PulsePoint,
  regionOf,
  type Side,
  type Site,
  type StrengthWord,
  type Warmth,
} from '../../terms/index.ts';
import type { LimbEnd, SiteRef } from '../context.ts';
import { hasTag, type Island, numberOf, tagOf, tagsOf } from '../islands/island.ts';
import { isSmall, type Piece, readingOf } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import { attach } from './attach.ts';
import { looseSide } from './loose-side.ts';
import type { Reach } from './polarity.ts';
import { shareSides, withSides } from './sides.ts';
import type { Item } from './site-phrase.ts';
import type { HowKnown } from './talk.ts';

export interface FoundCsm {
  readonly piece: Piece;
  readonly aspects: readonly Aspect[];
  readonly ends: readonly LimbEnd[];
  /** null: named, and nothing said of it */
  readonly present: boolean | null;
  readonly endSpoken: boolean;
  /** item indexes of the site phrases it took */
  readonly group: readonly number[];
  readonly details: Partial<CsmStatement>;
  readonly known: HowKnown;
  readonly doubt: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly spans: readonly { readonly from: number; readonly to: number }[];
  /** a refill time with no limb said or in mind is a vital sign */
  readonly refillSeconds: number | null;
  /** the first token of the negation that denies it */
  readonly negatedFrom: number | null;
}

export interface ClauseCsm {
  readonly found: readonly FoundCsm[];
  readonly usedSites: ReadonlySet<number>;
}

const isCsm = (item: Item): boolean => item.type === 'piece' && item.piece.role === 'csm';

/** The circulation, sensation and motion findings of a clause. */
export function csmOf(
  items: readonly Item[],
  tokens: readonly Token[],
  mind: readonly SiteRef[],
  reach: Reach,
): ClauseCsm {
  const attachments = attach(items, tokens, isCsm);
  const limbs = items.find((item) => item.type === 'piece' && item.piece.role === 'limbs');
  const found: FoundCsm[] = [];
  for (const [i, group] of attachments) {
    const item = items[i];
    const island = item?.type === 'piece' ? readingOf(item.piece, 'csm') : null;
    if (item?.type !== 'piece' || island === null) continue;
    const phrases = group.flatMap((index) => {
      const site = items[index];
      return site?.type === 'site' ? [site.phrase] : [];
    });
    const spoken = shareSides(phrases.flatMap((phrase) => withSides(phrase, mind)));
    const side = spoken.some((ref) => ref.sideKnown === 'spoken') ? null : looseSide(items, tokens, i, mind);
    const { ends, endSpoken } =
      limbs?.type === 'piece' && (phrases.length === 0 || isOfAll(items, i, limbs, group))
        ? { ends: ALL_FOUR, endSpoken: true }
        : endsOf(island, spoken, mind, side?.side ?? null);
    const late = lateSeconds(items, i, island);
    const seconds = numberOf(island, 'seconds') ?? late?.value ?? null;
    if (hasTag(island, 'spoken-site') && !endSpoken) continue;
    // "My hands are freezing": a cold hand that is somebody's own is not the patient's.
    if (hasTag(island, 'csm-warmth') && phrases.length === 0 && ends.length === 0) continue;
    if (hasTag(island, 'csm-warmth') && phrases.some((phrase) => phrase.mine)) continue;
    if (ends.length === 0 && seconds === null) continue;
    if (hasTag(island, 'limb-only') && ends.length === 0) continue;
    const read = presenceOf(items, i, island, reach, seconds);
    const spans = [
      item.piece,
      ...phrases,
      ...(side === null ? [] : [side.piece]),
      ...(limbs?.type === 'piece' ? [limbs.piece] : []),
      ...(read.negation === null ? [] : [read.negation]),
      ...(late === null ? [] : [late.piece]),
    ];
    found.push({
      piece: item.piece,
      aspects: aspectsOf(island),
      ends,
      present: read.present,
      endSpoken,
      group,
      details: { ...detailsOf(island), ...(seconds === null ? {} : { capRefillSeconds: seconds }) },
      known: read.inferred ? { present: 'inferred' } : {},
      doubt: side?.doubt ?? [],
      from: Math.min(...spans.map((span) => span.from)),
      to: Math.max(...spans.map((span) => span.to)),
      spans,
      refillSeconds: ends.length === 0 ? seconds : null,
      negatedFrom: read.negation?.from ?? null,
    });
  }
  const shared = withEllipses(sharePresence(found), items, mind);
  // A bare noun of which nothing was said ("feeling your collarbones") takes no site.
  const usedSites = new Set(shared.flatMap((one) => (one.present === null ? [] : one.group)));
  return { found: shared, usedSites };
}

// "All four limbs have pulses and movement, no sensation in the feet": only what stands next to the feet is said of them.
function isOfAll(items: readonly Item[], i: number, limbs: Item, group: readonly number[]): boolean {
  const site = group[0] ?? i;
  return items.indexOf(limbs) < i && site > i && items.slice(i + 1, site).some(isCsm);
}

// "CSM intact in both hands, absent in both feet": what is said of a second limb takes its aspects from the first.
function withEllipses(
  found: readonly FoundCsm[],
  items: readonly Item[],
  mind: readonly SiteRef[],
): readonly FoundCsm[] {
  const out = [...found];
  items.forEach((item, i) => {
    const model = found.findLast(
      (one) => one.present !== null && item.type === 'site' && one.piece.to <= item.phrase.from,
    );
    if (item.type !== 'site' || model === undefined || found.some((one) => one.group.includes(i))) return;
    const before = items
      .slice(0, i)
      .findLast((one) => one.type === 'site' || one.piece.role !== 'small' || isSmall(one.piece, 'there'));
    const word = before?.type === 'piece' ? before.piece : null;
    if (word === null || word.from < model.to) return;
    const denies =
      readingOf(word, 'negation') !== null &&
      tagOf(readingOf(word, 'negation') ?? NOTHING, 'negation') === 'after';
    const normal = readingOf(word, 'findings.finding');
    const affirms = isSmall(word, 'there') || (normal !== null && hasTag(normal, 'soft'));
    if (!denies && !affirms) return;
    const ends = unique(withSides(item.phrase, mind).flatMap((ref) => toEnd(ref, null)));
    if (ends.length === 0) return;
    out.push({
      ...model,
      piece: word,
      ends,
      endSpoken: true,
      group: [i],
      present: affirms && !denies,
      details: {},
      known: { aspect: 'carried' },
      from: word.from,
      to: item.phrase.to,
      spans: [word, item.phrase],
      negatedFrom: null,
    });
  });
  return out;
}

const NOTHING: Island = { file: '', rule: '', from: 0, to: 0, tags: [], slots: [], cost: 0 };

// "Cap refill in the left foot, two seconds": the figure may come after the limb.
function lateSeconds(
  items: readonly Item[],
  i: number,
  island: Island,
): { readonly value: number; readonly piece: Piece } | null {
  if (!hasTag(island, 'refill') || !hasTag(island, 'heading')) return null;
  for (const item of items.slice(i + 1)) {
    if (item.type !== 'piece') continue;
    if (item.piece.role === 'figure') {
      const value = readingOf(item.piece, 'small.figure')?.slots[0]?.value ?? null;
      return value === null || value > 30 ? null : { value, piece: item.piece };
    }
    if (item.piece.role !== 'small' && item.piece.role !== 'side') return null;
  }
  return null;
}

const end = (site: 'hand' | 'foot', side: Side): LimbEnd => ({ site, side, sideKnown: 'spoken' });
const ALL_FOUR: readonly LimbEnd[] = [
  end('hand', 'left'),
  end('hand', 'right'),
  end('foot', 'left'),
  end('foot', 'right'),
];

function aspectsOf(island: Island): readonly Aspect[] {
  const tagged = tagsOf(island, 'aspect') as Aspect[];
  if (tagged.length > 0) return tagged;
  return hasTag(island, 'refill') || hasTag(island, 'csm-warmth') ? ['circulation'] : ASPECTS.slice(0, 0);
}

// Schriger DL, Baraff L. Ann Emerg Med 1988;17:932-935: two seconds as the recommended upper limit of normal.
const REFILL_LIMIT_SECONDS = 2;

interface Presence {
  readonly present: boolean | null;
  readonly inferred: boolean;
  readonly negation: { readonly from: number; readonly to: number } | null;
}

function presenceOf(
  items: readonly Item[],
  i: number,
  island: Island,
  reach: Reach,
  seconds: number | null,
): Presence {
  const item = items[i];
  const at = item?.type === 'piece' ? item.piece.from : 0;
  // "Intact in both hands, absent in both feet": the denial is said of the limb that follows it.
  const after = reach.kind(at, false) === 'after' && deniesElsewhere(items, reach.from(at, false) ?? 0);
  const negated = reach.polarity(at, false) === 'negated' && !after;
  const from = reach.from(at, false);
  const to = reach.to(at, false);
  const negation = negated && from !== null && to !== null ? { from, to } : null;
  if (seconds !== null) return { present: seconds <= REFILL_LIMIT_SECONDS, inferred: true, negation: null };
  const warmth = tagOf(island, 'warmth');
  if (warmth !== null) return { present: (warmth === 'warm') !== negated, inferred: true, negation };
  if (hasTag(island, 'csm-warmth')) return { present: !negated, inferred: false, negation };
  const said = tagOf(island, 'present');
  if (said !== null) return { present: (said === 'yes') !== negated, inferred: false, negation };
  if (hasTag(island, 'noun')) {
    if (!negated && isHad(items, i)) return { present: true, inferred: false, negation: null };
    if (negated) return { present: false, inferred: false, negation };
    const good = items.slice(i + 1).find((one) => one.type === 'piece' && one.piece.role === 'finding');
    const normal = good?.type === 'piece' ? readingOf(good.piece, 'findings.finding') : null;
    if (normal !== null && tagOf(normal, 'present') === 'false' && tagOf(normal, 'finding') === 'abnormality')
      return { present: true, inferred: false, negation: { from: normal.from, to: normal.to } };
  }
  return { present: null, inferred: false, negation: null };
}

const deniesElsewhere = (items: readonly Item[], from: number): boolean => {
  const at = items.findIndex((item) => item.type === 'piece' && item.piece.from === from);
  const next = items.slice(at + 1).find((item) => item.type === 'site' || item.piece.role !== 'small');
  return at >= 0 && next?.type === 'site';
};

// "All four limbs have pulses and movement".
function isHad(items: readonly Item[], i: number): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const item = items[k];
    if (item?.type !== 'piece') return false;
    if (item.piece.role === 'csm') continue;
    if (item.piece.role !== 'small') return false;
    const words = item.piece.to - item.piece.from;
    if (words === 1 && isSmall(item.piece, 'having')) return true;
    if (!isSmall(item.piece, 'join')) return false;
  }
  return false;
}

// "Sensation and movement intact", "no sensation or movement": a list shares what is said of its last or first member.
// "Sensation and movement": a word or two may join the members of a list, and no more.
const JOINED = 2;

function sharePresence(found: readonly FoundCsm[]): readonly FoundCsm[] {
  const out = [...found];
  for (let i = out.length - 2; i >= 0; i--) {
    const [one, next] = [out[i], out[i + 1]];
    if (
      one !== undefined &&
      next !== undefined &&
      one.present === null &&
      next.present !== null &&
      next.piece.from - one.piece.to <= JOINED &&
      !(next.negatedFrom !== null && next.negatedFrom >= one.piece.to)
    )
      out[i] = { ...one, present: next.present, to: Math.max(one.to, next.to) };
  }
  return out;
}

function detailsOf(island: Island): Partial<CsmStatement> {
  const pulse = tagOf(island, 'pulse') as PulsePoint | null;
  const warmth = tagOf(island, 'warmth') as Warmth | null;
  const grade = numberOf(island, 'strength');
  const words = tagsOf(island, 'strength') as StrengthWord[];
  const strength =
    grade !== null && grade >= 0 && grade <= 5
      ? grade
      : (words.find((word) => word !== 'strong') ?? words[0]);
  const rest = words.filter((word) => word !== strength);
  const quality = [...tagsOf(island, 'quality'), ...rest];
  return {
    ...(pulse === null ? {} : { pulse }),
    ...(warmth === null ? {} : { warmth }),
    ...(strength === undefined ? {} : { strength }),
    ...(quality.length > 0 ? { quality } : {}),
  };
}

const FOOT_PULSES = new Set(['femoral', 'posterior-tibial', 'dorsalis-pedis']);

/** The limb's end that a site of that limb means, or null for a site of no limb. */
export function endOf(site: Site): 'hand' | 'foot' | null {
  const region = regionOf(site);
  if (region === 'arm' || region === 'shoulder') return 'hand';
  return region === 'leg' || site === 'hip' ? 'foot' : null;
}

function endsOf(
  island: Island,
  spoken: readonly SiteRef[],
  mind: readonly SiteRef[],
  side: Side | null,
): { ends: readonly LimbEnd[]; endSpoken: boolean } {
  const pulse = tagOf(island, 'pulse');
  const named = (tagOf(island, 'end') ??
    (pulse === null ? null : FOOT_PULSES.has(pulse) ? 'foot' : 'hand')) as 'hand' | 'foot' | null;
  const plural = hasTag(island, 'plural') ? ('both' as const) : null;
  const fromSpoken = spoken.flatMap((ref) => toEnd(ref, side));
  if (fromSpoken.length > 0) return { ends: unique(fromSpoken), endSpoken: true };
  const fromMind = unique(mind.flatMap((ref) => toEnd(ref, null))).filter(
    (one) => named === null || one.site === named,
  );
  if (named !== null) {
    const carried = fromMind[0];
    const known = side ?? plural ?? carried?.side ?? null;
    const sideKnown =
      side !== null ? 'spoken' : plural !== null ? 'inferred' : known === null ? null : 'carried';
    return { ends: [{ site: named, side: known, sideKnown }], endSpoken: true };
  }
  const ends = fromMind.map((one) =>
    side === null
      ? { ...one, sideKnown: one.side === null ? null : ('carried' as const) }
      : { ...one, side, sideKnown: 'spoken' as const },
  );
  return { ends: unique(ends), endSpoken: false };
}

/** The limb's end that a site means, with its digit; none for a site of no limb. */
export function toEnd(ref: SiteRef, side: Side | null): readonly LimbEnd[] {
  const site = endOf(ref.site);
  if (site === null) return [];
  const digit = (DIGITS as readonly string[]).includes(ref.site) ? { digit: ref.site as Digit } : {};
  const known = side !== null && ref.sideKnown !== 'spoken';
  return [{ site, side: known ? side : ref.side, sideKnown: known ? 'spoken' : ref.sideKnown, ...digit }];
}

const unique = <E extends LimbEnd>(ends: readonly E[]): readonly E[] =>
  ends.filter((one, i) => ends.findIndex((other) => JSON.stringify(other) === JSON.stringify(one)) === i);

/** One entry for each limb's end and aspect. */
export function csmStatements(one: FoundCsm): readonly { statement: CsmStatement; known: HowKnown }[] {
  return one.ends.flatMap(({ site, side, sideKnown, digit }) =>
    one.aspects.map((aspect) => ({
      statement: {
        kind: 'csm' as const,
        site,
        side,
        aspect,
        present: one.present ?? true,
        ...one.details,
        ...(digit === undefined ? {} : { digit }),
      },
      known: {
        ...one.known,
        ...(one.endSpoken ? {} : { site: 'carried' as const }),
        ...(sideKnown === 'carried' || sideKnown === 'inferred' ? { side: sideKnown } : {}),
      },
    })),
  );
}
