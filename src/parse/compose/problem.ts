// Composes what is done to the problem list; a command that names no problem is kept in words.

import type { ProblemChange, Side, Site } from '../../terms/index.ts';
import type { Clause } from '../clauses/clause.ts';
import { isSmall, type Piece, readingOf, tagIn } from '../pieces/piece.ts';
import { spanned } from '../span.ts';
import { itemsOf } from './exam/items.ts';
import { place, spanOf, state, type Talk, textOf } from './talk.ts';

const WORDS = ['problems.problem', 'problems.ending'] as const;

const changeIn = (piece: Piece): string | null =>
  WORDS.map((rule) => tagIn(piece, rule, 'problem')).find((tag) => tag !== null) ?? null;

/** A frame for the change, with the problem named by its site where one was said, else by its words. */
export function problem(talk: Talk, clause: Clause): void {
  const span = spanned(clause.pieces);
  const at = clause.pieces.findIndex((piece) => changeIn(piece) !== null);
  const word = clause.pieces[at];
  const said = word === undefined ? null : changeIn(word);
  // An ending has the name before it, the other words have it after them.
  const isEnding = at > 0 || (word !== undefined && readingOf(word, 'problems.problem') === null);
  const named = plain(isEnding ? clause.pieces.slice(0, at) : clause.pieces.slice(1));
  place(talk, span);
  // "It is the top problem" names nothing.
  if (said === null || named.every(({ role }) => role === 'small')) {
    state(talk, [{ statement: { kind: 'note', text: textOf(talk, span.from, span.to) }, ...span }]);
    return;
  }
  const { from, to } = spanned(named);
  talk.frames.push({
    frame: 'problem',
    change: changeOf(said, siteIn(talk, named), textOf(talk, from, to)),
    heard: textOf(talk, span.from, span.to),
    span: spanOf(talk, span.from, span.to),
  });
}

/** Without the verb, the articles and the link before the name. */
function plain(pieces: readonly Piece[]): readonly Piece[] {
  const [first, ...rest] = pieces;
  if (first === undefined) return pieces;
  const light =
    isSmall(first, 'article') || isSmall(first, 'link') || readingOf(first, 'problems.verb') !== null;
  return light || first.role === 'talk' || readingOf(first, 'commands.strike') !== null
    ? plain(rest)
    : pieces;
}

interface Place {
  readonly site: Site;
  readonly side: Side | null;
}

function siteIn(talk: Talk, pieces: readonly Piece[]): Place | null {
  const named = itemsOf(talk, pieces).find((item) => item.type === 'site');
  const ref = named?.type === 'site' ? named.phrase.sites[0] : undefined;
  return ref === undefined ? null : { site: ref.site, side: ref.side };
}

function changeOf(said: string, at: Place | null, words: string): ProblemChange {
  if (said === 'add') return { change: 'add', text: words };
  return { change: said === 'strike' ? 'strike' : 'first', problem: at ?? { words } };
}
