// "Left wrist, six out of ten" is how bad the pain is there; with no site it is the pain score.

import { hasTag } from '../../islands/island.ts';
import { figureIn, type Piece } from '../../pieces/piece.ts';
import { around, isPaused } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import { hasRole, type Item, phraseOf, phrasesIn, pieceOf } from '../sites/item.ts';
import { withSides } from '../sites/sides.ts';
import { plainSite } from '../sites/site-ref.ts';
import { place, state, type Talk, timeOf } from '../talk.ts';
import { isBefore } from '../vitals/before.ts';
import { vitalOf } from '../vitals/vital.ts';
import { BOUNDS, isWithin } from '../vitals/vital-read.ts';

/** States the pain scores that no finding took; a site that one takes is put among the `used`. */
export function statePainScores(
  talk: Talk,
  items: readonly Item[],
  found: readonly FoundFinding[],
  used: Set<number>,
): void {
  for (const piece of items.flatMap((item) => pieceOf(item) ?? [])) {
    const [island] = piece.islands;
    if (island?.rule !== 'vitals.pain-score') continue;
    if (countsDigits(talk, items, piece)) continue;
    // "Pain, a two inch cut": after "a" a number is a score only where nothing is counted in it.
    if (hasTag(island, 'alone') && !endsThere(talk, items, piece)) continue;
    if (found.some((one) => one.spans.some((span) => span.from === piece.from))) continue;
    const pieces = items.flatMap((item) => pieceOf(item) ?? []);
    // "Pain was eight out of ten initially": how bad it is now nobody said.
    if (isBefore(talk, pieces, pieces.indexOf(piece)) && timeOf(talk, piece) === undefined) continue;
    const read = vitalOf(island);
    if (read === null || read.statement.vital !== 'pain-score') continue;
    const at = items.findIndex((item) => item.type === 'site');
    const phrase = used.has(at) ? null : phraseOf(items[at]);
    if (phrase === null) {
      state(talk, [{ ...read, from: piece.from, to: piece.to }]);
      place(talk, piece);
      continue;
    }
    used.add(at);
    const { score } = read.statement.value;
    state(
      talk,
      withSides(phrase, talk.context.sites).map(({ site, side }) => ({
        statement: findingStatement('pain', plainSite(site, side), score > 0, { severity: score }),
        ...around([piece, phrase]),
      })),
    );
    place(talk, piece, phrase);
  }
  stateElliptic(talk, items, used);
}

// "Fingers ten of ten moving" counts them.
const countsDigits = ({ tokens }: Talk, items: readonly Item[], { from, to }: Piece): boolean =>
  /^\w+ of (ten|10)$/.test(saidIn(tokens, from, to)) &&
  phrasesIn(items).some(({ sites }) => sites.some(({ site }) => site === 'fingers' || site === 'toes'));

const endsThere = (talk: Talk, items: readonly Item[], piece: Piece): boolean => {
  const next = items[items.findIndex((item) => pieceOf(item) === piece) + 1];
  return next === undefined || isPaused(talk.tokens, piece) || hasRole(next, 'small');
};

// "Pain seven out of ten at the hip, four at the wrist": a bare figure before another site goes on with the scores.
function stateElliptic(talk: Talk, items: readonly Item[], used: Set<number>): void {
  const first = items.findIndex((item) => pieceOf(item)?.islands[0]?.rule === 'vitals.pain-score');
  if (first < 0) return;
  for (const [i, item] of items.entries()) {
    const figure = pieceOf(item);
    const score = i > first && figure?.role === 'figure' ? figureIn(figure) : null;
    if (figure === null || score === null || !isWithin(score, BOUNDS.painScore)) continue;
    const at = items.findIndex((one, k) => k > i && !hasRole(one, 'small'));
    const phrase = used.has(at) ? null : phraseOf(items[at]);
    if (phrase === null || !phrase.led || isPaused(talk.tokens, figure)) continue;
    used.add(at);
    state(
      talk,
      withSides(phrase, talk.context.sites).map(({ site, side }) => ({
        statement: findingStatement('pain', plainSite(site, side), score > 0, { severity: score }),
        known: { finding: 'carried' as const },
        ...around([figure, phrase]),
      })),
    );
    place(talk, figure, phrase);
  }
}
