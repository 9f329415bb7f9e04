// "No tenderness over the neck, none over the thoracic spine": behind a denial a "none" with a place of its own denies the same there.

import { type FindingStatement, isPaired, type Level, type Statement } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { unique } from '../../unique.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { place, type Said, state, type Talk } from '../talk.ts';

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

/** How many of these pieces say "none" of places and nothing else, up to a pause, a "but", an "and" that goes on, or the end; 0 for others. */
export function noneAt(pieces: readonly Piece[], tokens: readonly Token[]): number {
  const [none] = pieces;
  if (none === undefined || !/^none( of)?$/.test(saidIn(tokens, none.from, none.to))) return 0;
  if (isPaused(tokens, none)) return 0;
  const first = placesTo(pieces, tokens, 1);
  const joint = pieces[first];
  if (first === 0 || joint === undefined || !isJoint(joint) || isPaused(tokens, pieces[first - 1] ?? none))
    return first;
  // "None in the chest and belly": the second is of the same list where nothing else is said of it.
  const second = placesTo(pieces, tokens, first + 1);
  const next = pieces[second];
  const isList =
    second > 0 &&
    (next === undefined || marked(next, 'contrast') || isPaused(tokens, pieces[second - 1] ?? none));
  return isList ? second : first;
}

/** Past the places that begin at `from`, where they end at a pause, a joint or the end; else 0. */
function placesTo(pieces: readonly Piece[], tokens: readonly Token[], from: number): number {
  for (let k = from; k < pieces.length; k++) {
    const [piece, next] = [pieces[k], pieces[k + 1]];
    if (piece === undefined) return 0;
    const isOf = isSmall(piece, 'preposition') || isSmall(piece, 'article');
    if (!PLACES.has(piece.role) && !isOf) return 0;
    if (piece.role === 'site' && (next === undefined || isPaused(tokens, piece) || isJoint(next)))
      return k + 1;
    if (isPaused(tokens, piece)) return 0;
  }
  return 0;
}

const isJoint = (next: Piece): boolean =>
  marked(next, 'contrast') || (isSmall(next, 'join') && !isSmall(next, 'or'));

/** Denies at that place what was denied last; gives how many pieces it read, 0 where nothing was denied or its site needs a side. */
export function denyAlso(talk: Talk, pieces: readonly Piece[]): number {
  const { last, asked } = talk.context;
  if (asked !== null || last.length === 0 || !last.every(isDenied)) return 0;
  const end = noneAt(pieces, talk.tokens);
  if (end === 0) return 0;
  const words = pieces.slice(0, end);
  const refs = phrasesIn(itemsOf(talk, words)).flatMap(({ sites }) => sites);
  // "None over the knee": which of the two, nobody said.
  if (refs.length === 0 || refs.some(({ site, side }) => isPaired(site) && side === null)) return 0;
  const denied = unique(
    last.filter((one) => one.kind === 'finding'),
    ({ finding, quality }) => ({ finding, quality }),
  );
  const span = spanned(words);
  state(
    talk,
    refs.flatMap((ref) => denied.map((one): Said => ({ ...span, ...deniedAt(one, ref) }))),
  );
  place(talk, ...words);
  return end;
}

function deniedAt(
  { kind, finding, quality }: FindingStatement,
  { site, side, sideKnown, level }: SiteRef,
): Pick<Said, 'statement' | 'known'> {
  // No blister there is not nothing there.
  const what = finding === 'abnormality' && quality !== undefined ? { quality } : {};
  const at = level === null ? {} : { level: level as Level };
  const known = sideKnown === 'carried' || sideKnown === 'inferred' ? { side: sideKnown } : {};
  return {
    statement: { kind, site, side, finding, present: false, ...at, ...what },
    known: { finding: 'carried', ...known },
  };
}

const isDenied = (one: Statement): boolean => one.kind === 'finding' && !one.present;
