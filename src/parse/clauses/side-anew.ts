// "Hang on, that's the left", "sorry, other knee", "wrong leg": words that name a side, or the other one, and say nothing else of it.

import { isSite, type Site } from '../../terms/index.ts';
import { sideAfter } from '../compose/sites/said-side.ts';
import { otherSide } from '../compose/sites/side.ts';
import { looksAgain } from '../pieces/figure-anew.ts';
import { marked, type Piece, readingOf, tagIn } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import type { Draft } from './draft.ts';

export interface SideAnew {
  /** `mirror`: the other one, whichever was said */
  readonly side: 'left' | 'right' | 'mirror';
  /** the place that is named with it, or null */
  readonly site: Site | null;
  /** a word takes back what was said before: "sorry", "hang on", "no" */
  readonly turns: boolean;
  /** it does no more than stop: "hang on", "wait" */
  readonly hedged: boolean;
  /** "that is the left", "it was the other one" */
  readonly points: boolean;
  /** what takes back is said with the side: "left, sorry", "the right I mean", "left, not right", "my right, his left" */
  readonly late: boolean;
  /** "wrong side": what it should have been is not said */
  readonly wrong: boolean;
}

/** The side that all these pieces name, or those past a pause behind a "mixed up"; null where they say more, or name several. */
export const sideAnew = (pieces: readonly Piece[], tokens: readonly Token[]): SideAnew | null =>
  sideAlone(pieces, tokens) ?? behindMixUp(pieces, tokens);

function sideAlone(said: readonly Piece[], tokens: readonly Token[]): SideAnew | null {
  const pieces = saidOnce(withoutOwn(said, tokens));
  const shape = pieces.map((piece) => partOf(piece, tokens)).join('');
  const [side, site] = [pieces[shape.indexOf('S')], pieces[shape.indexOf('X')]];
  const named = site === undefined ? null : (tagIn(site, 'sites', 'site') ?? '');
  if (named !== null && !isSite(named)) return null;
  // "My left, so her right" may be one phrase of the grammar.
  const isTold = pieces.length < said.length || OF_MINE.test(wordsOf(said, tokens));
  const turns = isTold || /[HTWN]/.test(shape);
  const hedged = !/[TWN]/.test(shape);
  const all = { site: named, turns, hedged };
  if (side === undefined) {
    const wrong = /^[HTt]*(P*W|P*TX)[HTt]*$/.test(shape) && /\bwrong\b/.test(wordsOf(pieces, tokens));
    return wrong ? { ...all, side: 'mirror', points: false, late: false, wrong } : null;
  }
  const to = sideAfter(side);
  if (to === null || to === 'both' || to === 'midline') return null;
  if (!/^[HTWt]*(P*SX?|XP*S)(NP*SX?)?[HTWt]*$/.test(shape)) return null;
  // "That's the left, not the right."
  const not = pieces[shape.lastIndexOf('S')];
  if (shape.includes('N') && (not === undefined || sideAfter(not) !== otherSide(to === 'mirror' ? null : to)))
    return null;
  const points = POINTS.test(saidIn(tokens, pieces[0]?.from, side.to));
  const behind = saidIn(tokens, side.to, pieces.at(-1)?.to);
  // A bare "right" may be mere talk: "right, sorry".
  const isSure = !side.weak || to === 'left' || /\bmean(t)?\b/.test(behind);
  const late = (/SX?[Tt]*T/.test(shape) && isSure) || shape.includes('N') || isTold;
  return { ...all, side: to, points, late, wrong: false };
}

// "Your other right, the left hand": one side in two ways.
const saidOnce = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.filter((piece, k) => {
    const next = pieces[k + 1];
    const side = piece.role === 'side' ? sideAfter(piece) : null;
    return side === null || side === 'mirror' || next?.role !== 'side' || sideAfter(next) !== side;
  });

const OF_MINE = /\bmy (left|right) .*\b(his|her|their|the patient) (left|right)\b/;

const MIXED = /\b(wrong|mix(ed|ing)|muddl(ed|ing)|confus(ed|ing)|mistaken)\b/;

// "I'm mixing up my sides, it's the left."
function behindMixUp(pieces: readonly Piece[], tokens: readonly Token[]): SideAnew | null {
  const end = pieces.findLastIndex((piece, k) => k < pieces.length - 1 && isPaused(tokens, piece)) + 1;
  if (end === 0 || !MIXED.test(wordsOf(pieces.slice(0, end), tokens))) return null;
  const said = sideAlone(pieces.slice(end), tokens);
  return said === null ? null : { ...said, turns: true, late: true };
}

// "My left, so his right": sides are the patient's.
function withoutOwn(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const isOwn = ({ role, from, to }: Piece): boolean =>
    role === 'side' && /\bmy\b/.test(saidIn(tokens, from, to));
  const others = pieces.filter((piece) => !isOwn(piece));
  return others.some(({ role }) => role === 'side') ? others : pieces;
}

const POINTS = /\b(that|this|it) (is|was|should be|must be) /;

// The words of an "it is the".
const POINTING = /^(that|this|it|is|was|be|should|must|the|his|her|their|your|just|actually)$/;

/** The part that a piece plays in such words: it takes back (T), stops (H), calls the side wrong (W), points (P), is a side, a place, or talk (t). */
function partOf(piece: Piece, tokens: readonly Token[]): string {
  const words = saidIn(tokens, piece.from, piece.to);
  if (piece.role === 'side') return 'S';
  if (piece.role === 'site') return 'X';
  if (words === 'not') return 'N';
  if (piece.role === 'correction')
    return /\bwrong side$/.test(words) ? 'W' : marked(piece, 'hedge') ? 'H' : 'T';
  if (looksAgain(piece, tokens)) return 'H';
  if (marked(piece, 'plain')) return 'T';
  if (words.split(' ').every((word) => POINTING.test(word))) return 'P';
  // "Hang on, let me see the other arm" goes on to it.
  const isLook = /\bsee$/.test(words);
  return (readingOf(piece, 'talk.courtesy') !== null && !isLook) || CALL.test(words) ? 't' : '#';
}

const CALL = /^(oh|ah|so|well|then|though|really)$/;

const wordsOf = (pieces: readonly Piece[], tokens: readonly Token[]): string =>
  saidIn(tokens, pieces[0]?.from, pieces.at(-1)?.to);

/** "Right shin is swollen hang on that's the left": from piece `i` on nothing but the side is named, up to a pause. */
export function turnsToSide(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  if (piece === undefined) return false;
  // "Swollen left knee, that's the right knee sorry": the word that takes back stands behind.
  const isLate =
    POINTING.test(tokens[piece.from]?.word ?? '') && isPaused(tokens, pieces[i - 1] ?? { to: 0 });
  if (!looksAgain(piece, tokens) && !isLate) return false;
  const end = pieces.findIndex((one, k) => k > i && isPaused(tokens, one));
  const said = sideAnew(pieces.slice(i, end < 0 ? pieces.length : end + 1), tokens);
  return said?.turns === true && (said.points || said.side === 'mirror');
}

/** "Hang on, that's the left, and the shin's bruised": at the pause the side is put right, and other things follow. */
export function isWholeSide({ pieces, mood }: Draft, next: Piece, tokens: readonly Token[]): boolean {
  const last = pieces.at(-1);
  if (mood !== 'correction' || last === undefined || !isPaused(tokens, last)) return false;
  const said = sideAnew(pieces, tokens);
  return said?.turns === true && said.points && tokens[next.from]?.word !== 'not';
}
