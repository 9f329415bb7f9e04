// The sites that a stretch of talk leaves in mind: those named last, on the side said last, else those of its last finding.

import type { SiteRef } from '../../context.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import { type Item, phrasesAt, wordsOf } from '../sites/item.ts';
import { sitesOf } from '../sites/sides.ts';
import { groupUpTo } from '../sites/site-group.ts';
import { wholeSite } from '../sites/site-ref.ts';
import { bear, type Talk } from '../talk.ts';

/** Bears the sites of a stretch in mind; `used` are the sites that something was said of. */
export function rememberSites(
  talk: Talk,
  items: readonly Item[],
  used: ReadonlySet<number>,
  found: readonly FoundFinding[],
): void {
  const last = items.findLastIndex((item) => item.type === 'site');
  const homes = used.size === 0 ? (found.at(-1)?.refs ?? []) : [];
  const refs = last >= 0 ? onSideSaidLast(namedUpTo(talk, items, last), items[last], found) : homes;
  if (refs.length > 0) bear(talk, { sites: refs.map(wholeSite) });
}

/** "Knees, left one fine, right one swollen": what is said next is said of the right one. */
function onSideSaidLast(
  named: readonly SiteRef[],
  last: Item | undefined,
  found: readonly FoundFinding[],
): readonly SiteRef[] {
  const said = found.at(-1);
  if (last === undefined || said === undefined || !said.sideSpoken || said.piece.from < wordsOf(last).to)
    return named;
  const isSame = said.refs.every(({ site }) => named.some((one) => one.site === site));
  return isSame && said.refs.length > 0 ? said.refs : named;
}

/** The sites named together up to the site item at `last`. */
export const namedUpTo = (talk: Talk, items: readonly Item[], last: number): readonly SiteRef[] =>
  sitesOf(phrasesAt(items, groupUpTo(items, talk.tokens, last)), talk.context.sites);
