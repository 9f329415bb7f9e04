// Correcting where: another side, another site, the other slots kept.

import { isPaired, regionOf, type Side, type Site, type Statement } from '../../terms/index.ts';
import type { Entry } from '../entry.ts';
import { statementOf } from '../statement-of.ts';
import { type Outcome, SAME, SENSELESS } from './outcome.ts';

/** The entry's statement with another side. */
export function changeSide(entry: Entry, side: Side): Outcome {
  if (!('site' in entry || (entry.kind === 'care' && entry.side !== undefined))) return SENSELESS;
  if (entry.side === side && entry.known?.side === undefined) return SAME;
  return { kind: 'changed', statement: { ...statementOf(entry), side } as Statement, spoken: ['side'] };
}

/**
 * The entry's statement at another site. A side that was not said anew is kept where the new site has two, and shown
 * as carried; a level (a vertebra, a rib) or a digit belongs to the old site and goes.
 */
export function changeSite(entry: Entry, site: Site, side?: Side): Outcome {
  const statement = statementOf(entry);
  switch (statement.kind) {
    case 'finding': {
      const { level: _old, ...kept } = statement;
      return placed(entry, { ...kept, site, side: sideAt(site, statement.side, side) }, side);
    }
    case 'csm': {
      if (site !== 'hand' && site !== 'foot') return SENSELESS;
      const { digit: _old, ...kept } = statement;
      return placed(entry, { ...kept, site, side: sideAt(site, statement.side, side) }, side);
    }
    case 'visit':
      return placed(entry, { ...statement, site, side: sideAt(site, statement.side, side) }, side);
    case 'care':
      return placed(entry, { ...statement, site, side: sideAt(site, statement.side ?? null, side) }, side);
    default:
      return SENSELESS;
  }
}

const sideAt = (site: Site, before: Side | null, said?: Side): Side | null =>
  said ?? (isPaired(site) ? before : null);

type Placed = Statement & { readonly site?: Site; readonly side?: Side | null };

function placed(entry: Entry, statement: Placed, said?: Side): Outcome {
  const same = 'site' in entry && entry.site === statement.site && entry.side === statement.side;
  if (same && entry.known?.site === undefined) return SAME;
  const carried = [
    ...(said === undefined && statement.side !== null && statement.side !== undefined ? ['side'] : []),
    ...('part' in statement && statement.part !== undefined ? ['part'] : []),
  ];
  const spoken = said === undefined ? ['site'] : ['site', 'side'];
  return { kind: 'changed', statement, spoken, carried, ...doubtOf(entry, statement) };
}

/** A slip of the tongue seldom leaves the region; a correction that does may have meant an earlier entry. */
function doubtOf(entry: Entry, { site }: Placed): { readonly doubt?: readonly string[] } {
  const before = 'site' in entry ? entry.site : undefined;
  if (before === undefined || site === undefined || regionOf(before) === regionOf(site)) return {};
  return { doubt: [`moved by a correction from another region (${before}): was that meant?`] };
}
