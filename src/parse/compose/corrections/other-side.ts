// "Right knee is swollen." "Hang on, that's the left.": where the side is all that is put right, what was said of that place without a
// break is of the other side, and what was said of the same limb before is asked about.

import { isWithin, type Site } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { type SideAnew, sideAnew } from '../../clauses/side-anew.ts';
import type { CorrectionTarget } from '../../frame.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { isNear, type Sided } from '../../run.ts';
import { spanned } from '../../span.ts';
import { unique } from '../../unique.ts';
import { endOf } from '../csm/limb-ends.ts';
import { otherSide } from '../sites/side.ts';
import { bear, isPlaced, type Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { change } from './correction.ts';

const MOODS: ReadonlySet<Clause['mood']> = new Set(['statement', 'answer', 'correction']);

type OneSide = 'left' | 'right';

/** Turns the side of what was said last where a clause tells no more than that it was the other one; false where it says more or else. */
export function turnsToOtherSide(talk: Talk, { pieces, mood }: Clause): boolean {
  const { run, asked } = talk.context;
  const group = run.at(-1) ?? [];
  const last = group.at(-1);
  if (!MOODS.has(mood) || last === undefined || (asked !== null && !standsBehind(talk, pieces))) return false;
  const anew = sideAnew(pieces, talk.tokens);
  if (anew === null || !(mayTurn(anew) || isSideAsked(talk))) return false;
  const side = (anew.side === 'mirror' ? otherSide(last.side) : anew.side) as OneSide;
  if (side === last.side) return false;
  const isMeant = (one: Sided): boolean =>
    anew.site === null ? isNear(one.site, last.site) || group.includes(one) : isOf(one, anew.site);
  const meant = (isOfLast(anew) ? [group] : run).map((one) => one.filter(isMeant));
  if (meant.every((group) => group.length === 0)) return false;
  const doubt = doubtOf(talk, anew, side);
  const changes = meant.flatMap((group) => turned(group, side, anew, doubt));
  // "No numbness in that hand. Hang on, that's the left wrist": the hand may have its side from the wrist.
  const others = isOfLast(anew) ? [] : run.flat().filter((one) => !isMeant(one));
  const named = anew.site ?? last.site;
  change(talk, [...changes, ...others.flatMap((one) => asksOf(one, named))], spanned(pieces));
  turnStanding(talk, side, last);
  return true;
}

// "Is that the left or the right?" "Right.": which side it was, was asked of what was said.
const isSideAsked = ({ context: { question, asking } }: Talk): boolean =>
  asking && question !== null && ASKS_SIDE.test(question.toLowerCase());

const ASKS_SIDE =
  /^((hang on|hold on|wait|sorry|and|so|okay|oh),? )*((is|was) (it|that|this) (on )?(the |his |her )?(left|right)( one| side)?( or (the )?(left|right)( one| side)?)?|(the )?(left|right) or (the )?(left|right)|which (one|side|[a-z]+)( (is|was) (it|that))?)$/;

// "Correction, right knee" is of what was said last alone; "that's the right" is of all that was said there.
const isOfLast = ({ side, hedged, points }: SideAnew): boolean => side !== 'mirror' && !hedged && !points;

// "Tell me if it hurts." "Left knee." "No." "Hang on, that's the right.": no answer of that question, which goes on of the other side.
const standsBehind = ({ context: { asked } }: Talk, [first]: readonly Piece[]): boolean =>
  asked?.about === 'findings' && asked.standing === true && first !== undefined && !marked(first, 'plain');

function turnStanding(talk: Talk, side: OneSide, last: Sided): void {
  const { asked } = talk.context;
  if (asked?.about !== 'findings') return;
  const sites = asked.sites.map((ref) => (isNear(ref.site, last.site) ? { ...ref, side } : ref));
  bear(talk, { asked: { ...asked, sites }, askedBefore: { ...asked, sites } });
}

// "Other knee" alone goes on to it, and so does "the left one".
const mayTurn = ({ side, site, turns, points, late, wrong }: SideAnew): boolean =>
  turns ? wrong || points || late || site !== null || side === 'mirror' : points;

/** True for "leg" of what was said of the thigh, and for "toes" of the foot that was checked. */
export const isOf = (one: Sided, named: Site): boolean =>
  isWithin(one.site, named) || (one.kind === 'csm' && endOf(named) === one.site);

function doubtOf(
  talk: Talk,
  { side, site, turns, hedged, points, wrong }: SideAnew,
  to: OneSide,
): readonly string[] {
  const last = talk.context.said.at(-1);
  const isParted = last !== undefined && !('site' in last) && last.kind !== 'care';
  const isBare = !wrong && side === 'mirror' && !points && (site === null || hedged);
  return [
    ...(wrong ? [`It was called the wrong side: is it the ${to} one?`] : []),
    ...(isBare || ((!turns || isSideAsked(talk)) && side !== 'mirror')
      ? ['Was the side of this put right?']
      : []),
    ...(isParted ? ['Other things were said in between: was this meant?'] : []),
  ];
}

// Those of one group that have the same place are changed as one.
function turned(
  group: readonly Sided[],
  side: OneSide,
  anew: SideAnew,
  doubt: readonly string[],
): readonly Changed[] {
  const known = anew.side === 'mirror' ? ({ side: anew.wrong ? 'inferred' : 'carried' } as const) : {};
  return unique(
    group.map((one) => ({ one, target: targetOf(one) })),
    ({ target }) => target,
  ).map(({ one, target }) => ({
    change: { change: 'side', side },
    target,
    basis: { statement: one, known, doubt },
  }));
}

/** True for such a clause where it put nothing right: what it took back nobody can tell, and its words are kept. */
export function isSideInVain(talk: Talk, { pieces, mood }: Clause): boolean {
  const anew = MOODS.has(mood) ? sideAnew(pieces, talk.tokens) : null;
  if (anew === null || !anew.turns || !mayTurn(anew) || pieces.some((piece) => isPlaced(talk, piece)))
    return false;
  return talk.context.run.at(-1)?.at(-1)?.side !== anew.side;
}

/** What means that very entry. */
export const targetOf = (one: Sided): CorrectionTarget => ({
  kind: one.kind,
  site: one.site,
  ...(one.kind === 'finding' ? { finding: one.finding } : {}),
  ...(one.kind === 'care' ? { care: one.care } : {}),
  side: one.side,
});

// Only the last place was meant, and what was said of the limb before may have been of the other one too.
function asksOf(one: Sided, named: Site): readonly Changed[] {
  if (one.kind !== 'finding') return [];
  const doubt = [
    `The side of the ${named.replace('-', ' ')} was put right behind this: which side is this on?`,
  ];
  return [
    {
      change: { change: 'statement', statement: one },
      target: targetOf(one),
      basis: { statement: one, known: {}, doubt },
    },
  ];
}
