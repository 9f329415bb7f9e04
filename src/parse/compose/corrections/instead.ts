// "Scratch that, it was the left": where only another place follows, the place is put right and nothing is struck.

import type { Clause } from '../../clauses/clause.ts';
import { isNear } from '../../pieces/figure-anew.ts';
import { figureIn, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { itemsOf } from '../exam/items.ts';
import { isChatter } from '../light.ts';
import { phrasesIn } from '../sites/item.ts';
import { sideIn } from '../sites/side-in.ts';
import type { Talk } from '../talk.ts';
import { turned } from './changes.ts';
import { mainOf } from './main-figure.ts';

const PLACES: ReadonlySet<Role> = new Set(['side', 'site', 'part', 'small', 'talk']);

/** The pieces that name another place than the last thing said has, after words that strike the last; null where none do. */
export function placeInstead(talk: Talk, clause: Clause): readonly Piece[] | null {
  const [first, ...rest] = clause.pieces;
  if (first === undefined) return null;
  if (!marked(first, 'strike', 'last')) return isOtherSide(talk, rest) ? rest : null;
  const said = rest.length > 0 ? rest : nextIn(talk, clause);
  const isPlace = said.every(
    (piece) => PLACES.has(piece.role) || marked(piece, 'negation', 'stop') || isSaidAgain(talk, piece),
  );
  const last = talk.context.said.filter(
    ({ kind }) => kind === 'finding' || kind === 'csm' || kind === 'care',
  );
  if (!isPlace || last.length === 0) return null;
  const site = phrasesIn(itemsOf(talk, said))
    .flatMap(({ sites }) => sites)
    .at(-1);
  const side = site?.side ?? sideIn(said)?.side ?? null;
  if (site === undefined && side === null) return null;
  // "Scratch that left shin" names the very thing that is struck.
  const isSame = last.some(
    (one) =>
      'site' in one && (site === undefined || one.site === site.site) && (side === null || one.side === side),
  );
  return isSame ? null : said;
}

// "Right knee swelling, scratch that, left knee swelling": what is there stays, and its place is another.
const isSaidAgain = ({ context: { said } }: Talk, piece: Piece): boolean =>
  piece.role === 'finding' &&
  said.length === 1 &&
  said.every((one) => one.kind === 'finding' && one.present && marked(piece, 'finding', one.finding));

/** The pieces of "scratch that, ninety eight" after a sign: its number is put right and nothing is struck; null where they are others. */
export function figureInstead(talk: Talk, clause: Clause): readonly Piece[] | null {
  const [first, ...rest] = clause.pieces;
  if (first === undefined || !marked(first, 'strike', 'last')) return null;
  if (talk.context.said.at(-1)?.kind !== 'vital') return null;
  const said = rest.length > 0 ? rest : nextIn(talk, clause);
  const later = rest.length > 0 ? null : figurePastReason(talk, clause, said);
  if (later !== null) return later;
  const [figure, next] = said;
  // "One twenty, I read it upside down": what follows tells why.
  const isToldWhy =
    (figure?.role === 'figure' || figure?.role === 'time') &&
    next !== undefined &&
    /^(i|it|that|because|cause|the)$/.test(talk.tokens[next.from]?.word ?? '') &&
    said.slice(1).every(tellsWhy);
  if (figure !== undefined && isToldWhy) return [figure];
  const figures = said.filter(({ role }) => role === 'figure' || role === 'time');
  const isFigure = figures.length > 0 && said.every((piece) => figures.includes(piece) || isChatter(piece));
  return isFigure ? said : null;
}

/** "Scratch that, I lost count. It's eighty four.": past a reason the figure stands alone, and is like the one that is struck; else null. */
function figurePastReason(talk: Talk, clause: Clause, reason: readonly Piece[]): readonly Piece[] | null {
  const at = talk.clauses.indexOf(clause) + (reason.length > 0 ? 2 : 1);
  const next = talk.clauses[at];
  const last = talk.context.said.at(-1);
  const was = last?.kind === 'vital' ? mainOf(last) : null;
  if (next?.mood !== 'statement' || was === null || !reason.every((piece) => tellsWhy(piece))) return null;
  const [figure, ...others] = next.pieces.filter((piece) => figureIn(piece) !== null);
  const now = figure === undefined || others.length > 0 ? null : figureIn(figure);
  const isAlone = next.pieces.every(
    (piece) => piece === figure || isChatter(piece) || marked(piece, 'negation', 'stop'),
  );
  return now !== null && isAlone && isNear(was, now) ? next.pieces : null;
}

const tellsWhy = (piece: Piece): boolean =>
  piece.role === 'small' ||
  piece.role === 'unknown' ||
  piece.role === 'talk' ||
  marked(piece, 'negation', 'stop');

// "Strike the left ankle, that was the right ankle": the same place on its other side.
function isOtherSide(talk: Talk, pieces: readonly Piece[]): boolean {
  const isPlace = pieces.every(
    (piece) => PLACES.has(piece.role) || piece.role === 'asking' || marked(piece, 'negation', 'stop'),
  );
  return isPlace && turned(talk, pieces) !== null;
}

// What follows in the same sentence, where it states nothing else.
function nextIn(talk: Talk, clause: Clause): readonly Piece[] {
  const next = talk.clauses[talk.clauses.indexOf(clause) + 1];
  return next?.sentence === clause.sentence && next.mood === 'statement' ? next.pieces : [];
}
