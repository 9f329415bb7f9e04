// Composes a stretch of examination talk: findings, circulation, sensation and motion, care, and the sites looked at.

import type { Piece, Role } from '../../pieces/piece.ts';
import { careOf } from '../care/care.ts';
import { csmOf } from '../csm/csm.ts';
import { csmSaid } from '../csm/csm-statement.ts';
import type { FoundCsm } from '../csm/found-csm.ts';
import { findingsSaid } from '../findings/finding-statement.ts';
import { findingsOf } from '../findings/findings.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import { place, state, type Talk } from '../talk.ts';
import { itemsOf } from './items.ts';
import { rememberSites } from './mind.ts';
import { statePainScores } from './pain-scores.ts';
import { withoutProgress } from './progress.ts';
import { stateVisits } from './visits.ts';

/** States what a stretch of talk says of the examination, and bears its sites in mind. */
export function stateExam(talk: Talk, pieces: readonly Piece[]): void {
  const items = itemsOf(talk, pieces);
  const mind = talk.context.sites;
  const read = findingsOf(items, talk.tokens, mind, pieces.at(-1)?.to ?? 0);
  const { usedSites, reach } = read;
  const found = withoutProgress(talk, read.found);
  const used = new Set(usedSites);
  for (const group of groupsOf(found.filter((one) => one.polarity !== 'possible'))) {
    state(talk, group.flatMap(findingsSaid));
    for (const one of group) place(talk, ...one.spans);
  }
  statePainScores(talk, items, found, used);
  const csm = csmOf(items, talk.tokens, mind, reach);
  for (const index of csm.usedSites) used.add(index);
  for (const one of csm.found) stateCsm(talk, one);
  const care = careOf(talk, items, mind, reach);
  for (const index of care.usedSites) used.add(index);
  state(talk, care.wounds);
  for (const { statements, from, to, spans } of care.found) {
    state(
      talk,
      statements.map((one) => ({ ...one, from, to })),
    );
    place(talk, ...spans);
  }
  rememberSites(talk, items, used, found);
  stateVisits(talk, items, used);
}

/** Neighbours that were said of the same sites, and so as one. */
function groupsOf(found: readonly FoundFinding[]): readonly (readonly FoundFinding[])[] {
  const groups: FoundFinding[][] = [];
  for (const one of found) {
    const last = groups.at(-1);
    if (last !== undefined && JSON.stringify(last[0]?.refs) === JSON.stringify(one.refs)) last.push(one);
    else groups.push([one]);
  }
  return groups;
}

function stateCsm(talk: Talk, one: FoundCsm): void {
  const { from, to, refillSeconds: seconds } = one;
  if (seconds !== null) {
    state(talk, [{ statement: { kind: 'vital', vital: 'capillary-refill', value: { seconds } }, from, to }]);
    place(talk, ...one.spans);
    return;
  }
  if (one.present === null || one.ends.length === 0) return;
  state(talk, csmSaid(one));
  // What stands between and says something of its own is none of it: "squeeze is good but he can't spread them on the left".
  const between = talk.clauses.flatMap(({ pieces }) =>
    pieces.filter((piece) => piece.from >= from && piece.to <= to && !OWN.has(piece.role)),
  );
  place(talk, ...one.spans, ...between);
}

const OWN: ReadonlySet<Role> = new Set(['unknown', 'mood', 'finding', 'history', 'vital', 'care', 'csm']);
