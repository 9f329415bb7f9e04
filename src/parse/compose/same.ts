// "Same on the right", "right arm the same": what was last said of one side, stated again of another place.

import { isPaired, type Side, type Statement } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { type Piece, type Role, readingOf, tagIn } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { toSayAgain } from './csm/checks.ts';
import { endOf } from './csm/limb-ends.ts';
import { itemsOf } from './exam/items.ts';
import { namedUpTo } from './exam/mind.ts';
import { isChatter } from './light.ts';
import { phrasesIn } from './sites/item.ts';
import type { SaidSide } from './sites/said-side.ts';
import { otherSide } from './sites/side.ts';
import { sideIn } from './sites/side-in.ts';
import { bear, type HowKnown, place, type Said, state, type Talk } from './talk.ts';

/** The piece that says "the same", where what was last said can be said again; null where it is mere talk. */
export function sameIn(talk: Talk, pieces: readonly Piece[]): Piece | null {
  const piece = pieces.find((one) => one.role === 'same' || readingOf(one, 'sides.again') !== null) ?? null;
  // "Right elbow swollen, same on the left": what is said again may stand in the same breath.
  const isSaidHere = pieces
    .slice(0, piece === null ? 0 : pieces.indexOf(piece))
    .some(({ role }) => role === 'finding' || role === 'csm');
  if (piece === null || (talk.context.last.length === 0 && !isSaidHere)) return null;
  if (piece.role === 'same' && readingOf(piece, 'sides.same') !== null) return piece;
  const before = pieces.slice(0, pieces.indexOf(piece));
  // "Both sides of the chest rise the same": they do as each other, and not as what was said before.
  if (before.at(-1)?.role === 'unknown') return null;
  if (sitesBefore(talk, before).length > 0) return piece;
  // A side alone before it: "right one the same"; with more words it is another place, which nobody can guess.
  const alone = before.every((one) => one.role === 'side' || isChatter(one));
  return alone && sideIn(before) !== null ? piece : null;
}

/** The sites said last before it, joined: "right lower and left lower, same". */
function sitesBefore(talk: Talk, pieces: readonly Piece[]): readonly SiteRef[] {
  const items = itemsOf(talk, pieces);
  const last = items.findLastIndex((one) => one.type === 'site');
  return last < 0 ? [] : namedUpTo(talk, items, last);
}

const PLACE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk', 'same']);

// "The palm is scraped and so is the left knee": another place than that of what was said, straight behind "the same".
function otherPlace(
  talk: Talk,
  pieces: readonly Piece[],
  piece: Piece,
  named: SaidSide | null,
): SiteRef | null {
  const [at, next] = [pieces.indexOf(piece), pieces[pieces.indexOf(piece) + 1]];
  if (next?.role !== 'site' || isPaused(talk.tokens, piece)) return null;
  // "Neck the same, skull": the place before it is the one.
  const before = pieces.slice(0, at).findLast(({ role }) => role !== 'small' && role !== 'talk');
  if (before !== undefined && PLACE.has(before.role)) return null;
  const [ref] = phrasesIn(itemsOf(talk, [next])).flatMap(({ sites }) => sites);
  if (ref === undefined || talk.context.last.some((one) => isAt(one, ref))) return null;
  return named === null || named === 'mirror' ? ref : { ...ref, side: named, sideKnown: 'spoken' };
}

/** States the last findings again of the side or the site that is named with `piece`; returns the pieces behind it that it took in. */
export function sameAgain(talk: Talk, pieces: readonly Piece[], piece: Piece): number {
  const before = pieces.slice(0, pieces.indexOf(piece) + 1);
  const named = tagIn(piece, 'sides.same', 'side') as SaidSide | null;
  const other = otherPlace(talk, pieces, piece, named);
  const sites = other === null ? sitesBefore(talk, before) : [other];
  const alone = named ?? (sites.length === 0 ? (sideIn(before)?.side ?? null) : null);
  const from = before.find(({ role }) => role === 'site' || role === 'side')?.from ?? piece.from;
  const to = (other === null ? null : pieces[pieces.indexOf(piece) + 1])?.to ?? piece.to;
  const known: HowKnown = {
    ...(sites.length === 0 ? { site: 'carried' as const } : {}),
    finding: 'carried',
    present: 'carried',
    ...(alone === 'mirror' ? { side: 'carried' as const } : {}),
  };
  // "Right foot same" is of all that was checked; "grip the same on the right" of that alone.
  const where = before.findLastIndex(({ role }) => role === 'side' || role === 'site');
  const isNamed =
    named === null && before.slice(where + 1).some(({ role }) => role === 'csm' || role === 'vital');
  const again = isNamed ? talk.context.last : toSayAgain(talk.context.last, talk.context.checks);
  const places: readonly (SiteRef | null)[] = sites.length === 0 ? [null] : sites;
  const said = places.flatMap((site) =>
    again.flatMap((statement): readonly Said[] => {
      const said =
        site === null || (other === null && isAt(statement, site))
          ? onSide(statement, named ?? site?.side ?? alone)
          : atSite(statement, site);
      return said === null ? [] : [{ statement: said, known, from, to }];
    }),
  );
  if (said.length === 0) return 0;
  state(talk, said);
  // A part that stands before the place is not said again with it, and so must not be lost: it becomes a note.
  const spoken = before.filter(({ role, from: at }) => PLACE.has(role) && (role !== 'part' || at >= from));
  place(talk, ...spoken, piece);
  const turned = said.map(({ statement }) => statement).find(({ kind }) => kind === 'finding');
  if (turned?.kind === 'finding')
    bear(talk, {
      sites: [{ site: turned.site, side: turned.side, sideKnown: 'carried', parts: [], level: null }],
    });
  if (other === null) return 0;
  place(talk, ...pieces.slice(pieces.indexOf(piece), pieces.indexOf(piece) + 2));
  return 1;
}

const isAt = (statement: Statement, ref: SiteRef): boolean =>
  (statement.kind === 'finding' && statement.site === ref.site) ||
  (statement.kind === 'csm' && statement.site === endOf(ref.site));

function onSide(statement: Statement, named: SaidSide | null): Statement | null {
  if (statement.kind !== 'finding' && statement.kind !== 'csm') return null;
  if (!isPaired(statement.site) && statement.side === null) return null;
  const side: Side | null = named === 'mirror' || named === null ? otherSide(statement.side) : named;
  // What was said of both sides, or of none, has no other side to be the same on.
  return side === null || side === 'both' || side === statement.side ? null : { ...statement, side };
}

// A finding is said again of another site ("elbow no swelling, wrist the same"); a limb's check is not.
const atSite = (statement: Statement, ref: SiteRef): Statement | null =>
  statement.kind === 'finding' ? { ...statement, site: ref.site, side: ref.side } : null;
