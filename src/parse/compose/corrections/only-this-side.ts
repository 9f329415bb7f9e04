// "Both wrists deformed. Chest clear. Only the left": of what was said of both sides of a place, however long before, one side is kept. What
// was said in between is asked about, and nothing else is changed.

import type { Finding, Side, Site } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Piece, Role } from '../../pieces/piece.ts';
import { type Span, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { type Told, toldIn } from '../../told.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { otherSide } from '../sites/side.ts';
import { sideIn } from '../sites/side-in.ts';
import { plainSite } from '../sites/site-ref.ts';
import { bear, place, state, type Talk, textOf } from '../talk.ts';
import type { Changed } from './changes.ts';
import { change } from './correction.ts';
import { findingIn } from './said-anew.ts';

const ONLY =
  /^((no|nope|correction|actually|sorry|wait|well|oh|make that|it is|it was|that is|that was) )*(only|just)( (on|in|at))?( (the|his|her|my|their|your))? (left|right)\b(?!.*\b(left|right)\b)/;

const PARTS: ReadonlySet<Role> = new Set([
  'side',
  'site',
  'finding',
  'small',
  'talk',
  'negation',
  'answer',
  'correction',
]);

/** True where a clause says that only one side is so, and was read: narrowed, or kept in words where nothing fits. */
export function saysOnlyThisSide(talk: Talk, { pieces }: Clause): boolean {
  const span = spanned(pieces);
  const words = saidIn(talk.tokens, span.from, span.to);
  if (talk.context.asked !== null || !ONLY.test(words) || !pieces.every(({ role }) => PARTS.has(role)))
    return false;
  const side = sideOf(pieces);
  const named = namedIn(talk, pieces, side);
  if (side === null || named === null) return false;
  const pairs = pairsMeant(talk, named);
  if (pairs.length === 0) return keepInWords(talk, { named, side, span, words });
  narrow(talk, { pairs, side, span });
  return true;
}

const sideOf = (pieces: readonly Piece[]): 'left' | 'right' | null => {
  const side = sideIn(pieces.filter(({ role }) => role === 'side'))?.side ?? null;
  return side === 'left' || side === 'right' ? side : null;
};

interface Named {
  readonly site: Site | null;
  readonly finding: Finding | null;
}

/** The place and the finding that are named beside the side; null where there is more than one of either. */
function namedIn(talk: Talk, pieces: readonly Piece[], side: Side | null): Named | null {
  const { sites } = talk.context;
  const refs = pieces.some(({ role }) => role === 'site')
    ? phrasesIn(itemsOf(talk, pieces)).flatMap((phrase) => phrase.sites)
    : [];
  bear(talk, { sites });
  const [ref, ...others] = refs;
  const isPlain = ref === undefined || (ref.side === side && ref.parts.length === 0 && ref.level === null);
  if (others.length > 0 || !isPlain || pieces.filter(({ role }) => role === 'finding').length > 1)
    return null;
  const finding = findingIn(pieces);
  const hasFinding = pieces.some(({ role }) => role === 'finding');
  return hasFinding && finding === null ? null : { site: ref?.site ?? null, finding };
}

interface Pair {
  readonly told: Told;
  /** one statement of both, or one of each side */
  readonly asBoth: boolean;
}

/** What was said of both sides of the place that is named, or of the one that was told of last. */
function pairsMeant(talk: Talk, { site, finding }: Named): readonly Pair[] {
  const { context } = talk;
  const told = toldIn(context.found);
  const last = told.findLast((one) => one.side !== null && one.side !== 'midline');
  const at = site ?? last?.site;
  const mine = told.filter((one) => one.site === at && (finding === null || one.finding === finding));
  return mine.flatMap((one): readonly Pair[] => {
    // "No swelling of the knees. Left knee swollen … only the left": it is there on that side, and what was denied long before is not meant.
    if (!one.present && !isSaidLast(talk, one)) return [];
    if (one.side === 'both') return [{ told: one, asBoth: true }];
    const isSecond =
      one.side === 'right' &&
      mine.some(
        ({ side, finding, present }) => side === 'left' && finding === one.finding && present === one.present,
      );
    return isSecond ? [{ told: one, asBoth: false }] : [];
  });
}

const BETWEEN = 'Other things were said in between: is this side the only one?';

const DENIED = 'Is it there on the other side, or was that not looked at?';

function narrow(
  talk: Talk,
  {
    pairs,
    side,
    span,
  }: { readonly pairs: readonly Pair[]; readonly side: 'left' | 'right'; readonly span: Span },
): void {
  const other = otherSide(side) as Side;
  const isNext = pairs.every(({ told }) => isSaidLast(talk, told));
  const doubt = isNext ? [] : [BETWEEN];
  const changed = pairs.map(({ told: { site, finding, present }, asBoth }): Changed => {
    const target = { kind: 'finding' as const, site, finding };
    if (!asBoth) return { change: { change: 'strike' }, target: { ...target, side: other } };
    const statement = { kind: 'finding' as const, site, finding, side, present };
    const basis = { statement, known: {}, doubt: present ? doubt : [...doubt, DENIED] };
    return { change: { change: 'side', side }, target: { ...target, side: 'both' }, basis };
  });
  change(talk, changed, span);
  // What was struck carries no question of its own.
  if (!isNext && pairs.some(({ asBoth }) => !asBoth)) keep(talk, span, doubt);
  const places = pairs.map(({ told }) => told);
  const isTold = (kept: string): boolean =>
    places.some(({ site, finding }) => kept.startsWith(`${site} ${finding} `));
  const left = places.map(
    ({ site, finding, present }) => `${site} ${finding} ${side}${present ? '' : ' no'}`,
  );
  const [first] = places;
  bear(talk, {
    found: [...talk.context.found.filter((kept) => !isTold(kept)), ...left],
    ...(first === undefined
      ? {}
      : { sites: [{ ...plainSite(first.site, side), sideKnown: 'spoken' as const }] }),
  });
}

const isSaidLast = ({ context: { said, isSaidLast } }: Talk, told: Told): boolean =>
  isSaidLast &&
  said.some(
    (one) =>
      one.kind === 'finding' &&
      one.site === told.site &&
      one.finding === told.finding &&
      one.present === told.present &&
      (one.side === 'both') === (told.side === 'both'),
  );

interface Unfit {
  readonly named: Named;
  readonly side: Side;
  readonly span: Span;
  readonly words: string;
}

// "Left elbow swollen. Only the right": what it takes back nobody can tell. "Just the left arm" may as well say what is looked at, and what
// states something of its own is read as that.
function keepInWords(talk: Talk, { named, side, span, words }: Unfit): boolean {
  if (named.finding !== null || !/\bonly\b/.test(words)) return false;
  const isSaid = talk.context.last.some((one) => 'side' in one && one.side === side);
  if (named.site === null && isSaid) return false;
  keep(talk, span, ['Which of two sides is it that only one is meant of?']);
  return true;
}

function keep(talk: Talk, { from, to }: Span, doubt: readonly string[]): void {
  state(talk, [{ statement: { kind: 'note', text: textOf(talk, from, to) }, from, to, doubt }]);
  place(talk, { from, to });
}
