// Joins side, part, site and level of a clause into site phrases: "the front of the left thigh", "ribs five on the right".

import { regionOf } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { type Piece, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import type { Item } from './item.ts';
import { lendSides } from './lend-sides.ts';
import { joinNested } from './nested-sites.ts';
import { quadrantAt } from './quadrant.ts';
import { joinRanges } from './ranges.ts';
import { sitePhrase } from './site-phrase.ts';
import { leadOf, reachBack, reachOn } from './site-reach.ts';

/** The clause's pieces with site phrases joined. `mind` is the sites in mind. */
export function joinSites(
  spoken: readonly Piece[],
  tokens: readonly Token[],
  mind: readonly SiteRef[] = [],
): readonly Item[] {
  const pieces = withoutCounted(patientsOwn(spoken, tokens), tokens);
  let belly = mind.some(({ site }) => regionOf(site) === 'abdomen');
  const items: Item[] = [];
  let used = 0;
  const upTo = (end: number) => {
    for (const piece of pieces.slice(used, end)) items.push({ type: 'piece', piece });
  };
  for (let i = 0; i < pieces.length; i = Math.max(i + 1, used)) {
    const quadrant = belly ? quadrantAt(pieces, tokens, i) : null;
    if (quadrant !== null) {
      upTo(i);
      items.push({ type: 'site', phrase: quadrant });
      used = i + 2;
      continue;
    }
    const site = pieces[i];
    if (site?.role !== 'site') continue;
    const start = reachBack(pieces, tokens, i, used);
    const end = reachOn(pieces, tokens, i);
    upTo(start);
    const lead = leadOf(pieces, tokens, start);
    const phrase = sitePhrase(pieces.slice(start, end), site, lead, tokens);
    items.push({ type: 'site', phrase });
    belly = phrase.sites.some((one) => regionOf(one.site) === 'abdomen');
    used = end;
  }
  upTo(pieces.length);
  return joinRanges(lendSides(joinNested(items, tokens), tokens), tokens);
}

// "Soft in three quadrants": which ones it does not say.
const withoutCounted = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.map((piece, i) => {
    const count = pieces[i - 1];
    const isCounted = count?.role === 'figure' && !isPaused(tokens, count);
    return isCounted && (tagIn(piece, 'sites', 'site') ?? '').includes('+')
      ? { ...piece, role: 'unknown', islands: [] }
      : piece;
  });

// "The patient's right, my left": sides are always the patient's, so another's is left out.
function patientsOwn(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const says = (piece: Piece, owner: string): boolean =>
    piece.role === 'side' && tokens.slice(piece.from, piece.to).some(({ word }) => word === owner);
  return pieces.some((piece) => says(piece, 'patient'))
    ? pieces.filter((piece) => !says(piece, 'my') || says(piece, 'patient'))
    : pieces;
}
