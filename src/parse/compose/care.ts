// Composes care given, with the site it was given at and what was given.

import type { Care, CareStatement } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { hasTag, type Island, tagOf } from '../islands/island.ts';
import { isSmall, type Piece, readingOf } from '../pieces/piece.ts';
import { attach } from './attach.ts';
import { looseSide } from './loose-side.ts';
import type { Reach } from './polarity.ts';
import { shareSides, withSides } from './sides.ts';
import type { Item } from './site-phrase.ts';
import { type HowKnown, type Talk, textOf } from './talk.ts';

export interface FoundCare {
  readonly piece: Piece;
  readonly statements: readonly { readonly statement: CareStatement; readonly known: HowKnown }[];
  readonly from: number;
  readonly to: number;
  readonly spans: readonly { readonly from: number; readonly to: number }[];
}

const isCare = (item: Item): boolean => item.type === 'piece' && item.piece.role === 'care';

/** The care in a clause; care that is negated is none and stays for a note. */
export function careOf(
  talk: Talk,
  items: readonly Item[],
  mind: readonly SiteRef[],
  reach: Reach,
): { readonly found: readonly FoundCare[]; readonly usedSites: ReadonlySet<number> } {
  const usedSites = new Set<number>();
  const found: FoundCare[] = [];
  for (const [i, group] of attach(items, talk.tokens, isCare)) {
    const item = items[i];
    const island = item?.type === 'piece' ? readingOf(item.piece, 'care') : null;
    const care = island === null ? null : (tagOf(island, 'care') as Care | null);
    if (item?.type !== 'piece' || island === null || care === null) continue;
    if (reach.polarity(item.piece.from, false) !== 'stated') continue;
    const phrases = group.flatMap((index) => {
      const site = items[index];
      return site?.type === 'site' ? [site.phrase] : [];
    });
    const last = found.at(-1);
    // "Packing the wound on the thigh with gauze": what it was done with is no care of its own.
    if (last !== undefined && isInstrument(talk, items, i, island)) {
      found[found.length - 1] = { ...last, to: item.piece.to, spans: [...last.spans, item.piece] };
      continue;
    }
    if (!isGiven(talk, items, i, phrases.length > 0)) continue;
    for (const index of group) usedSites.add(index);
    const refs = shareSides(phrases.flatMap((phrase) => withSides(phrase, mind)));
    const side = refs.some((ref) => ref.side === null) ? looseSide(items, talk.tokens, i, mind) : null;
    const drug = drugEnd(talk, items, i);
    const text =
      care === 'medication' || island.slots.length > 0
        ? textOf(talk, startOfText(talk, item.piece, care), drug)
        : null;
    const base: CareStatement = { kind: 'care', care, ...(text === null ? {} : { text }) };
    const spans = [
      item.piece,
      ...phrases,
      { from: item.piece.from, to: drug },
      ...(side === null ? [] : [side.piece]),
    ];
    found.push({
      piece: item.piece,
      statements:
        refs.length === 0
          ? [{ statement: base, known: {} }]
          : refs.map((ref) => {
              const known = ref.side === null ? (side?.side ?? null) : ref.side;
              return {
                statement: { ...base, site: ref.site, side: known },
                known:
                  ref.side !== null && ref.sideKnown !== 'spoken' && ref.sideKnown !== null
                    ? { side: ref.sideKnown }
                    : {},
              };
            }),
      from: Math.min(...spans.map((span) => span.from)),
      to: Math.max(...spans.map((span) => span.to)),
      spans,
    });
  }
  return { found: withoutRepeats(found), usedSites };
}

// The thing alone ("tourniquet") is care only with a word that it was put on, a site or a time; an act is care by itself.
function isGiven(talk: Talk, items: readonly Item[], i: number, hasSite: boolean): boolean {
  const item = items[i];
  const island = item?.type === 'piece' ? readingOf(item.piece, 'care') : null;
  if (item?.type !== 'piece' || island === null) return false;
  // "He is splinting" is how he breathes; a splint has a limb.
  if (hasTag(island, 'needs-site') && !hasSite) return false;
  if (followsBefore(talk, items, i)) return false;
  if (hasTag(island, 'takes')) return drugEnd(talk, items, i) > item.piece.to;
  if (!hasTag(island, 'noun') || hasSite || hasTag(island, 'on') || hasTag(island, 'put')) return true;
  return items.some((one) => one.type === 'piece' && one.piece.role === 'time');
}

function isInstrument(talk: Talk, items: readonly Item[], i: number, island: Island): boolean {
  const item = items[i];
  if (item?.type !== 'piece' || !hasTag(island, 'noun')) return false;
  const before = talk.tokens[item.piece.from - 1]?.word;
  return (
    before === 'with' ||
    (before === 'a' && talk.tokens[item.piece.from - 2]?.word === 'with') ||
    talk.tokens[item.piece.from]?.word === 'with'
  );
}

// "After the splint" names a splint that is on already.
function followsBefore(talk: Talk, items: readonly Item[], i: number): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const item = items[k];
    if (item?.type !== 'piece' || (talk.tokens[item.piece.to - 1]?.pause ?? '') !== '') return false;
    if (isSmall(item.piece, 'before')) return true;
    if (!isSmall(item.piece, 'article')) return false;
  }
  return false;
}

// "Gave him ‹some drug› by mouth": the words after a bare "gave" are its text, up to the clause's end.
function drugEnd(talk: Talk, items: readonly Item[], i: number): number {
  const item = items[i];
  if (item?.type !== 'piece') return 0;
  const island = readingOf(item.piece, 'care');
  if (island === null || !hasTag(island, 'takes')) return item.piece.to;
  let end = item.piece.to;
  for (const next of items.slice(i + 1)) {
    if (next.type === 'site' || (talk.tokens[end - 1]?.pause ?? '') !== '') break;
    const { role } = next.piece;
    if (role !== 'unknown' && role !== 'figure' && role !== 'small' && role !== 'attribute') break;
    end = next.piece.to;
  }
  const substantial = items
    .slice(i + 1)
    .some((next) => next.type === 'piece' && next.piece.role === 'unknown' && next.piece.to <= end);
  return substantial ? end : item.piece.to;
}

function startOfText(talk: Talk, piece: Piece, care: Care): number {
  const island = readingOf(piece, 'care');
  if (care !== 'medication' || island === null || !hasTag(island, 'takes')) {
    const first = island?.slots[0]?.from;
    return care === 'medication' && first !== undefined ? firstDose(talk, piece, first) : piece.from;
  }
  return piece.to;
}

const firstDose = (talk: Talk, piece: Piece, slot: number): number =>
  /^(gave|given|giving|administered|i|we|had|took|has|another|repeat|got|he|she|just)$/.test(
    talk.tokens[piece.from]?.word ?? '',
  )
    ? slot
    : piece.from;

// "Splint on the knee with the quick splint", "blanket on for warming": one thing named twice in a breath is one care.
function withoutRepeats(found: readonly FoundCare[]): readonly FoundCare[] {
  const out: FoundCare[] = [];
  for (const one of found) {
    const like = out.findIndex(
      (other) =>
        key(other) === key(one) ||
        (first(other)?.care === first(one)?.care && first(one)?.site === undefined),
    );
    const earlier = out[like];
    if (earlier === undefined || first(one)?.care === 'medication') out.push(one);
    else
      out[like] = { ...earlier, to: Math.max(earlier.to, one.to), spans: [...earlier.spans, ...one.spans] };
  }
  return out;
}

const first = (one: FoundCare): CareStatement | undefined => one.statements[0]?.statement;
const key = (one: FoundCare): string => {
  const statement = first(one);
  return `${statement?.care} ${statement?.site} ${statement?.side}`;
};
