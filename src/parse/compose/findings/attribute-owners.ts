// Which finding each attribute of a clause belongs to: the one straight after it, or else the one before it.

import { isSmall, likelyTag, marked, type Piece, type Role, readingOf, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';
import { type Attributes, attributesOf, countAt } from './attributes.ts';

export interface Owned {
  /** item index of the finding */
  readonly finding: number;
  readonly piece: Piece;
  readonly attributes: Attributes;
}

/** The attributes of a clause with the finding of each; those that belong to none are left out. */
export const ownedAttributes = (items: readonly Item[], tokens: readonly Token[]): readonly Owned[] =>
  items.flatMap((item, i): readonly Owned[] => {
    const piece = pieceOf(item);
    const attributes = piece === null ? null : (attributesOf(piece) ?? countAt(items, i));
    if (piece === null || attributes === null) return [];
    // A part names where on the site, so it looks back first ("swelling, distal third") and then on ("mid shaft deformity").
    const ways =
      // "A bite with four centimetres of swelling": what follows the "of" is so large.
      attributes.size !== undefined && isOfNext(items, tokens, i)
        ? ([1, -1] as const)
        : piece.role === 'part' || isLateSize(items, tokens, i, attributes)
          ? ([-1, 1] as const)
          : ([1, -1] as const);
    if (isOfNone(items, i)) return [];
    const finding = beginsNext(items, tokens, i)
      ? near(items, tokens, i, 1)
      : (near(items, tokens, i, ways[0]) ?? near(items, tokens, i, ways[1]));
    if (finding === null || (isArea(piece) && !isBurn(items[finding]))) return [];
    if (isPainOf(piece, tokens) && !isPain(items[finding])) return [];
    if (attributes.size !== undefined && isDistance(tokens, piece)) return [];
    if (finding < i && piece.role === 'attribute' && leadsOn(items, tokens, i)) return [];
    return [{ finding, piece, attributes }];
  });

// "Graze on the front of the shin, none on the back": the back is the none's.
function isOfNone(items: readonly Item[], i: number): boolean {
  const piece = pieceOf(items.slice(0, i).findLast((item) => !hasRole(item, 'small')));
  return hasRole(items[i], 'part') && piece !== null && marked(piece, 'negation', 'after');
}

// "Inside bone tender, outside bone fine": past a pause the part is that of the finding straight behind it.
function beginsNext(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [before, piece] = [items[i - 1], pieceOf(items[i])];
  if (piece?.role !== 'part' || before === undefined || !isPaused(tokens, wordsOf(before))) return false;
  if (isPaused(tokens, piece)) return false;
  const next = items.slice(i + 1).find((item) => !isSmallItem(item, 'link') && !isSmallItem(item, 'article'));
  return next !== undefined && hasRole(next, 'finding');
}

const AWAY: ReadonlySet<string> = new Set([
  'apart',
  'above',
  'below',
  'from',
  'away',
  'proximal',
  'distal',
  'up',
  'down',
  'past',
  'off',
  'over',
]);

// "Two inches above the wrist", "a centimetre apart" is how far and not how large.
const isDistance = (tokens: readonly Token[], { to }: Piece): boolean =>
  AWAY.has(tokens[to]?.word ?? '') && tokens[to - 1]?.pause === '';

// "Tender, looks a bit shorter", "swelling up to the ankle, marked the edge": the word goes with what comes after it.
function leadsOn(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [piece, next] = [pieceOf(items[i]), pieceOf(items[i + 1])];
  if (piece === null || next === null || isPaused(tokens, piece)) return false;
  return (
    readingOf(piece, 'findings.severity') !== null && (next.role === 'unknown' || isSmall(next, 'article'))
  );
}

const isArea = (piece: Piece): boolean =>
  piece.role === 'attribute' && readingOf(piece, 'findings.area') !== null;

const isBurn = (item: Item | undefined): boolean => {
  const piece = item === undefined ? null : pieceOf(item);
  return piece !== null && likelyTag(piece, 'finding') === 'burn';
};

// "Deformed and swollen, pain eight out of ten": the pain is eight, and not the swelling.
const isPainOf = (piece: Piece, tokens: readonly Token[]): boolean =>
  piece.role === 'vital' &&
  piece.islands[0]?.rule === 'vitals.pain-score' &&
  /\b(pain|discomfort)\b/.test(saidIn(tokens, piece.from, piece.to));

const isPain = (item: Item | undefined): boolean => {
  const piece = item === undefined ? null : pieceOf(item);
  return piece !== null && likelyTag(piece, 'finding') === 'pain';
};

const isOfNext = (items: readonly Item[], tokens: readonly Token[], i: number): boolean => {
  const piece = pieceOf(items[i]);
  return piece !== null && tokens[piece.to]?.word === 'of' && near(items, tokens, i, 1) !== null;
};

// "A cut on the arm about four inches long bleeding a lot": a size after a finding is that finding's, unless an article or a
// pause before it begins the next ("a cut, three centimetre bruise").
function isLateSize(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  attributes: Attributes,
): boolean {
  const finding = near(items, tokens, i, -1);
  // "No deformity three centimetre laceration": what is not there has no size.
  if (attributes.size === undefined || finding === null || isAfterNo(items, finding)) return false;
  const before = items[i - 1];
  const paused = before !== undefined && isPaused(tokens, wordsOf(before));
  return !paused && !isSmallItem(before, 'article');
}

const isAfterNo = (items: readonly Item[], i: number): boolean => {
  const piece = pieceOf(
    items.slice(0, i).findLast((item) => !hasRole(item, 'small') && !hasRole(item, 'attribute')),
  );
  return (
    piece !== null && (tagIn(piece, 'negation', 'negation') === 'before' || marked(piece, 'answer', 'no'))
  );
};

// What may stand between an attribute and its finding.
const CALM: ReadonlySet<Role> = new Set([
  'small',
  'attribute',
  'figure',
  'part',
  'talk',
  'answer',
  'side',
  'vital',
]);

function near(items: readonly Item[], tokens: readonly Token[], i: number, step: 1 | -1): number | null {
  for (let k = i + step; k >= 0 && k < items.length; k += step) {
    const between = step === 1 ? pieceOf(items[k - 1]) : null;
    if (between !== null && isPaused(tokens, between)) return null;
    const piece = pieceOf(items[k]);
    if (piece === null) {
      if (step === 1) return null;
      continue;
    }
    if (piece.role === 'finding') return likelyTag(piece, 'present') === 'false' ? null : k;
    if (step === 1 && (isSmall(piece, 'join') || isSmall(piece, 'link'))) return null;
    // "A cut on the palm, it isn't deep": so it is not.
    if (step === -1 && piece.role === 'answer' && marked(piece, 'answer', 'no') && !marked(piece, 'plain'))
      return null;
    if (!CALM.has(piece.role)) return null;
  }
  return null;
}
