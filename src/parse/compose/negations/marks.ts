// Where the negations of a clause stand, which way each reaches, and where their reach is cut off.

import { hasTag } from '../../islands/island.ts';
import type { NegationKind } from '../../negation.ts';
import { marked, type Piece, readingOf, tagIn } from '../../pieces/piece.ts';
import { isPaused, type Span } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isAdjective, isSmallItem, phraseOf, pieceOf, wordsOf } from '../sites/item.ts';
import { isCannotWithout } from './cannot-without.ts';
import { withoutNoneThatIsNot } from './each-part.ts';
import { isAtAnother, isElsewhere, isInAnotherPart, lastLoud, otherSideAfter } from './elsewhere.ts';
import { deny, type FoundMark, stopAt } from './found-mark.ts';
import { goesOn } from './goes-on.ts';
import { beginsAtOwnPlace, closesList } from './list-end.ts';
import { isNothingSuch } from './nothing.ts';
import { endOfEach, endOfOwnVerb } from './own-verb.ts';
import { unmarkedAt } from './unmarked.ts';

/** The marks of a clause's items in order. */
export const marksIn = (items: readonly Item[], tokens: readonly Token[]): readonly FoundMark[] =>
  withoutNoneThatIsNot(
    withoutDoubles(items.flatMap((item, i) => marksAt(items, tokens, item, i))).filter(
      ({ lack, mark }) => lack !== true || !isCannotWithout(items, mark.start),
    ),
    items,
    tokens,
  );

// "Not without pain" has pain, and says so weakly: neither word denies it.
const withoutDoubles = (found: readonly FoundMark[]): readonly FoundMark[] =>
  found.filter((one, i) => {
    const [before, next] = [found[i - 1], found[i + 1]];
    const undone = one.lack === true && before?.mark.end === one.mark.start && before.mark.kind === 'before';
    const undoes = next?.lack === true && one.mark.end === next.mark.start && one.mark.kind === 'before';
    return !undone && !undoes;
  });

function marksAt(
  items: readonly Item[],
  tokens: readonly Token[],
  item: Item,
  i: number,
): readonly FoundMark[] {
  if (item.type === 'site') {
    const { from, to, denied } = item.phrase;
    if (denied) return [deny(from, to)];
    return closesList(items, i) ? [stopAt(to)] : [];
  }
  const { piece } = item;
  if (isNothingSuch(items, tokens, i)) return [deny(piece.from, piece.to)];
  // A phrase that says "no" itself ("no known allergies", "can not feel") goes on reaching over what is joined to it.
  if (piece.role === 'history' && marked(piece, 'denied'))
    return [{ mark: { start: piece.from, end: piece.to, kind: 'before' }, nouns: true }];
  if (beginsAtOwnPlace(items, tokens, i)) return [stopAt(piece.from)];
  if (piece.role === 'history' || piece.role === 'csm') return [];
  if (takesUpAnew(items, tokens, i)) return [];
  const island = readingOf(piece, 'negation');
  if (island === null) return unmarkedAt(items, tokens, piece, i);
  const said = tagIn(piece, 'negation', 'negation') as NegationKind | null;
  if (said === null) return [];
  const follows = endsFinding(items, i);
  const isBehind = follows || hasRole(lastLoud(items, i), 'history');
  const kind = isBehind && isDeniedAtEnd(items, tokens, i) ? 'after' : said;
  // "Crepitus negative" denies the crepitus; "the wrist is negative" is a finding of its own.
  if (piece.role === 'finding' && !(kind === 'after' && follows)) return unmarkedAt(items, tokens, piece, i);
  // "Gone grey" and "gone to the hut" deny nothing.
  if (hasTag(island, 'ends-it') && !closes(items, tokens, i)) return [];
  if (kind === 'after' && goesOn(items, tokens, piece, i)) return [];
  // "Bleeding from the nose, stopped" was there, and is no finding of none; a nose that is bent does not stop.
  if (
    kind === 'after' &&
    tokens.slice(piece.from, piece.to).some(({ word }) => word === 'stopped' || word === 'ceased') &&
    !mayStop(items, i)
  )
    return [];
  // "Ankle twisted and the pain stopped": only what can stop is over.
  const over = kind === 'after' && tokens.slice(piece.from, piece.to).some(({ word }) => word === 'stopped');
  const stopped = over ? pieceOf(items.slice(0, i).findLast((one) => hasRole(one, 'finding'))) : null;
  // "Pain with movement, none at rest": nothing of what was said before is denied.
  if (kind === 'after' && follows && isElsewhere(items, i)) return [];
  if (kind === 'after' && (isAtAnother(items, i) || isInAnotherPart(items, i))) return [];
  if (kind === 'after' && /^(elsewhere|anywhere)$/.test(tokens[piece.to]?.word ?? '')) return [];
  // "Not the left, the right knee" takes back a side and denies nothing of the other.
  const next = items[i + 1];
  if (kind === 'before' && hasRole(next, 'side') && !leadsToFinding(items, tokens, i + 1)) return [];
  const turned = kind === 'before' && next?.type === 'site' ? otherSideAfter(items, i + 1) : null;
  if (turned !== null)
    return [{ mark: { start: piece.from, end: piece.to, kind }, nouns: false }, stopAt(turned)];
  // "None loose": a "none" with an adjective straight after it and no finding before it denies what follows.
  const ahead = kind === 'after' && !follows && isAdjective(items[i + 1]);
  // "Has gone swollen": it is so now, and nothing is gone.
  if (ahead && tokens.slice(piece.from, piece.to).some(({ word }) => word === 'gone')) return [];
  const isOfEach = ahead || (kind === 'before' && hasTag(island, 'each'));
  const ownEnd = kind === 'before' ? endOfOwnVerb(items, tokens, i) : null;
  const end = isOfEach
    ? endOfEach(items, tokens, i)
    : (ownEnd ?? (kind === 'before' ? endOfOwnPulse(items, i) : null));
  return [
    ...(stopped === null ? [] : [stopAt(stopped.from)]),
    ...(isOfCare(items, i) ? [stopAt(breathOf(tokens, piece))] : []),
    {
      mark: { start: piece.from, end: piece.to, kind: ahead ? 'before' : kind },
      nouns: hasTag(island, 'nouns'),
      lack: hasTag(island, 'lack'),
    },
    ...(end === null ? [] : [stopAt(end)]),
  ];
}

// "Sling on the left arm, splint no": of care a "no" behind it denies its own breath.
const isOfCare = (items: readonly Item[], i: number): boolean =>
  marked(pieceOf(items[i]) as Piece, 'checked') && items.slice(0, i).some((item) => hasRole(item, 'care'));

const breathOf = (tokens: readonly Token[], { from }: Span): number =>
  tokens.slice(0, from).findLastIndex(({ pause }) => pause !== '') + 1;

// "No midline pain", "no left sided swelling": the side belongs to what is denied.
function leadsToFinding(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const at = items.findIndex((item, k) => k > i && !hasRole(item, 'attribute') && !hasRole(item, 'small'));
  const between = items.slice(i, Math.max(at, i));
  // "The right knee not the left is swollen": only the side is denied.
  const links = between.some((item) => isSmallItem(item, 'link'));
  // "No left radial pulse."
  const isThing = hasRole(items[at], 'finding') || isPulse(items[at]);
  return isThing && !links && !between.some((item) => isPaused(tokens, wordsOf(item)));
}

// "No right pedal pulse, strong left radial pulse": the next side's pulse is another, unless an "or" joins it.
function endOfOwnPulse(items: readonly Item[], i: number): number | null {
  if (!hasRole(items[i + 1], 'side') || !isPulse(items[i + 2])) return null;
  const own = items[i + 2];
  const next = items[i + 3];
  return own === undefined || next === undefined || isSmallItem(next, 'or') ? null : wordsOf(own).to;
}

const isPulse = (item: Item | undefined): boolean =>
  item?.type === 'piece' && item.piece.role === 'csm' && marked(item.piece, 'pulse');

// "Neck pain denied", "swelling denied, pain denied": what is denied stands before the word.
function isDeniedAtEnd(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const piece = pieceOf(items[i]);
  if (piece === null || piece.to - piece.from > 1 || tokens[piece.from]?.word !== 'denied') return false;
  const next = items[i + 1];
  return (
    next === undefined ||
    isPaused(tokens, piece) ||
    isSmallItem(next, 'join') ||
    // "Right wrist pain denied left wrist sore".
    (next.type === 'site' && isAdjective(items.slice(i + 2).find((item) => !isSmallItem(item, 'link')))) ||
    /^(by|no|not)$/.test(tokens[piece.to]?.word ?? '')
  );
}

function closes(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [piece, next] = [pieceOf(items[i]), items[i + 1]];
  if (piece === null || next === undefined || isPaused(tokens, piece)) return true;
  return isSmallItem(next, 'preposition') || phraseOf(next)?.led === true;
}

const STOPS: readonly string[] = [
  'pain',
  'swelling',
  'tenderness',
  'numbness',
  'tingling',
  'weakness',
  'fluid',
  'rash',
];

const mayStop = (items: readonly Item[], i: number): boolean => {
  const finding = pieceOf(items.slice(0, i).findLast((item) => hasRole(item, 'finding')));
  return finding === null || STOPS.some((one) => marked(finding, 'finding', one));
};

const NAMED = /^(the|his|her|my|that|this|it|he|she|they|we|i)$/;

// "No, the cut is on the cheek": what follows the breath is told anew, with its article.
const takesUpAnew = (items: readonly Item[], tokens: readonly Token[], i: number): boolean => {
  const [piece, next] = [pieceOf(items[i]), items[i + 1]];
  if (piece === null || next === undefined || !marked(piece, 'plain') || !isPaused(tokens, piece))
    return false;
  return NAMED.test(tokens[wordsOf(next).from]?.word ?? '');
};

/** True straight after a finding, or after the site that a finding led to ("swelling of the left knee negative"). */
function endsFinding(items: readonly Item[], i: number): boolean {
  const last = lastLoud(items, i);
  if (last?.type !== 'site') return hasRole(last, 'finding');
  return last.phrase.led && hasRole(lastLoud(items, items.indexOf(last)), 'finding');
}
