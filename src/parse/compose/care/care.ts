// Composes care given, with the site it was given at and what was given.

import type { Care, CareStatement, Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { type Island, tagOf } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import { around, type Span } from '../../span.ts';
import type { Reach } from '../negations/reach.ts';
import { type Attachment, attach } from '../sites/attach.ts';
import { hasRole, type Item, phrasesAt, pieceOf, wordsOf } from '../sites/item.ts';
import { looseSide } from '../sites/loose-side.ts';
import { knownSide } from '../sites/side.ts';
import { sitesOf } from '../sites/sides.ts';
import { type HowKnown, type Said, type Talk, textOf } from '../talk.ts';
import { isAtHand } from './at-hand.ts';
import { furtherSites, inMind, isNext, isOfMind, isPlaceless, placeOfWound } from './care-place.ts';
import { earlierIn } from './earlier.ts';
import { isGiven, isInstrument } from './given.ts';
import { REFUSAL_DOUBT, refusalOf } from './refused.ts';
import { textOfCare } from './remedy.ts';
import { isNotUsed, isRemoved } from './removed.ts';
import { isStillOn } from './still-on.ts';
import { isUsual } from './usual.ts';
import { woundsOf } from './wound.ts';

export interface FoundCare extends Span {
  readonly statements: readonly {
    readonly statement: CareStatement;
    readonly known: HowKnown;
    readonly doubt?: readonly string[];
  }[];
  /** pieces of the clause that it took in */
  readonly spans: readonly Span[];
}

/** The care of a clause, with the places of the sites that it took. */
interface ClauseCare {
  readonly found: readonly FoundCare[];
  /** what the care was for, where its words take that in */
  readonly wounds: readonly Said[];
  readonly usedSites: ReadonlySet<number>;
}

const NONE: ClauseCare = { found: [], wounds: [], usedSites: new Set() };

const isCare = (item: Item): boolean => hasRole(item, 'care');

/** The care in a clause; care that is negated is none and stays for a note. `mind` is the sites in mind. */
export function careOf(
  talk: Talk,
  items: readonly Item[],
  mind: readonly SiteRef[],
  reach: Reach,
): ClauseCare {
  if (!items.some(isCare)) return NONE;
  const usedSites = new Set<number>();
  const found: FoundCare[] = [];
  const wounds: Said[] = [];
  for (const [i, own] of attach(items, talk.tokens, isCare, mind.length > 0)) {
    const group = own.length > 0 ? own : placeOfWound(items, talk.tokens, i);
    const piece = pieceOf(items[i]);
    const island = piece === null ? null : readingOf(piece, 'care');
    if (piece === null || island === null || tagOf(island, 'care') === null) continue;
    // The place goes with the words that are kept, and is no look.
    if (isRemoved(items, talk.tokens, i) || isStillOn(talk, items, i, island, group)) {
      for (const index of group) usedSites.add(index);
      continue;
    }
    if (reach.polarity(piece.from, false) !== 'stated' || isNotUsed(talk.tokens, piece)) continue;
    if (isAtHand(talk.tokens, piece)) continue;
    const refusal = refusalOf(talk, piece);
    if (refusal === 'refused') continue;
    const last = found.at(-1);
    // "Packing the wound on the thigh with gauze": what it was done with is no care of its own.
    if (last !== undefined && isInstrument(talk.tokens, piece, island)) {
      found[found.length - 1] = { ...last, to: piece.to, spans: [...last.spans, piece] };
      continue;
    }
    if (tagOf(island, 'care') === 'medication' && isUsual(talk.tokens, piece)) continue;
    if (!isGiven(talk.tokens, items, i, group.length > 0 || isOfMind(talk, piece, mind))) continue;
    const near = isPlaceless(island) ? group.filter((index) => isNext(items, talk.tokens, i, index)) : group;
    // Somebody lies on his side as a whole: "rolled him onto his right side, left knee swollen".
    const at = tagOf(island, 'care') === 'recovery-position' ? [] : near;
    for (const index of at) usedSites.add(index);
    const given = careAt(talk, items, i, piece, island, at, mind);
    const one = refusal === null ? given : asking(given, REFUSAL_DOUBT[refusal]);
    found.push(one);
    wounds.push(...woundsOf(island, phrasesAt(items, at), one));
    for (const index of furtherSites(items, at)) {
      usedSites.add(index);
      found.push({ ...careAt(talk, items, i, piece, island, [index], mind), ...onlyAt(items, index) });
    }
  }
  return { found: withoutRepeats(found), wounds, usedSites };
}

const asking = (one: FoundCare, question: string): FoundCare => ({
  ...one,
  statements: one.statements.map((told) => ({ ...told, doubt: [...(told.doubt ?? []), question] })),
});

const onlyAt = (items: readonly Item[], index: number): Span & { readonly spans: readonly Span[] } => {
  const site = wordsOf(items[index] as Item);
  return { ...site, spans: [site] };
};

function careAt(
  talk: Talk,
  items: readonly Item[],
  i: number,
  piece: Piece,
  island: Island,
  group: Attachment,
  mind: readonly SiteRef[],
): FoundCare {
  const phrases = phrasesAt(items, group);
  const named = sitesOf(phrases, mind);
  // "Splint from knee to ankle" is one, on what lies between them.
  const stretch = named.filter((ref) => ref.stretch === 'between');
  const refs =
    stretch.length > 0
      ? stretch
      : named.length === 0 && isOfMind(talk, piece, mind)
        ? mind.map(inMind)
        : named;
  // "Chest seal on the right": a thing that goes on one place has its side alone.
  const home = refs.length === 0 ? (tagOf(island, 'home') as Site | null) : null;
  const isOpen = home !== null || refs.some((ref) => ref.side === null);
  const side = isOpen ? looseSide(items, talk.tokens, i, mind) : null;
  const text = textOfCare(talk.tokens, items, i, piece, island);
  const earlier = earlierIn(talk, items, i);
  const said = [
    text.says ? textOf(talk, text.from, text.to) : '',
    earlier === null ? '' : textOf(talk, earlier.from, earlier.to),
  ].filter((one) => one !== '');
  const statement: CareStatement = {
    kind: 'care',
    care: tagOf(island, 'care') as Care,
    ...(said.length > 0 ? { text: said.join(' ') } : {}),
  };
  const doubt = earlier === null ? {} : { doubt: ['That was before now: when?'] };
  const spans = [
    piece,
    ...phrases,
    { from: piece.from, to: text.to },
    ...(side === null ? [] : [side.piece]),
    ...(earlier === null ? [] : [earlier]),
  ];
  return {
    statements:
      refs.length === 0
        ? [
            {
              statement:
                home === null || side === null ? statement : { ...statement, site: home, side: side.side },
              known: {},
              ...doubt,
            },
          ]
        : refs.map((ref) => ({
            statement: { ...statement, site: ref.site, side: ref.side ?? side?.side ?? null },
            known: {
              ...(named.length === 0 ? { site: 'carried' as const } : {}),
              ...(ref.side === null ? {} : knownSide(ref.sideKnown)),
            },
            ...doubt,
          })),
    ...around(spans),
    spans,
  };
}

// "Splint on the knee with the quick splint", "blanket on for warming": one thing named twice in a breath is one care.
function withoutRepeats(found: readonly FoundCare[]): readonly FoundCare[] {
  const out: FoundCare[] = [];
  for (const one of found) {
    const mine = first(one);
    const like = out.findIndex((other) => repeats(first(other), mine));
    const earlier = out[like];
    if (earlier === undefined || mine?.care === 'medication') out.push(one);
    else {
      // "Oxygen on, fifteen litres by mask": the words that say how much are the later ones.
      const more = first(earlier)?.text === undefined ? mine?.text : undefined;
      const statements =
        more === undefined
          ? earlier.statements
          : earlier.statements.map((told) => ({ ...told, statement: { ...told.statement, text: more } }));
      const to = Math.max(earlier.to, one.to);
      out[like] = { ...earlier, statements, to, spans: [...earlier.spans, ...one.spans] };
    }
  }
  return out;
}

const first = (one: FoundCare): CareStatement | undefined => one.statements[0]?.statement;

const repeats = (other: CareStatement | undefined, mine: CareStatement | undefined): boolean =>
  other?.care === mine?.care &&
  (mine?.site === undefined || (other?.site === mine.site && other.side === mine.side));
