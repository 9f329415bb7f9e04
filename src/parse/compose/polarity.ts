// Whether each finding of a clause is stated as there or as not there, by the reach of the negations around it.

import { hasTag, tagOf } from '../islands/island.ts';
import { type NegationKind, type NegationMark, negatedSpans, possibleSpans } from '../negation.ts';
import { isSmall, marked, type Piece, readingOf } from '../pieces/piece.ts';
import type { Item } from './site-phrase.ts';

export type Polarity = 'stated' | 'negated' | 'possible';

export interface Reach {
  /** for a finding at these tokens; an adjective is out of reach of a bare "no" */
  readonly polarity: (from: number, adjective: boolean) => Polarity;
  /** the negation's first token, for the words that an entry came from */
  readonly from: (at: number, adjective: boolean) => number | null;
  readonly to: (at: number, adjective: boolean) => number | null;
  readonly kind: (at: number, adjective: boolean) => NegationKind | null;
}

interface Found {
  readonly mark: NegationMark;
  readonly nouns: boolean;
  /** "without": a "not" before it undoes it */
  readonly lack?: boolean;
}

// "Not without pain" has pain, and says so weakly: neither word denies it.
const withoutDoubles = (found: readonly Found[]): readonly Found[] =>
  found.filter((one, i) => {
    const [before, next] = [found[i - 1], found[i + 1]];
    const undone = one.lack === true && before?.mark.end === one.mark.start && before.mark.kind === 'before';
    const undoes = next?.lack === true && one.mark.end === next.mark.start && one.mark.kind === 'before';
    return !undone && !undoes;
  });

/** The reach of the negations in a clause's items. `end` is past the clause's last token. */
export function reachIn(items: readonly Item[], end: number): Reach {
  const found = withoutDoubles(items.flatMap((item, i) => foundAt(items, item, i)));
  const marks = found.map(({ mark }) => mark);
  const nouns = new Set(found.filter((one) => one.nouns).map(({ mark }) => mark.start));
  const negated = negatedSpans(marks, end);
  const possible = possibleSpans(marks, end);
  const over = (at: number, adjective: boolean) =>
    negated.find(
      (span) =>
        at >= span.start &&
        at < span.end &&
        !(adjective && span.by.kind === 'before' && nouns.has(span.by.start)),
    );
  return {
    polarity: (from, adjective) => {
      if (over(from, adjective) !== undefined) return 'negated';
      return possible.some((span) => from >= span.start && from < span.end) ? 'possible' : 'stated';
    },
    from: (at, adjective) => over(at, adjective)?.by.start ?? null,
    to: (at, adjective) => over(at, adjective)?.by.end ?? null,
    kind: (at, adjective) => over(at, adjective)?.by.kind ?? null,
  };
}

function foundAt(items: readonly Item[], item: Item, i: number): readonly Found[] {
  if (item.type === 'site') {
    const { from, to, denied } = item.phrase;
    if (denied) return [{ mark: { start: from, end: to, kind: 'before' }, nouns: false }];
    return closesList(items, i) ? [stop(to)] : [];
  }
  const { piece } = item;
  // A phrase that says "no" itself ("no known allergies", "can not feel") goes on reaching over what is joined to it.
  if (piece.role === 'history' || piece.role === 'csm') return [];
  const absent =
    piece.role === 'finding' &&
    piece.islands[0] !== undefined &&
    tagOf(piece.islands[0], 'present') === 'false';
  if (absent && readingOf(piece, 'negation') === null) return [];
  const island = readingOf(piece, 'negation');
  // "It is not bleeding" holds an answer's words and is a negation where a finding follows.
  if (island === null && piece.role === 'answer' && marked(piece, 'answer', 'no'))
    return [{ mark: { start: piece.from, end: piece.to, kind: 'before' }, nouns: false }];
  if (island === null) {
    // An adjective after "no" and a noun begins something stated: "no deformity, tender over the radius".
    const adjective =
      piece.role === 'finding' && piece.islands[0] !== undefined && hasTag(piece.islands[0], 'adj');
    return adjective && !joinedByOr(items, i) ? [stop(piece.from)].filter(() => afterNoun(items, i)) : [];
  }
  const kind = tagOf(island, 'negation') as NegationKind | null;
  if (kind === null) return [];
  // "Crepitus negative" denies the crepitus; "the wrist is negative" is a finding of its own.
  if (piece.role === 'finding' && !(kind === 'after' && isFindingItem(lastLoud(items, i)))) return [];
  return [
    {
      mark: { start: piece.from, end: piece.to, kind: deniesNext(items, i, kind) ? 'before' : kind },
      nouns: hasTag(island, 'nouns'),
      lack: hasTag(island, 'lack'),
    },
  ];
}

// "None loose": a "none" with an adjective straight after it and no finding before it denies what follows.
function deniesNext(items: readonly Item[], i: number, kind: NegationKind): boolean {
  const next = items[i + 1];
  const adjective =
    next?.type === 'piece' &&
    next.piece.role === 'finding' &&
    next.piece.islands[0] !== undefined &&
    hasTag(next.piece.islands[0], 'adj');
  return kind === 'after' && adjective && !isFindingItem(lastLoud(items, i));
}

/** The item before `i` that is no small word. */
const lastLoud = (items: readonly Item[], i: number): Item | undefined =>
  items.slice(0, i).findLast((item) => item.type === 'site' || item.piece.role !== 'small');

const stop = (at: number): Found => ({ mark: { start: at, end: at, kind: 'stop' }, nouns: false });

const afterNoun = (items: readonly Item[], i: number): boolean => {
  for (let k = i - 1; k >= 0; k--) {
    const item = items[k];
    if (item?.type === 'site') return false;
    if (item?.piece.role === 'negation')
      return hasTag(readingOf(item.piece, 'negation') ?? item.piece.islands[0] ?? EMPTY, 'nouns');
    if (item?.piece.role === 'finding') return true;
  }
  return false;
};

const EMPTY = { file: '', rule: '', from: 0, to: 0, tags: [], slots: [], cost: 0 };

const joinedByOr = (items: readonly Item[], i: number): boolean => {
  const before = items[i - 1];
  const small = before?.type === 'piece' ? readingOf(before.piece, 'small') : null;
  return small !== null && hasTag(small, 'or');
};

// "No pain in the neck, tenderness in the back": a site that follows findings closes their list, unless "or" or "and" goes on.
function closesList(items: readonly Item[], i: number): boolean {
  const before = items.slice(0, i);
  if (!before.some((item) => item.type === 'piece' && item.piece.role === 'finding')) return false;
  // "Denies neck pain and back pain" goes on in the same order.
  if (goesOn(items, i)) return false;
  const next = items[i + 1];
  if (next === undefined) return false;
  const small = next.type === 'piece' ? readingOf(next.piece, 'small') : null;
  if (small !== null && hasTag(small, 'or')) return false;
  if (small !== null && hasTag(small, 'small', 'join')) return items[i + 2]?.type !== 'site';
  return next.type === 'piece' && !isAfter(next.piece);
}

const isFindingItem = (item: Item | undefined): boolean =>
  item?.type === 'piece' && item.piece.role === 'finding';

function goesOn(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  const joined = before?.type === 'piece' && (isSmall(before.piece, 'join') || isSmall(before.piece, 'or'));
  if (!joined || !isFindingItem(items[i + 1])) return false;
  const finding = items.slice(0, i).findLastIndex(isFindingItem);
  return items[finding - 1]?.type === 'site';
}

// "Deformity of the wrist: none", "swelling of the ankle is absent" reach back over the site.
const isAfter = (piece: Piece): boolean => {
  const island = readingOf(piece, 'negation');
  return island !== null && (tagOf(island, 'negation') ?? '').endsWith('after');
};
