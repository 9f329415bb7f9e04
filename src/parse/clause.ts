// Cuts an utterance into clauses and says how each is meant: stated, asked, answered, supposed, planned, told to somebody.

import { hasTag, tagOf } from './islands/island.ts';
import { marked, type Piece, type Role, readingOf } from './pieces/piece.ts';
import type { Pause, Token } from './token.ts';

export type Mood =
  | 'statement'
  | 'question'
  | 'answer'
  | 'supposing'
  | 'plan'
  | 'instruction'
  | 'others'
  | 'own'
  | 'past'
  | 'correction'
  | 'strike'
  | 'mark'
  | 'command';

export interface Clause {
  readonly pieces: readonly Piece[];
  readonly mood: Mood;
  /** clauses between two full stops share a number */
  readonly sentence: number;
  /** how the clause ended */
  readonly pause: Pause;
}

// Pieces that say something by themselves; a new mood after one of them begins a new clause.
const SUBSTANTIAL: ReadonlySet<Role> = new Set([
  'vital',
  'history',
  'ask',
  'care',
  'csm',
  'finding',
  'site',
  'same',
  'figure',
  'unknown',
]);

// These moods begin where their words stand; the others ("his brother", "years ago") colour the whole clause.
const BEGINNING: ReadonlySet<string> = new Set(['supposing', 'plan', 'instruction']);

interface Draft {
  pieces: Piece[];
  mood: Mood;
  sentence: number;
}

/** The clauses of an utterance in the order spoken. `open` tells whether an earlier question waits for an answer. */
export function clausesOf(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  open: boolean,
): readonly Clause[] {
  const clauses: Clause[] = [];
  let sentence = 0;
  let draft: Draft = { pieces: [], mood: 'statement', sentence };
  let waiting = open;
  const pauseBefore = (piece: Piece): Pause => tokens[piece.from - 1]?.pause ?? '';
  const close = () => {
    const last = draft.pieces.at(-1);
    if (last !== undefined) {
      const pause = tokens[last.to - 1]?.pause ?? '';
      const mood = settle(draft, pause);
      clauses.push({ pieces: draft.pieces, mood, sentence: draft.sentence, pause });
      const says = draft.pieces.some(({ role, weak }) => SUBSTANTIAL.has(role) && !weak);
      if (mood === 'question') waiting = says || waiting;
      else if (mood === 'answer' || (mood === 'statement' && says)) waiting = false;
    }
    draft = { pieces: [], mood: 'statement', sentence };
  };
  pieces.forEach((piece, i) => {
    const pause = pauseBefore(piece);
    if (i > 0 && (pause === 'end' || pause === 'ask')) {
      sentence++;
      close();
    } else if (i > 0 && pause === 'dash' && draft.mood !== 'mark') close();
    const full = draft.pieces.some(({ role, weak }) => SUBSTANTIAL.has(role) && !weak);
    const asked = draft.mood === 'question' && full;
    const mood =
      draft.mood === 'mark' ? null : moodAt(piece, pieces, i, tokens, { full, asked, waiting, draft });
    if (mood !== null) {
      close();
      draft.mood = mood;
    } else if (draft.mood === 'statement') draft.mood = colour(piece) ?? draft.mood;
    draft.pieces.push(piece);
  });
  close();
  return clauses;
}

interface Standing {
  readonly full: boolean;
  readonly asked: boolean;
  readonly waiting: boolean;
  readonly draft: Draft;
}

/** The mood of the clause that begins with this piece, or null where none begins. */
function moodAt(
  piece: Piece,
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
  standing: Standing,
): Mood | null {
  const { full, asked, waiting, draft } = standing;
  if (piece.role === 'strike' || piece.role === 'mark' || piece.role === 'command') return piece.role;
  if (piece.role === 'correction' && corrects(piece, pieces, i, tokens)) return 'correction';
  const answer = readingOf(piece, 'talk.answer');
  if (answer !== null && (asked || (waiting && !full && draft.mood === 'statement')))
    if (answers(piece, pieces, i, tokens)) return 'answer';
  if (piece.role === 'asking' || piece.role === 'ask') {
    const before = pieces[i - 1]?.role;
    const joined = before === 'asking' || before === 'negation' || before === 'ask';
    if (draft.mood === 'instruction' && piece.role === 'asking') return null;
    if (full || draft.mood !== 'statement') return joined ? null : 'question';
    return joined ? null : 'question';
  }
  const mood = tagged(piece);
  if (mood !== null && BEGINNING.has(mood)) {
    // "Tell me if it hurts" is one instruction, and "does it hurt if…" one question.
    if (draft.mood === 'instruction' || (draft.mood === 'supposing' && !full)) return null;
    if (draft.mood === 'question' && !full) return null;
    return mood;
  }
  if (piece.role === 'intention' && (full || draft.mood !== 'statement')) return 'statement';
  // A "no" or a "yes" after what was supposed or told begins something stated.
  const outOfMood = draft.mood === 'supposing' || draft.mood === 'instruction' || draft.mood === 'plan';
  if (outOfMood && full && (answer !== null || readingOf(piece, 'talk.courtesy') !== null)) {
    if (answer !== null && waiting && answers(piece, pieces, i, tokens)) return 'answer';
    if (i > 0 && piece.role !== 'site') return 'statement';
  }
  if (draft.mood === 'correction' || draft.mood === 'strike' || draft.mood === 'command') return null;
  if (asked && piece.role === 'vital') return 'statement';
  return null;
}

const tagged = (piece: Piece): Mood | null => {
  const island = piece.role === 'mood' ? piece.islands[0] : undefined;
  return island === undefined ? null : ((tagOf(island, 'mood') as Mood | null) ?? null);
};

const colour = (piece: Piece): Mood | null => {
  const mood = tagged(piece);
  return mood === 'others' || mood === 'own' || mood === 'past' ? mood : null;
};

function settle(draft: Draft, pause: Pause): Mood {
  if (pause === 'ask' && draft.mood === 'statement') return 'question';
  return draft.mood;
}

const SKIPPED: ReadonlySet<Role> = new Set(['small', 'talk', 'side', 'part', 'site', 'attribute', 'figure']);

/** True where a yes or no stands for itself and does not begin "no deformity" or "no left arm pain". */
function answers(piece: Piece, pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  if (readingOf(piece, 'negation') === null) return true;
  if ((tokens[piece.to - 1]?.pause ?? '') !== '') return true;
  for (let k = i + 1; k < pieces.length; k++) {
    const next = pieces[k];
    if (next === undefined) break;
    if (next.role === 'finding')
      return next.islands[0] !== undefined && hasTag(next.islands[0], 'adj') && k > i + 1;
    if (next.role === 'csm' || next.role === 'history' || next.role === 'care') return k > i + 1;
    if (!SKIPPED.has(next.role)) return true;
    if ((tokens[next.to - 1]?.pause ?? '') !== '') return true;
  }
  return true;
}

/** A firm correction always is one; "sorry" or "no wait" only where a side, a site or a number follows. */
function corrects(piece: Piece, pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  if (marked(piece, 'correct', 'firm')) return true;
  for (let k = i + 1; k < pieces.length; k++) {
    const next = pieces[k];
    if (next === undefined) return false;
    if (next.role === 'side' || next.role === 'figure' || next.role === 'vital') return true;
    if (next.role === 'site') return true;
    if (next.role === 'correction') continue;
    if (next.role !== 'small' && next.role !== 'talk' && next.role !== 'negation' && next.role !== 'answer')
      return false;
    if (tokens[next.to - 1]?.pause === 'end') return false;
  }
  return false;
}
