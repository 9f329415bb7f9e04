// "Correction, left thigh and left knee": several places said anew; each stands for one that was said, and the rest are added.

import type { FindingStatement } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Piece, Role } from '../../pieces/piece.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { sitesOf } from '../sites/sides.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { ownTarget } from './not-that.ts';

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'small', 'talk']);

/** The changes of a list of places alone in the place of the ones said last; null where it is none. */
export function placesAnew(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const before = talk.context.last.filter((one) => one.kind === 'finding');
  if (before.length === 0 || before.length !== talk.context.last.length) return null;
  if (!pieces.every(({ role }) => PLACES.has(role))) return null;
  const phrases = phrasesIn(itemsOf(talk, pieces));
  const refs = once(sitesOf(phrases, []));
  if (phrases.length < 2 || refs.length < 2 || refs.some(({ level }) => level !== null)) return null;
  const isSaidNow = (one: FindingStatement) => refs.some((ref) => isAt(one, ref));
  const fresh = refs.filter((ref) => !before.some((one) => isAt(one, ref)));
  const gone = placesIn(before.filter((one) => !isSaidNow(one)));
  if (fresh.length === 0 || gone.length > fresh.length) return null;
  return fresh.flatMap((ref, i): readonly Changed[] => {
    const was = gone[i];
    return before
      .filter((one) => isSamePlace(one, was ?? before[0]))
      .map((one) => (was === undefined ? added(one, ref) : moved(one, ref)));
  });
}

// "No, forearm, right forearm": one place, said again with its side.
const once = (refs: readonly SiteRef[]): readonly SiteRef[] =>
  refs.filter(
    (ref, i) =>
      !refs
        .slice(i + 1)
        .some((one) => one.site === ref.site && (ref.sideKnown !== 'spoken' || ref.side === one.side)),
  );

const moved = (one: FindingStatement, { site, side }: SiteRef): Changed => ({
  change: { change: 'site', site, ...(side === null ? {} : { side }) },
  target: { ...ownTarget(one), ...(one.side === null ? {} : { side: one.side }) },
});

function added(one: FindingStatement, { site, side }: SiteRef): Changed {
  const { kind, finding, present } = one;
  const statement = { kind, site, side, finding, present };
  const known = { finding: 'carried' as const, present: 'carried' as const };
  return {
    change: { change: 'statement', statement },
    target: ownTarget(statement),
    basis: { statement, known, doubt: [] },
  };
}

const isAt = (one: FindingStatement, ref: SiteRef): boolean =>
  one.site === ref.site && (ref.side === null || one.side === ref.side);

const isSamePlace = (one: FindingStatement, other: FindingStatement | undefined): boolean =>
  one.site === other?.site && one.side === other.side;

const placesIn = (said: readonly FindingStatement[]): readonly FindingStatement[] =>
  said.filter((one, i) => said.findIndex((other) => isSamePlace(other, one)) === i);
