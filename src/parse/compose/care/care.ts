// Composes care given, with the site it was given at and what was given.

import type { Care, CareStatement, Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { type Island, tagOf } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import { around, isPaused, type Span } from '../../span.ts';
import type { Token } from '../../token.ts';
import type { Reach } from '../negations/reach.ts';
import { type Attachment, attach } from '../sites/attach.ts';
import { hasRole, type Item, phrasesAt, pieceOf, wordsOf } from '../sites/item.ts';
import { looseSide } from '../sites/loose-side.ts';
import { knownSide } from '../sites/side.ts';
import { sitesOf } from '../sites/sides.ts';
import { type HowKnown, type Talk, textOf } from '../talk.ts';
import { earlierIn } from './earlier.ts';
import { isGiven, isInstrument } from './given.ts';
import { textOfCare } from './remedy.ts';
import { isNotUsed, isRemoved } from './removed.ts';
import { isUsual } from './usual.ts';

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
  readonly usedSites: ReadonlySet<number>;
}

const NONE: ClauseCare = { found: [], usedSites: new Set() };

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
  for (const [i, group] of attach(items, talk.tokens, isCare)) {
    const piece = pieceOf(items[i]);
    const island = piece === null ? null : readingOf(piece, 'care');
    if (piece === null || island === null || tagOf(island, 'care') === null) continue;
    // The place goes with the words that are kept, and is no look.
    if (isRemoved(items, talk.tokens, i)) {
      for (const index of group) usedSites.add(index);
      continue;
    }
    if (reach.polarity(piece.from, false) !== 'stated' || isNotUsed(talk.tokens, piece)) continue;
    const last = found.at(-1);
    // "Packing the wound on the thigh with gauze": what it was done with is no care of its own.
    if (last !== undefined && isInstrument(talk.tokens, piece, island)) {
      found[found.length - 1] = { ...last, to: piece.to, spans: [...last.spans, piece] };
      continue;
    }
    if (tagOf(island, 'care') === 'medication' && isUsual(talk.tokens, piece)) continue;
    if (!isGiven(talk.tokens, items, i, group.length > 0)) continue;
    const at = isPlaceless(island) ? group.filter((index) => isNext(items, talk.tokens, i, index)) : group;
    for (const index of at) usedSites.add(index);
    const one = careAt(talk, items, i, piece, island, at, mind);
    found.push(one);
    for (const index of furtherSites(items, at)) {
      usedSites.add(index);
      found.push({ ...careAt(talk, items, i, piece, island, [index], mind), ...onlyAt(items, index) });
    }
  }
  return { found: withoutRepeats(found), usedSites };
}

// "Tourniquets on, right arm at thirteen twelve and right leg at thirteen eighteen": each place has its own time.
function furtherSites(items: readonly Item[], group: Attachment): readonly number[] {
  const found: number[] = [];
  let last = group.at(-1);
  let timed = false;
  for (let k = (last ?? items.length) + 1; k < items.length; k++) {
    const item = items[k];
    if (item === undefined) break;
    if (item.type === 'site') {
      const next = items.slice(k + 1).find((one) => !hasRole(one, 'small'));
      if (!timed || !hasRole(next, 'time')) break;
      found.push(k);
      last = k;
      timed = false;
    } else if (hasRole(item, 'time')) timed = true;
    else if (!hasRole(item, 'small')) break;
  }
  return found;
}

const onlyAt = (items: readonly Item[], index: number): Span & { readonly spans: readonly Span[] } => {
  const site = wordsOf(items[index] as Item);
  return { ...site, spans: [site] };
};

const PLACELESS: ReadonlySet<string | null> = new Set(['medication', 'fluids', 'food', 'oxygen', 'collar']);

const isPlaceless = (island: Island): boolean => PLACELESS.has(tagOf(island, 'care'));

// "Fentanyl fifty micrograms, splint on the left wrist": a drug has no place but the one it was given at, straight after it.
function isNext(items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean {
  const between = items.slice(i + 1, site);
  const isReason = between.some((item) => tokens[wordsOf(item).from]?.word === 'for');
  const parted = items.slice(i, site).some((item) => isPaused(tokens, wordsOf(item)));
  return (
    site > i &&
    !isReason &&
    !parted &&
    between.every((item) => hasRole(item, 'small') || hasRole(item, 'figure'))
  );
}

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
  const refs = sitesOf(phrases, mind);
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
            known: ref.side === null ? {} : knownSide(ref.sideKnown),
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
