// Whether a word that is said of a site ("fine", "intact", "nothing") is said of one here, or is mere talk.

import type { SiteRef } from '../../context.ts';
import { hasTag, type Island } from '../../islands/island.ts';
import { isSmall, type Piece, type Role, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { isNothingSuch } from '../negations/nothing.ts';
import { hasRole, type Item, phraseOf, pieceOf, wordsOf } from '../sites/item.ts';
import { limbOf } from '../sites/limb.ts';

/**
 * "Fine" counts as what is said of a site straight before it ("the elbow is fine"), "looks fine" of the site in mind too.
 * `site` is the item that the word at `i` would belong to, or null for the site in mind.
 */
export function isPredicate(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number | null,
  island: Island,
  mind: readonly SiteRef[],
): boolean {
  const piece = pieceOf(items[i]);
  if (piece === null) return false;
  // "Crepitus negative": the word denies the finding before it and says nothing of the site.
  const last = items[i - 1];
  const denies = hasRole(last, 'finding');
  const leads = phraseOf(last)?.led === true && items.slice(0, i).some((item) => hasRole(item, 'finding'));
  if (tagIn(piece, 'negation', 'negation') === 'after' && (denies || leads)) return false;
  const nothing = hasTag(island, 'nothing');
  // "Nothing deep" says what there is not nothing of.
  if (nothing && goesOn(piece, pieceOf(items[i + 1]), tokens)) return false;
  // "Nothing else" is said of what was not named, "nothing from the left hand" of what somebody was asked to do.
  const after = isPaused(tokens, piece) ? '' : (tokens[piece.to]?.word ?? '');
  const places = site === null ? mind : (phraseOf(items[site])?.sites ?? []);
  if (
    nothing &&
    (/^(else|till|until)$/.test(after) ||
      (after === 'from' && places.every(({ site: one }) => limbOf(one) !== null)))
  )
    return false;
  if (nothing && isNothingSuch(items, tokens, i)) return false;
  const soft = hasTag(island, 'soft');
  // "Grey jacket", "normal saline": said of the thing that follows.
  const next = pieceOf(items[i + 1]);
  if (site === null && next?.role === 'unknown' && !isPaused(tokens, piece)) return false;
  if (site === null) {
    if (mind.length === 0) return false;
    if (items.slice(0, i).some((item) => hasRole(item, 'side'))) return true;
    return (
      !soft && (tokens.length <= island.to - island.from + 2 || OF_IT.test(saidIn(tokens, 0, island.from)))
    );
  }
  // "Good range of motion in the elbow" leads to its site.
  if (site > i) return nothing || (!soft && (i + 1 === site || phraseOf(items[site])?.led === true));
  return isSaidOf(items, tokens, i, site, soft);
}

// "Now it's all red and …": so the talk begins, and nothing else was named that could be.
const OF_IT =
  /^((and|now|oh|well|but|so|yes|yeah) )*(it|they) (is|are|looks|look)( (all|really|very|quite|so|still|now))*$/;

const APART: ReadonlySet<Role> = new Set(['unknown', 'mood', 'intention']);

function isSaidOf(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
  soft: boolean,
): boolean {
  const between = items.slice(site + 1, i);
  const pieces = between.flatMap((item) => pieceOf(item) ?? []);
  if (pieces.length < between.length || pieces.some(({ role }) => APART.has(role))) return false;
  if (!soft || pieces.some((piece) => isSmall(piece, 'link') || piece.role === 'finding')) return true;
  const last = items[i - 1];
  return last === undefined || !isPaused(tokens, wordsOf(last));
}

const GOING_ON: ReadonlySet<Role> = new Set(['unknown', 'attribute', 'part', 'care', 'vital']);

const goesOn = (piece: Piece, next: Piece | null, tokens: readonly Token[]): boolean =>
  next !== null && !isPaused(tokens, piece) && GOING_ON.has(next.role);
