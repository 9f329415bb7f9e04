// Reads a clause that takes something back, with what was left open before it.

import type { Clause } from '../clauses/clause.ts';
import type { Frame } from '../frame.ts';
import { isSmall, likelyTag, marked, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused, spanned } from '../span.ts';
import { correct } from './corrections/correction.ts';
import { figureAlone, tellsWhy } from './corrections/figure-alone.ts';
import { figureInstead, placeInstead } from './corrections/instead.ts';
import { signMeant } from './corrections/sign-meant.ts';
import { strike } from './corrections/strike.ts';
import { answersNotThere } from './questions/answer-not-there.ts';
import { STATING, stateAll } from './state-all.ts';
import { isPlaced, note, place, spanOf, type Talk, textOf } from './talk.ts';

/** Takes back what was said, or puts its place right where another one follows. */
export function readStrike(talk: Talk, clause: Clause): void {
  if (strikesSlip(talk, clause)) return;
  const pieces = placeInstead(talk, clause) ?? figureInstead(talk, clause);
  if (pieces === null || !correct(talk, { ...clause, pieces }, stateAll)) strike(talk, clause);
  else place(talk, ...clause.pieces, ...pieces);
}

// "Left arm, no, scratch that, left leg is numb": a place of which nothing was said yet is all that is taken back.
function strikesSlip(talk: Talk, clause: Clause): boolean {
  const before = talk.clauses[talk.clauses.indexOf(clause) - 1];
  const [first, ...rest] = clause.pieces;
  if (before?.mood !== 'statement' || before.sentence !== clause.sentence || rest.length > 0) return false;
  if (first === undefined || !marked(first, 'strike', 'last')) return false;
  const [from] = spanOf(talk, before.pieces[0]?.from ?? 0, first.from);
  const own = talk.frames.filter(({ span }) => span[0] >= from);
  // "That's the coffee on my right glove, ignore that": its own words are taken back, and nothing that was said before them.
  if (
    own.length === 0 &&
    before.pieces.some(({ role }) => role === 'unknown') &&
    before.pieces.some(isOfPlace)
  ) {
    place(talk, ...clause.pieces);
    return true;
  }
  const isSlip = own.every((frame) => frame.frame === 'statement' && frame.statement.kind === 'visit');
  // What stands beside the place is no slip, and must not be lost.
  if (own.length === 0 || !isSlip || !before.pieces.every(({ role }) => OF_SLIP.has(role))) return false;
  talk.frames.splice(talk.frames.length - own.length);
  note(talk, spanned(before.pieces));
  place(talk, ...before.pieces, ...clause.pieces);
  return true;
}

const isOfPlace = ({ role }: Piece): boolean => role === 'site' || role === 'side';

const OF_SLIP: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk', 'answer', 'intention']);

/** Reads a correction; where it corrects nothing, its words are a statement. */
export function readCorrection(talk: Talk, said: Clause): void {
  const { asked } = talk.context;
  // "Does your left hip hurt?" "Not the left, the right": nothing was said that it could put right.
  if (asked?.about === 'findings' && answersNotThere(talk, said, asked)) return;
  const pieces = upToReason(talk, said.pieces);
  const clause = pieces === said.pieces ? said : { ...said, pieces };
  const open = openFinding(talk, clause);
  const rest = clause.pieces.filter(({ role }) => role !== 'correction');
  if (open.length > 0) stateAll(talk, [...open, ...clause.pieces.slice(1)]);
  else if (repairsSite(talk, rest)) {
    takeBack(talk);
    stateAll(talk, rest);
  } else {
    const sign = signMeant(talk, rest);
    const head = figureBeforePlace(talk, clause);
    if (head !== null && correct(talk, { ...clause, pieces: head }, stateAll)) return;
    const lone = figureAlone(talk, clause);
    if (lone > 0 && correct(talk, { ...clause, pieces: clause.pieces.slice(0, lone) }, stateAll)) {
      const rest = clause.pieces.slice(lone);
      // Why it was misread stays in words.
      if (!tellsWhy(talk, rest)) stateAll(talk, rest);
      return;
    }
    if (!correct(talk, clause, stateAll)) stateAll(talk, clause.pieces);
    else if (sign !== null && sign !== 'other') takeInSign(talk, sign, spanned(clause.pieces).to);
  }
}

/** "Sorry, three seconds on the left foot" after a sign: its figure is put right, and where it was taken stays in words; null for others. */
function figureBeforePlace(talk: Talk, { pieces }: Clause): readonly Piece[] | null {
  if (talk.context.said.at(-1)?.kind !== 'vital') return null;
  const figure = pieces.findIndex(({ role }) => role === 'figure');
  const place = pieces.findIndex(({ role }, k) => k > figure && (role === 'site' || role === 'side'));
  if (figure < 0 || place < 0) return null;
  const end = pieces.findIndex((piece, k) => k > figure && isPlaceWord(piece));
  const between = pieces.slice(figure + 1, end);
  const isBare = between.every(({ role }) => role === 'small' || role === 'talk');
  return isBare && pieces.slice(end).every(isPlaceWord) ? pieces.slice(0, end) : null;
}

// "Make that the right thigh, I'm sat at your feet": past a pause the speaker tells why, and names nothing of the patient's.
function upToReason({ tokens }: Talk, pieces: readonly Piece[]): readonly Piece[] {
  const end = pieces.findIndex((piece, k) => {
    const next = pieces[k + 1];
    const isPlace = pieces.slice(0, k + 1).some(({ role }) => role === 'site' || role === 'side');
    return (
      isPlace &&
      next !== undefined &&
      isPaused(tokens, piece) &&
      /^(i|we)$/.test(tokens[next.from]?.word ?? '')
    );
  });
  return end < 0 ? pieces : pieces.slice(0, end + 1);
}

const isPlaceWord = (piece: Piece): boolean =>
  piece.role === 'site' ||
  piece.role === 'side' ||
  isSmall(piece, 'preposition') ||
  isSmall(piece, 'article');

function vitalOf(frame: Frame): string | null {
  if (frame.frame === 'correction') return frame.target.vital ?? null;
  return frame.frame === 'statement' && frame.statement.kind === 'vital' ? frame.statement.vital : null;
}

// "The pulse should be ninety": its name is part of the correction where that is what was put right.
function takeInSign(talk: Talk, sign: Piece, to: number): void {
  const last = talk.frames.at(-1);
  if (last === undefined || vitalOf(last) !== likelyTag(sign, 'vital')) return;
  const words = { heard: textOf(talk, sign.from, to), span: spanOf(talk, sign.from, to) };
  talk.frames[talk.frames.length - 1] = { ...last, ...words };
  place(talk, sign);
}

// The words of a site that was a slip stay, as a note.
function takeBack(talk: Talk): void {
  const slip = talk.frames.pop();
  if (slip?.frame === 'statement')
    talk.frames.push({ ...slip, statement: { kind: 'note', text: slip.heard }, known: {}, doubt: [] });
}

// "Swelling to the right, no, the left wrist": a finding whose site comes only with the correction.
function openFinding(talk: Talk, clause: Clause): readonly Piece[] {
  const before = talk.clauses[talk.clauses.indexOf(clause) - 1];
  const names = (pieces: readonly Piece[]) => pieces.some(({ role }) => role === 'site');
  if (before?.mood !== 'statement' || before.sentence !== clause.sentence) return [];
  if (!names(clause.pieces) || names(before.pieces)) return [];
  return before.pieces.filter((piece) => piece.role === 'finding' && !isPlaced(talk, piece));
}

// "Left hand, sorry, right hand: the fingers are fine": a site named and taken back before anything was said of it.
function repairsSite(talk: Talk, rest: readonly Piece[]): boolean {
  const last = talk.frames.at(-1);
  return (
    last?.frame === 'statement' &&
    last.statement.kind === 'visit' &&
    rest.some(({ role }) => role === 'site') &&
    rest.some(({ role }) => STATING.has(role))
  );
}
