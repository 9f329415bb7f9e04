// What is otherwise at one site or side: "no swelling except the right ankle", "tender on the left but not the right".

import type { SiteRef } from '../../context.ts';
import { marked } from '../../pieces/piece.ts';
import { around } from '../../span.ts';
import { type Item, isException, phraseOf, pieceOf } from '../sites/item.ts';
import { sideAfter } from '../sites/said-side.ts';
import { sitesOf } from '../sites/sides.ts';
import { attributesOf, joinAttributes } from './attributes.ts';
import { soundsLike } from './doubts.ts';
import type { FoundFinding } from './found-finding.ts';

interface Excepted {
  readonly found: readonly FoundFinding[];
  /** the item index of the site that is excepted, or null */
  readonly site: number | null;
}

const NONE: Excepted = { found: [], site: null };

/** "No swelling except the right ankle": what was denied is there at the site that is excepted. */
export function excepted(
  items: readonly Item[],
  found: readonly FoundFinding[],
  mind: readonly SiteRef[],
): Excepted {
  const at = items.findIndex(isException);
  const site = at < 0 ? -1 : items.findIndex((item, i) => i > at && item.type === 'site');
  const [except, phrase] = [pieceOf(items[at]), phraseOf(items[site])];
  if (except !== null && phrase === null) return exceptedSide(items, at, found);
  if (except === null || phrase === null) return NONE;
  if (items.slice(at + 1).some((one) => pieceOf(one)?.role === 'finding')) return NONE;
  const denied = found.filter((one) => one.polarity === 'negated' && one.piece.to <= except.from);
  const attributes = items
    .slice(at + 1, site)
    .flatMap((item) => (item.type === 'piece' ? (attributesOf(item.piece) ?? []) : []))
    .reduce(joinAttributes, {});
  const refs = sitesOf([phrase], mind);
  const to = Math.max(phrase.to, phraseOf(items.at(-1))?.to ?? 0);
  return {
    site,
    found: denied.map((one) => ({
      ...one,
      refs,
      siteSpoken: true,
      polarity: 'stated',
      present: true,
      attributes,
      to,
      spans: [...one.spans, phrase, around([except, phrase])],
      doubt: soundsLike([phrase], null),
    })),
  };
}

// "No swelling on either wrist, except the left."
function exceptedSide(items: readonly Item[], at: number, found: readonly FoundFinding[]): Excepted {
  const after = items.slice(at + 1).flatMap((item) => pieceOf(item) ?? []);
  const piece = after.find(({ role }) => role === 'side');
  const side = piece === undefined ? null : sideAfter(piece);
  if (piece === undefined || side === null || side === 'mirror') return NONE;
  const denied = found.filter((one) => one.polarity === 'negated');
  return {
    site: null,
    found: denied.map((one) => ({
      ...one,
      refs: one.refs.map((ref) => ({ ...ref, side, sideKnown: 'spoken' as const })),
      polarity: 'stated',
      present: true,
      attributes: {},
      to: piece.to,
      spans: [...one.spans, { from: pieceOf(items[at])?.from ?? piece.from, to: piece.to }],
      doubt: one.doubt,
    })),
  };
}

/** "Tender on the left but not the right": what was said of one side is denied of the other. */
export function otherwiseSided(
  items: readonly Item[],
  found: readonly FoundFinding[],
): readonly FoundFinding[] {
  const at = items.findIndex((item) => item.type === 'piece' && marked(item.piece, 'negation', 'stop'));
  const after = at < 0 ? [] : items.slice(at + 1);
  const rest = after.flatMap((item) => pieceOf(item) ?? []);
  if (rest.length < after.length) return [];
  const negation = rest.find((piece) => marked(piece, 'negation', 'before'));
  const side = rest.findLast((piece) => piece.role === 'side');
  if (negation === undefined || side === undefined) return [];
  const named = sideAfter(side);
  if (named !== 'left' && named !== 'right') return [];
  if (rest.some(({ role }) => role === 'finding' || role === 'csm' || role === 'unknown')) return [];
  return found.flatMap((one): readonly FoundFinding[] => {
    if (one.polarity !== 'stated' || one.piece.to > negation.from) return [];
    const refs = one.refs.filter((ref) => ref.side !== null && ref.side !== named && ref.side !== 'both');
    if (refs.length === 0) return [];
    return [
      {
        ...one,
        refs: refs.map((ref) => ({ ...ref, side: named, sideKnown: 'spoken' })),
        polarity: 'negated',
        present: !one.present,
        attributes: {},
        to: side.to,
        spans: [...one.spans, { from: negation.from, to: side.to }],
      },
    ];
  });
}
