// Finds each "no", "not yet", "not examined" or "intact" that reached no entry, with the words around it: a look alone would lose it.

import type { Clause } from '../clauses/clause.ts';
import type { Frame } from '../frame.ts';
import { isSmall, marked, type Piece, type Role, readingOf, tagIn } from '../pieces/piece.ts';
import type { Talk } from './talk.ts';

/** The pieces of a clause that belong to such a word; none where nothing of substance stands beside it. */
export function unheardDenials(talk: Talk, clause: Clause): readonly Piece[] {
  if (clause.mood !== 'statement' && clause.mood !== 'answer') return [];
  const open = clause.pieces.map((piece) => !isHeard(talk, piece));
  return clause.pieces.flatMap((piece, i) => {
    if (open[i] !== true || !isDenial(piece)) return [];
    const run = runAround(clause.pieces, open, i);
    // "None at rest", "now it isn't": words of its own stand beside it.
    const says = run.some((one) => SAYS.has(one.role));
    return says ||
      (clause.mood === 'statement' &&
        wordsIn(run) > 1 &&
        (isOfItself(piece) || isBareDenial(talk, piece, clause, run) || isTurned(clause.pieces[i - 1])))
      ? run
      : [];
  });
}

const SAYS: ReadonlySet<Role> = new Set([
  'site',
  'side',
  'finding',
  'csm',
  'vital',
  'care',
  'history',
  'unknown',
  // "Can't pull it up": what could tell the patient what to do says what nobody can.
  'mood',
]);

function isDenial(piece: Piece): boolean {
  const kind = tagIn(piece, 'negation', 'negation');
  const negates = piece.role === 'negation' && (kind === 'before' || kind === 'after');
  const isUnseen = marked(piece, 'unseen') || marked(piece, 'mood', 'later');
  return (
    // "Fine, no it isn't".
    (piece.role === 'correction' && !isPardon(piece)) ||
    negates ||
    isUnseen ||
    (piece.role === 'answer' && marked(piece, 'answer', 'no')) ||
    isSmall(piece, 'there')
  );
}

// "Excuse me", "sorry": a courtesy where it takes nothing back.
const isPardon = (piece: Piece): boolean => readingOf(piece, 'talk.courtesy') !== null;

// "But not through".
const isTurned = (before: Piece | undefined): boolean => before !== undefined && marked(before, 'contrast');

const wordsIn = (run: readonly Piece[]): number => run.reduce((sum, { from, to }) => sum + to - from, 0);

// A word that can be no courtesy and no bare answer.
const isOfItself = (piece: Piece): boolean =>
  tagIn(piece, 'negation', 'negation') === 'after' ||
  piece.role === 'correction' ||
  (piece.role === 'answer' && !piece.weak && piece.to - piece.from > 1);

// "Still denies it", "none of that on this side": of what, the talk before tells, and nothing else was said.
const isBareDenial = ({ tokens }: Talk, piece: Piece, clause: Clause, run: readonly Piece[]): boolean =>
  clause.pieces.every(
    (one) =>
      run.includes(one) || one.role === 'talk' || isSmall(one, 'join') || marked(one, 'negation', 'stop'),
  ) &&
  (/^(denies|denied)$/.test(tokens[piece.to - 1]?.word ?? '') ||
    (tokens[piece.from]?.word === 'none' && piece.to - piece.from > 1));

/** True where an entry other than a look was made of these words. */
export function isHeard(talk: Talk, piece: Piece): boolean {
  const heard = heardTokens(talk);
  for (let at = piece.from; at < piece.to; at++) if (heard[at] === true) return true;
  return false;
}

interface Heard {
  readonly frames: number;
  readonly last: Frame | undefined;
  readonly tokens: readonly boolean[];
}

const HEARD = new WeakMap<Talk, Heard>();

// Worked out once for all the words while no frame is added: it is asked of each word, and a long talk has many frames.
function heardTokens(talk: Talk): readonly boolean[] {
  const known = HEARD.get(talk);
  const last = talk.frames.at(-1);
  if (known !== undefined && known.frames === talk.frames.length && known.last === last) return known.tokens;
  const tokens = talk.tokens.map(() => false);
  for (const frame of talk.frames) {
    if (frame.frame === 'statement' && frame.statement.kind === 'visit') continue;
    const [from, to] = frame.span;
    let at = firstPast(talk, from);
    for (; at < tokens.length && (talk.tokens[at]?.from ?? to) < to; at++) tokens[at] = true;
  }
  HEARD.set(talk, { frames: talk.frames.length, last, tokens });
  return tokens;
}

// The first token that ends past this character.
function firstPast({ tokens }: Talk, from: number): number {
  let [low, high] = [0, tokens.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((tokens[middle]?.to ?? 0) > from) high = middle;
    else low = middle + 1;
  }
  return low;
}

// The stretch that no entry came from, without the "but" that leads to it.
function runAround(pieces: readonly Piece[], open: readonly boolean[], i: number): readonly Piece[] {
  let from = i;
  let to = i + 1;
  while (from > 0 && open[from - 1] === true) from--;
  while (to < pieces.length && open[to] === true) to++;
  const run = pieces.slice(from, to);
  const first = run.findIndex((piece) => !isSmall(piece, 'join') && !marked(piece, 'negation', 'stop'));
  return run.slice(Math.max(0, first));
}
