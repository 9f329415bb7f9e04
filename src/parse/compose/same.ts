// "Same on the right", "right arm the same": what was last said of one side, stated again of another place.

import { isPaired, type Side, type Statement } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { tagOf } from '../islands/island.ts';
import { type Piece, readingOf } from '../pieces/piece.ts';
import { siteGroup } from './attach.ts';
import { endOf } from './csm.ts';
import { itemsOf } from './exam.ts';
import { sideIn } from './side-in.ts';
import { shareSides, withSides } from './sides.ts';
import { bear, type HowKnown, otherSide, place, type Said, state, type Talk } from './talk.ts';

/** The piece that says "the same", where what was last said can be said again; null where it is mere talk. */
export function sameIn(talk: Talk, pieces: readonly Piece[]): Piece | null {
  const piece = pieces.find((one) => one.role === 'same' || readingOf(one, 'sides.again') !== null) ?? null;
  if (piece === null || talk.context.last.length === 0) return null;
  if (piece.role === 'same' && readingOf(piece, 'sides.same') !== null) return piece;
  const before = pieces.slice(0, pieces.indexOf(piece));
  if (sitesBefore(talk, before).length > 0) return piece;
  // A side alone before it: "right one the same"; with more words it is another place, which nobody can guess.
  const alone = before.every(({ role }) => role === 'side' || role === 'small' || role === 'talk');
  return alone && sideIn(before) !== null ? piece : null;
}

/** The sites said last before it, joined: "right lower and left lower, same". */
function sitesBefore(talk: Talk, pieces: readonly Piece[]): readonly SiteRef[] {
  const items = itemsOf(talk, pieces);
  const last = items.findLastIndex((one) => one.type === 'site');
  if (last < 0) return [];
  return shareSides(
    siteGroup(items, talk.tokens, last).flatMap((index) => {
      const item = items[index];
      return item?.type === 'site' ? withSides(item.phrase, talk.context.sites) : [];
    }),
  );
}

/** States the last findings again of the side or the site that is named with `piece`. */
export function sameAgain(talk: Talk, pieces: readonly Piece[], piece: Piece): void {
  const before = pieces.slice(0, pieces.indexOf(piece) + 1);
  const island = readingOf(piece, 'sides.same');
  const named = island === null ? null : (tagOf(island, 'side') as Side | 'mirror' | null);
  const sites = sitesBefore(talk, before);
  const alone = named ?? (sites.length === 0 ? (sideIn(before)?.side ?? null) : null);
  const from = before.find(({ role }) => role === 'site' || role === 'side')?.from ?? piece.from;
  const known: HowKnown = {
    ...(sites.length === 0 ? { site: 'carried' as const } : {}),
    finding: 'carried',
    present: 'carried',
    ...(alone === 'mirror' ? { side: 'carried' as const } : {}),
  };
  const places: readonly (SiteRef | null)[] = sites.length === 0 ? [null] : sites;
  const said = places.flatMap((site) =>
    talk.context.last.flatMap((statement): Said[] => {
      const again =
        site === null || sameSite(statement, site)
          ? onSide(statement, named ?? site?.side ?? alone)
          : atSite(statement, site);
      return again === null ? [] : [{ statement: again, known, from, to: piece.to }];
    }),
  );
  state(talk, said);
  if (said.length > 0) for (const one of before) place(talk, one);
  const turned = said.flatMap(({ statement }) =>
    statement.kind === 'finding' ? [{ site: statement.site, side: statement.side }] : [],
  );
  const first = turned[0];
  if (first !== undefined)
    bear(talk, { sites: [{ ...first, sideKnown: 'carried', parts: [], level: null }] });
}

const sameSite = (statement: Statement, ref: SiteRef): boolean =>
  (statement.kind === 'finding' && statement.site === ref.site) ||
  (statement.kind === 'csm' && statement.site === endOf(ref.site));

function onSide(statement: Statement, named: Side | 'mirror' | null): Statement | null {
  if (statement.kind !== 'finding' && statement.kind !== 'csm') return null;
  if (!isPaired(statement.site) && statement.side === null) return null;
  const side = named === 'mirror' || named === null ? otherSide(statement.side) : named;
  // What was said of both sides, or of none, has no other side to be the same on.
  return side === null || side === 'both' || side === statement.side ? null : { ...statement, side };
}

// Only what was not there is said again of another site: "elbow no swelling, wrist the same".
const atSite = (statement: Statement, ref: SiteRef): Statement | null =>
  statement.kind === 'finding' ? { ...statement, site: ref.site, side: ref.side } : null;
