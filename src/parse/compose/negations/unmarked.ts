// What denies, or ends a denial, without a word that the grammar calls a negation.

import { likelyTag, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isAdjective, pieceOf } from '../sites/item.ts';
import { isAfterNoun } from './after-noun.ts';
import { deniedBehind } from './denied-behind.ts';
import { otherSideAfter } from './elsewhere.ts';
import { deny, type FoundMark, stopAt } from './found-mark.ts';
import { joinedByOr } from './list-end.ts';
import { startOfMeasured } from './measured.ts';
import { goesOnWithOr, isInListWithOr } from './or-list.ts';
import { endOfOwnVerb } from './own-verb.ts';

/** The marks that these words make, though they are no negation of the grammar's. */
export function unmarkedAt(
  items: readonly Item[],
  tokens: readonly Token[],
  piece: Piece,
  i: number,
): readonly FoundMark[] {
  // "No issues, numbness or weakness of the hand": the "or" shows that the list goes on from the "no".
  if (piece.role === 'finding' && likelyTag(piece, 'present') === 'false')
    return DENYING.has(tokens[piece.from]?.word ?? '') && goesOnWithOr(items, i)
      ? [deny(piece.from, piece.to)]
      : [];
  // "It is not bleeding" holds an answer's words and is a negation where a finding follows.
  // "Not tender, not swollen, just a bit of bruising": it is there.
  if (isJustSome(piece, tokens)) return [stopAt(piece.from)];
  // "No the bruise is on the right".
  if (marked(piece, 'denies-nothing')) return [];
  if (piece.role === 'answer' && marked(piece, 'answer', 'no')) {
    const turned = items[i + 1]?.type === 'site' ? otherSideAfter(items, i + 1) : null;
    const end = turned ?? endOfOwnVerb(items, tokens, i);
    // "No, no, no, a bit sore there": a bare "no" denies no adjective after it.
    const nouns = marked(piece, 'plain');
    return [{ ...deny(piece.from, piece.to), nouns }, ...(end === null ? [] : [stopAt(end)])];
  }
  // An adjective after "no" and a noun begins something stated: "no deformity, tender over the radius".
  const begins =
    isAdjective(items[i]) &&
    !joinedByOr(items, i) &&
    !isInListWithOr(items, i) &&
    isAfterNoun(items, i) &&
    deniedBehind(items, tokens, i) !== 'thing';
  if (begins || isSaidAgain(items, tokens, i) || isOfOtherPart(items, tokens, i)) return [stopAt(piece.from)];
  const measured = startOfMeasured(items, tokens, i);
  return measured === null ? [] : [stopAt(measured)];
}

const isJustSome = ({ role, from, to }: Piece, tokens: readonly Token[]): boolean =>
  (role === 'answer' || role === 'attribute') &&
  to - from > 1 &&
  /^(just|only)$/.test(tokens[from]?.word ?? '');

// "No pain, pain on the right": what was just denied is not denied again.
function isSaidAgain(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [before, here] = [pieceOf(items[i - 1]), pieceOf(items[i])];
  if (before?.role !== 'finding' || here?.role !== 'finding' || !isPaused(tokens, before)) return false;
  if (goesOnWithOr(items, i)) return false;
  const wordsIn = ({ from, to }: Piece) => tokens.slice(from, to).map(({ word }) => word);
  return wordsIn(before).join(' ') === wordsIn(here).join(' ');
}

// "No bruise outside bruise inside the thigh": said again of another part or side, it is there.
function isOfOtherPart(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const at = items.slice(0, i).findLastIndex((item) => hasRole(item, 'finding'));
  const [before, here] = [pieceOf(items[at]), pieceOf(items[i])];
  if (before === null || here?.role !== 'finding' || at + 1 >= i) return false;
  const between = items.slice(at + 1, i);
  if (!between.every((item) => hasRole(item, 'part') || hasRole(item, 'side'))) return false;
  return tokens[before.from]?.word === tokens[here.from]?.word;
}

const DENYING: ReadonlySet<string> = new Set(['no', 'nothing', 'nil']);
