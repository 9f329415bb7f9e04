// What sites leave behind when nothing was said of them: they were looked at, and a side alone turns the ones in mind.

import { isPaired } from '../../../terms/index.ts';
import { isSmall, marked, type Piece, type Role, tagIn } from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { hasRole, type Item, pieceOf, wordsOf } from '../sites/item.ts';
import { isExtent } from '../sites/near-site.ts';
import { isMirror } from '../sites/said-side.ts';
import { knownSide, otherSide } from '../sites/side.ts';
import { sideIn } from '../sites/side-in.ts';
import { withSides } from '../sites/sides.ts';
import { isAskedWhich } from '../sites/tells-side.ts';
import { bear, place, type Said, state, type Talk } from '../talk.ts';
import { isStruck, stateStruck } from './struck.ts';

/** The visits of the sites named in a stretch that are not among the `used`; their words have found their place. */
export function visitsOf(talk: Talk, items: readonly Item[], used: ReadonlySet<number>): readonly Said[] {
  return items.flatMap((item, i): readonly Said[] => {
    if (item.type !== 'site' || used.has(i)) return [];
    const { from, to } = item.phrase;
    place(talk, item.phrase);
    return withSides(item.phrase, talk.context.sites).map(({ site, side, sideKnown }) => ({
      statement: { kind: 'visit', site, side },
      known: knownSide(sideKnown),
      from,
      to,
    }));
  });
}

/** States the visits of a stretch, or turns the site in mind where only a side was said. */
export function stateVisits(talk: Talk, items: readonly Item[], used: ReadonlySet<number>): void {
  const struck = items.filter((item, i) => item.type === 'site' && !used.has(i) && isStruck(talk, item));
  for (const item of struck) stateStruck(talk, item);
  const passed = items.flatMap((item, i) =>
    item.type === 'site' &&
    !used.has(i) &&
    (struck.includes(item) ||
      isPassedBy(items, i) ||
      isLeftAlone(talk, items) ||
      (used.size === 0 && isOfSomethingElse(talk, items, i)) ||
      (used.size > 0 && isExtent(items, talk.tokens, i)))
      ? [i]
      : [],
  );
  state(talk, visitsOf(talk, items, new Set([...used, ...passed])));
  turn(talk, items);
}

// "Her ear ring is missing", "the toe of the boot is cut": the place is only part of another thing's name, and was not looked
// at. The words are kept as a note.
function isOfSomethingElse({ tokens, clauses }: Talk, items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.type !== 'site') return false;
  const { from, to } = wordsOf(item);
  const clause = clauses.find(({ pieces }) => pieces.some((piece) => piece.from === from));
  if (clause?.mood !== 'statement' || tokens[to - 1]?.pause !== '') return false;
  const thing = clause.pieces.find((piece) => piece.from >= to && piece.role === 'unknown');
  if (thing === undefined) return false;
  if (thing.from > to) return /^of (the|a|an|this|that)$/.test(saidIn(tokens, to, thing.from));
  return !isPaused(tokens, thing) && /^(is|are|was|were|needs)$/.test(tokens[thing.to]?.word ?? '');
}

const SAYING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history']);

// "I have not looked at the back", "not the abdomen yet", "still to do the pelvis": nobody looked there, and the words are
// kept as a note.
function isPassedBy(items: readonly Item[], i: number): boolean {
  const unseen = items.some((item) => isMarked(item, 'unseen') || isMarked(item, 'mood', 'later'));
  if (unseen) return true;
  const before = items.slice(0, i);
  const no = before.findLastIndex((item) => denies(pieceOf(item)));
  return no >= 0 && !before.slice(no + 1).some((item) => SAYING.has(pieceOf(item)?.role ?? 'small'));
}

// "Left the pelvis alone".
function isLeftAlone({ tokens }: Talk, items: readonly Item[]): boolean {
  const [first, last] = [items[0], items.at(-1)];
  if (first === undefined || last === undefined) return false;
  return /\b(left|leave|leaving|let)\b.*\balone\b/.test(
    saidIn(tokens, wordsOf(first).from, wordsOf(last).to),
  );
}

const isMarked = (item: Item, key: string, value?: string): boolean => {
  const piece = pieceOf(item);
  return piece !== null && marked(piece, key, value);
};

const DENIALS: readonly string[] = ['before', 'possible-before'];

const denies = (piece: Piece | null): boolean =>
  piece !== null &&
  (piece.role === 'negation' || piece.role === 'answer') &&
  (DENIALS.includes(tagIn(piece, 'negation', 'negation') ?? '') || marked(piece, 'except'));

const TURNING: ReadonlySet<Role> = new Set(['side', 'small', 'talk', 'intention', 'mood', 'negation']);

// "Now the other side", "starting on the left".
function turn(talk: Talk, items: readonly Item[]): void {
  const pieces = items.flatMap((item) => pieceOf(item) ?? []);
  if (
    pieces.length < items.length ||
    !pieces.every((piece) => TURNING.has(piece.role) || isSmall(piece, 'person'))
  )
    return;
  const side = pieceOf(items.find((item) => hasRole(item, 'side')));
  const mirrors = pieces.some(isMirror);
  if (!mirrors && (side === null || (side.weak && !isAskedWhich(talk, pieces)))) return;
  const named = mirrors || side === null ? null : (sideIn([side])?.side ?? null);
  const sites = talk.context.sites.map((ref) => ({
    ...ref,
    side: isPaired(ref.site) ? (named ?? otherSide(ref.side)) : ref.side,
    sideKnown: 'carried' as const,
  }));
  if (!sites.some(({ site }) => isPaired(site))) return;
  bear(talk, { sites });
  place(talk, ...pieces);
  // "The right one": it is that one that is looked at now.
  const span = spanned(pieces);
  state(
    talk,
    sites
      .filter((ref) => isPaired(ref.site))
      .map(({ site, side }) => ({
        statement: { kind: 'visit', site, side },
        known: { site: 'carried', ...(named === null ? { side: 'carried' as const } : {}) },
        ...span,
      })),
  );
}
