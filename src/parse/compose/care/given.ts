// Whether a word for care says that it was given, or only names a thing that is or was at hand.

import { hasTag, type Island, tagOf } from '../../islands/island.ts';
import { isSmall, type Piece, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';
import { isDrunk } from './drink.ts';
import { endOfRemedy } from './remedy.ts';

/** The thing alone ("tourniquet") is care only with a word that it was put on, a site or a time; an act is care by itself. */
export function isGiven(
  tokens: readonly Token[],
  items: readonly Item[],
  i: number,
  hasSite: boolean,
): boolean {
  const piece = pieceOf(items[i]);
  const island = piece === null ? null : readingOf(piece, 'care');
  if (piece === null || island === null) return false;
  // "He is splinting" is how he breathes; a splint has a limb.
  if (hasTag(island, 'needs-site') && !hasSite) return false;
  // "And half a biscuit": what it is joined to was given.
  if (hasTag(island, 'joined') && !hasRole(items[i - 1], 'care')) return false;
  // "Left knee is dressed", and not "he is dressed".
  if (hasTag(island, 'of-site') && !isSaidOfSite(tokens, items, i)) return false;
  // "Covered the graze", and not "covered the leg".
  if (hasTag(island, 'of-wound') && !isOfWound(items, i)) return false;
  // "A burn from the ice": the word is care only where it was put on something.
  if (hasTag(island, 'needs-on') && !isPutOn(tokens, piece, island, hasSite)) return false;
  if (hasTag(island, 'needs-time')) return items.some((item) => hasRole(item, 'time'));
  // "She fell in cold water": nobody was cooled; "in cold water" by itself and "the hand in cold water" cool it.
  const isIn = tagOf(island, 'care') === 'cooling' && tokens[piece.from]?.word === 'in';
  if (isIn && !hasSite && tokens[piece.from - 1]?.pause === '') return false;
  if (hasTag(island, 'drink') && !isDrunk(tokens, items, i, piece, hasSite)) return false;
  // "Washed it out with a litre of saline".
  if (tagOf(island, 'care') === 'fluids' && isMeans(tokens, piece, island)) return false;
  if (isOrdered(tokens, piece) || isOnAlready(tokens, items, i) || isMentioned(tokens, piece, island))
    return false;
  // "Aspirin not given, allergic", "oral glucose given, she swallowed it": what follows is no remedy.
  if (hasTag(island, 'takes') && isToldOf(tokens, piece)) return false;
  if (hasTag(island, 'takes')) return endOfRemedy(tokens, items, i, piece, island) > piece.to;
  // "Second dose of ketamine": the words of the act begin as those of the thing do.
  if (
    !hasTag(island, 'noun') ||
    piece.islands.some((one) => one.file === 'care' && hasTag(one, 'verb')) ||
    hasSite ||
    hasTag(island, 'on') ||
    hasTag(island, 'put')
  )
    return true;
  return items.some((item) => hasRole(item, 'time'));
}

const isOfWound = (items: readonly Item[], i: number): boolean =>
  hasRole(
    items.slice(i + 1).find((item) => !hasRole(item, 'attribute') && !hasRole(item, 'small')),
    'finding',
  );

function isSaidOfSite(tokens: readonly Token[], items: readonly Item[], i: number): boolean {
  const site = items.slice(0, i).findLastIndex(({ type }) => type === 'site');
  const between = items.slice(site, i);
  return (
    site >= 0 &&
    !between.slice(1).some((item) => isSmallItem(item, 'person') || hasRole(item, 'unknown')) &&
    !between.some((item) => isPaused(tokens, wordsOf(item)))
  );
}

const isPutOn = (tokens: readonly Token[], { from, to }: Piece, island: Island, hasSite: boolean): boolean =>
  hasTag(island, 'put') ||
  (hasSite &&
    tokens.slice(from, to + 1).some(({ word }) => /^(on|to|over|around|round|against|applied)$/.test(word)));

const isToldOf = (tokens: readonly Token[], { from, to }: Piece): boolean =>
  /^(not|never|no)$/.test(tokens[from - 1]?.word ?? '') ||
  (tokens[to - 1]?.word === 'given' &&
    /^(he|she|it|they|we|i|that|because|but|so|and|when|after)$/.test(tokens[to]?.word ?? ''));

/** "With gauze", "with a splint": what care was given with. */
export function isInstrument(tokens: readonly Token[], piece: Piece, island: Island): boolean {
  if (!hasTag(island, 'noun') && tagOf(island, 'care') !== 'fluids') return false;
  const [before, earlier] = [tokens[piece.from - 1]?.word, tokens[piece.from - 2]?.word];
  return before === 'with' || (before === 'a' && earlier === 'with') || tokens[piece.from]?.word === 'with';
}

const isMeans = (tokens: readonly Token[], { from, to }: Piece, island: Island): boolean =>
  tokens[from - 1]?.word === 'with' ||
  (tokens[from]?.word === 'with' &&
    !hasTag(island, 'put') &&
    // "With a litre of saline running" tells of its own.
    !hasTag(island, 'on') &&
    (island.slots.length > 0 || tokens.slice(from, to).some(({ word }) => /^(litre|liter)$/.test(word))));

// "Give him three hundred of aspirin": what is to be given was not given yet.
function isOrdered(tokens: readonly Token[], { from }: Piece): boolean {
  let at = from - 1;
  if (/^(give|get)$/.test(tokens[from]?.word ?? '')) at = from;
  while (at > 0 && /^(him|her|them|the|patient|a|an|another|some|about)$/.test(tokens[at]?.word ?? '')) at--;
  return (
    /^give$/.test(tokens[at]?.word ?? '') && !/^(did|i|we|they|he|she)$/.test(tokens[at - 1]?.word ?? '')
  );
}

// "After the splint" names a splint that is on already.
function isOnAlready(tokens: readonly Token[], items: readonly Item[], i: number): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieceOf(items[k]);
    if (piece === null || isPaused(tokens, piece)) return false;
    if (isSmall(piece, 'before')) return true;
    if (!isSmall(piece, 'article')) return false;
  }
  return false;
}

const BESIDE =
  /^(around|through|under|underneath|over|above|below|beneath|past|behind|beside|near|inside|into|beyond|of|by)$/;
// "Checked the tourniquet": it is on already.
const LOOKED = /^(checked|checking|inspected|inspecting|watching)$/;
const OWNED = /^(the|that|this|his|her|their|our)$/;

// "Oozing around the packing", "bleeding through the dressing": where something is, said by care that was given before.
function isMentioned(tokens: readonly Token[], { from }: Piece, island: Island): boolean {
  const isThing = hasTag(island, 'noun') || tagOf(island, 'care') === 'wound-packing';
  if (!isThing || hasTag(island, 'put')) return false;
  const owned = OWNED.test(tokens[from]?.word ?? '')
    ? from
    : OWNED.test(tokens[from - 1]?.word ?? '')
      ? from - 1
      : null;
  return (
    owned !== null &&
    (BESIDE.test(tokens[owned - 1]?.word ?? '') || LOOKED.test(tokens[owned - 1]?.word ?? ''))
  );
}
