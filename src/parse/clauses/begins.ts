// Whether a piece begins a clause of another mood or turns the one in hand; the rules stand in one list and the first counts.

import { isSmall, marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { isPaused, pauseAfter, pauseBefore } from '../span.ts';
import type { Token } from '../token.ts';
import { answers } from './answers.ts';
import type { Mood } from './clause.ts';
import { colour } from './colour.ts';
import { corrects, takesBack } from './corrects.ts';
import type { Draft } from './draft.ts';
import { beginsProblem, turnsToPatient } from './list-words.ts';
import { moodOf } from './mood-words.ts';

/** A piece in its place, and what was said before it. */
export interface Place {
  readonly piece: Piece;
  readonly pieces: readonly Piece[];
  readonly i: number;
  readonly tokens: readonly Token[];
  /** the clause in hand says something already */
  readonly full: boolean;
  /** the clause in hand asks something */
  readonly asked: boolean;
  /** an earlier question waits for its answer */
  readonly waiting: boolean;
  readonly draft: Draft;
}

/** `begin`: a clause of this mood begins; `become`: the clause in hand is of this mood after all. */
export interface Turn {
  readonly turn: 'begin' | 'become';
  readonly mood: Mood;
}

/** A rule's answer: a turn, `stay` where the piece goes on as it was, or null where the next rule decides. */
type Rule = (place: Place) => Turn | 'stay' | null;

const begin = (mood: Mood): Turn => ({ turn: 'begin', mood });
const become = (mood: Mood): Turn => ({ turn: 'become', mood });

const RULES: readonly Rule[] = [
  order,
  correction,
  answer,
  goingOn,
  bareAsking,
  tagQuestion,
  question,
  newMood,
  intention,
  outOfMood,
  statedAfter,
  done,
  takenBack,
  reading,
];

/** How the mood changes at a piece; null where it does not. */
export function moodAt(place: Place): Turn | null {
  for (const rule of RULES) {
    const said = rule(place);
    if (said !== null) return said === 'stay' ? null : said;
  }
  return null;
}

function order({ piece: { role }, pieces, i, tokens }: Place): Turn | null {
  if (beginsProblem(pieces, i, tokens)) return begin('problem');
  if (turnsToPatient(pieces, i, tokens)) return begin('patient');
  return role === 'strike' || role === 'mark' || role === 'command' ? begin(role) : null;
}

function correction({ piece, pieces, i, tokens }: Place): Turn | null {
  return piece.role === 'correction' && corrects(pieces, i, tokens) ? begin('correction') : null;
}

const isAnswer = (piece: Piece): boolean => readingOf(piece, 'talk.answer') !== null;

function answer({ piece, pieces, i, tokens, full, asked, waiting, draft }: Place): Turn | 'stay' | null {
  if (!isAnswer(piece)) return null;
  // "The left one yes, the right one no": each answer has its side before it.
  if (waiting && !full && draft.pieces.some(({ role }) => role === 'side')) return become('answer');
  if (draft.mood === 'answer' && pieces[i - 1]?.role === 'side') return 'stay';
  const open = asked || (waiting && !full && draft.mood === 'statement');
  return open && answers(pieces, i, tokens) ? begin('answer') : null;
}

function goingOn({ draft: { mood } }: Place): 'stay' | null {
  return mood === 'correction' || mood === 'strike' || mood === 'command' ? 'stay' : null;
}

// "The sternum does not hurt": a bare "does" asks only where a clause begins.
function bareAsking({ piece, full, draft }: Place): 'stay' | null {
  const bare =
    piece.role === 'asking' && piece.weak && piece.to - piece.from === 1 && !marked(piece, 'article');
  return bare && full && draft.mood === 'statement' ? 'stay' : null;
}

// "You have no pain, do you": what was said becomes a question.
function tagQuestion({ piece, pieces, i, tokens, full, draft }: Place): Turn | null {
  const pause = pauseAfter(tokens, piece);
  const last = i === pieces.length - 1 || pause === 'end' || pause === 'ask';
  const isTag = readingOf(piece, 'talk.tag') !== null;
  return full && draft.mood === 'statement' && last && isTag ? become('question') : null;
}

function question({ piece, pieces, i, tokens, draft }: Place): Turn | 'stay' | null {
  if (piece.role !== 'asking' && piece.role !== 'ask') return null;
  if (isDenial(pieces, i, tokens) || isDeniedAny(piece, draft) || isSaidThere(pieces, i, tokens))
    return 'stay';
  if (draft.mood === 'instruction' && piece.role === 'asking') return 'stay';
  const before = pieces[i - 1]?.role;
  return before === 'asking' || before === 'negation' || before === 'ask' ? 'stay' : begin('question');
}

// "Did not give any oxygen" asks nobody, unless a person follows ("did not you fall") or a question mark stands at its end.
function isDenial(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, not, next] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (piece === undefined || not === undefined || next === undefined) return false;
  const bare = piece.weak && piece.to - piece.from === 1 && not.role === 'negation' && not.weak;
  const asks = tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause;
  return bare && !isSmall(next, 'person') && asks !== 'ask';
}

// "The pulse in the left foot is there": after its subject, with no pause between, "is there" asks nothing. A question mark at
// the end of the sentence says otherwise.
function isSaidThere(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (piece === undefined || before === undefined || isPaused(tokens, before)) return false;
  if (
    !marked(piece, 'state', 'there') ||
    !(before.role === 'site' || before.role === 'csm' || before.role === 'side')
  )
    return false;
  return tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause !== 'ask';
}

// "We did not give any oxygen": "any" goes with the "not" before it.
const isDeniedAny = (piece: Piece, draft: Draft): boolean =>
  piece.weak &&
  isSmall(piece, 'article') &&
  draft.mood === 'statement' &&
  draft.pieces.some((one) => one.role === 'negation' && marked(one, 'negation', 'before'));

function newMood({ piece, pieces, i, tokens, full, draft }: Place): Turn | 'stay' | null {
  const mood = isPlanned(piece, pieces, i) ? 'plan' : moodOf(piece);
  // These moods begin where their words stand; the others ("his brother", "years ago") colour the whole clause.
  if (mood !== 'supposing' && mood !== 'plan' && mood !== 'instruction') return null;
  if (mood === 'instruction' && (!mayTell(pieces, i, tokens) || isAskedOn(pieces, i, tokens, draft)))
    return 'stay';
  const coloured =
    mood === 'plan' && draft.mood === 'statement' && colour(piece, draft.pieces, pieces, i) !== null;
  // "Tell me if it hurts" is one instruction, and "does it hurt if…" one question.
  const within =
    draft.mood === 'instruction' || ((draft.mood === 'supposing' || draft.mood === 'question') && !full);
  return coloured || within ? 'stay' : begin(mood);
}

// "Going to put a tourniquet on" is a plan; "going to check your leg" is what is being done.
const isPlanned = (piece: Piece, pieces: readonly Piece[], i: number): boolean =>
  marked(piece, 'mood', 'plan') && pieces.slice(i + 1).find(({ role }) => role !== 'small')?.role === 'care';

// An instruction opens what is said: "he can bend it" tells nobody to bend anything.
function mayTell(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const before = pieces[i - 1];
  if (before === undefined || isPaused(tokens, before)) return true;
  // "Airway's open": the verb is in the word as it was written.
  const last = tokens[before.to - 1];
  if (before.role === 'unknown' && last !== undefined && last.to - last.from > last.word.length) return false;
  if (isSmall(before, 'person') && !isSmall(before, 'you')) return false;
  // "The airway is open", "he can bend it".
  if (isSmall(before, 'link')) return false;
  const earlier = pieces[i - 2];
  if (
    earlier !== undefined &&
    before.role === 'small' &&
    isSmall(earlier, 'person') &&
    !isSmall(earlier, 'you')
  )
    return false;
  // "He does not want to lift it" tells nobody anything.
  if (isOfThirdPerson(pieces, i, tokens)) return false;
  const { role } = before;
  return (
    role === 'small' ||
    role === 'talk' ||
    role === 'answer' ||
    role === 'intention' ||
    role === 'unknown' ||
    role === 'mood'
  );
}

// "Any pain when you breathe" asks on.
function isAskedOn(pieces: readonly Piece[], i: number, tokens: readonly Token[], draft: Draft): boolean {
  const before = pieces[i - 1];
  return (
    draft.mood === 'question' && before !== undefined && isSmall(before, 'you') && !isPaused(tokens, before)
  );
}

const THIRD: ReadonlySet<string> = new Set(['he', 'she', 'they']);

/** True where "he", "she" or "they" stands before piece `i` in the same breath, with no "you" after it. */
function isOfThirdPerson(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieces[k];
    if (piece === undefined || isPaused(tokens, piece) || isSmall(piece, 'you')) return false;
    if (tokens.slice(piece.from, piece.to).some(({ word }) => THIRD.has(word))) return true;
  }
  return false;
}

function intention({ piece, pieces, i, full, draft }: Place): Turn | 'stay' | null {
  // "Describes the pain as squeezing": so it feels, and nobody squeezes.
  if (draft.pieces.some((one) => marked(one, 'topic', 'quality'))) return null;
  if (piece.role !== 'intention' || !(full || draft.mood !== 'statement')) return null;
  return colour(piece, draft.pieces, pieces, i) === null ? begin('statement') : 'stay';
}

const isOutOfMood = ({ mood }: Draft): boolean =>
  mood === 'supposing' || mood === 'instruction' || mood === 'plan';

// A "no" or a "yes" after what was supposed or told begins something stated.
function outOfMood({ piece, pieces, i, tokens, full, waiting, draft }: Place): Turn | null {
  if (!isOutOfMood(draft) || !full) return null;
  if (!isAnswer(piece) && readingOf(piece, 'talk.courtesy') === null) return null;
  if (isAnswer(piece) && waiting && answers(pieces, i, tokens)) return begin('answer');
  return i > 0 && piece.role !== 'site' ? begin('statement') : null;
}

// "Lift your arm, left elbow is swollen": what is stated of a place after a pause is told to nobody.
function statedAfter({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'instruction' || pauseBefore(tokens, piece) === '') return null;
  const end = pieces.findIndex((one, k) => k >= i && isPaused(tokens, one));
  const breath = pieces.slice(i, end < 0 ? pieces.length : end + 1);
  const says = breath.some(({ role, weak }) => STATED.has(role) && !weak);
  const tells = breath.some((one) => isSmall(one, 'you') || moodOf(one) !== null || one.role === 'asking');
  return says && !tells ? begin('statement') : null;
}
const STATED: ReadonlySet<Role> = new Set(['finding', 'csm', 'history', 'negation', 'care']);

// What was done or measured, after a pause, is no part of what was told or planned before it.
function done({ piece, tokens, draft }: Place): Turn | null {
  const isDone =
    (piece.role === 'care' && (marked(piece, 'on') || marked(piece, 'put'))) ||
    (piece.role === 'vital' && (piece.islands[0]?.slots.length ?? 0) > 0);
  const leaves = isOutOfMood(draft) || draft.mood === 'question';
  return leaves && isDone && pauseBefore(tokens, piece) !== '' ? begin('statement') : null;
}

function takenBack({ pieces, i, full }: Place): Turn | null {
  return full && takesBack(pieces, i) ? begin('correction') : null;
}

function reading({ piece, asked }: Place): Turn | null {
  return asked && piece.role === 'vital' ? begin('statement') : null;
}
