// Correcting where: another side, another site, the other slots kept.

import type { Change } from '../../parse/frame.ts';
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

type SiteChange = Extract<Change, { change: 'site' }>;

/**
 * The entry's statement at another site. A side that was not said anew is kept where the new site has two, and shown
 * as carried; a level (a vertebra, a rib) or a digit belongs to the old site and goes with it.
 */
export function changeSite(entry: Entry, change: SiteChange): Outcome {
  const statement = statementOf(entry);
  const { site, level } = change;
  switch (statement.kind) {
    case 'finding': {
      const { level: before, ...kept } = statement;
      const now = level ?? (site === statement.site ? before : undefined);
      const side = sideAt(change, statement.side);
      return placed(entry, { ...kept, site, side, ...(now === undefined ? {} : { level: now }) }, change);
    }
    case 'csm': {
      if (site !== 'hand' && site !== 'foot') return SENSELESS;
      const { digit, ...kept } = statement;
      const now = site === statement.site && digit !== undefined ? { digit } : {};
      return placed(entry, { ...kept, ...now, site, side: sideAt(change, statement.side) }, change);
    }
    case 'visit':
      return placed(entry, { ...statement, site, side: sideAt(change, statement.side) }, change);
    case 'care':
      return placed(entry, { ...statement, site, side: sideAt(change, statement.side ?? null) }, change);
    default:
      return SENSELESS;
  }
}

const sideAt = ({ site, side }: SiteChange, before: Side | null): Side | null =>
  side ?? (isPaired(site) ? before : null);

type Placed = Statement & { readonly site?: Site; readonly side?: Side | null };

function placed(entry: Entry, statement: Placed, { side: said }: SiteChange): Outcome {
  const levelOf = (one: object): unknown => ('level' in one ? one.level : undefined);
  const same = 'site' in entry && entry.site === statement.site && entry.side === statement.side;
  if (same && levelOf(entry) === levelOf(statement) && entry.known?.site === undefined) return SAME;
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
