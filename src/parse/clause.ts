// Cuts an utterance into clauses and says how each is meant: stated, asked, answered, supposed, planned, told to somebody.

import { hasTag, tagOf } from './islands/island.ts';
import { isSmall, marked, type Piece, type Role, readingOf } from './pieces/piece.ts';
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

/** What earlier talk left: a question that waits for its answer, or one that was answered a breath ago. */
export interface Before {
  readonly open: boolean;
  readonly asking: boolean;
}

/** The clauses of an utterance in the order spoken. */
export function clausesOf(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  before: Before,
): readonly Clause[] {
  const clauses: Clause[] = [];
  let sentence = 0;
  let draft: Draft = { pieces: [], mood: 'statement', sentence };
  let waiting = before.open;
  const pauseBefore = (piece: Piece): Pause => tokens[piece.from - 1]?.pause ?? '';
  const close = () => {
    const last = draft.pieces.at(-1);
    if (last !== undefined) {
      const pause = tokens[last.to - 1]?.pause ?? '';
      const mood = settle(draft, pause, tokens, before.asking);
      clauses.push({
        pieces: mood === 'question' ? withoutTag(draft, tokens) : draft.pieces,
        mood,
        sentence: draft.sentence,
        pause,
      });
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
    if (closesItself(draft, piece, pause)) close();
    const mood =
      draft.mood === 'mark' ? null : moodAt(piece, pieces, i, tokens, { full, asked, waiting, draft });
    if (mood !== null) {
      close();
      draft.mood = mood;
    } else if (draft.mood === 'statement') draft.mood = colour(piece, draft, pieces, i) ?? draft.mood;
    draft.pieces.push(piece);
  });
  close();
  return clauses;
}

const isTag = (piece: Piece): boolean => readingOf(piece, 'talk.tag') !== null;

const endsSentence = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const pause = tokens[(pieces[i]?.to ?? 0) - 1]?.pause ?? '';
  return i === pieces.length - 1 || pause === 'end' || pause === 'ask';
};

// An instruction opens what is said: "he can bend it" tells nobody to bend anything.
function mayTell(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const before = pieces[i - 1];
  if (before === undefined || (tokens[before.to - 1]?.pause ?? '') !== '') return true;
  if (isSmall(before, 'person') && !isSmall(before, 'you')) return false;
  return (
    before.role === 'small' ||
    before.role === 'talk' ||
    before.role === 'answer' ||
    before.role === 'intention' ||
    before.role === 'unknown' ||
    before.role === 'mood'
  );
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
  // "The left one yes, the right one no": each answer has its side before it.
  if (answer !== null && waiting && !full && draft.pieces.some(({ role }) => role === 'side')) {
    draft.mood = 'answer';
    return null;
  }
  if (answer !== null && draft.mood === 'answer' && pieces[i - 1]?.role === 'side') return null;
  if (answer !== null && (asked || (waiting && !full && draft.mood === 'statement')))
    if (answers(piece, pieces, i, tokens)) return 'answer';
  if (draft.mood === 'correction' || draft.mood === 'strike' || draft.mood === 'command') return null;
  // "The sternum does not hurt": a bare "does" asks only where a clause begins.
  if (
    piece.role === 'asking' &&
    piece.weak &&
    full &&
    draft.mood === 'statement' &&
    piece.to - piece.from === 1 &&
    !marked(piece, 'article')
  )
    return null;
  // "You have no pain, do you": what was said becomes a question.
  if (full && draft.mood === 'statement' && endsSentence(pieces, i, tokens) && isTag(piece)) {
    draft.mood = 'question';
    return null;
  }
  if (piece.role === 'asking' || piece.role === 'ask') {
    const before = pieces[i - 1]?.role;
    const joined = before === 'asking' || before === 'negation' || before === 'ask';
    if (draft.mood === 'instruction' && piece.role === 'asking') return null;
    if (full || draft.mood !== 'statement') return joined ? null : 'question';
    return joined ? null : 'question';
  }
  const mood = isPlanned(piece, pieces, i) ? 'plan' : tagged(piece);
  if (mood !== null && BEGINNING.has(mood)) {
    if (mood === 'instruction' && !mayTell(pieces, i, tokens)) return null;
    if (mood === 'plan' && draft.mood === 'statement' && colour(piece, draft, pieces, i) !== null)
      return null;
    // "Tell me if it hurts" is one instruction, and "does it hurt if…" one question.
    if (draft.mood === 'instruction' || (draft.mood === 'supposing' && !full)) return null;
    if (draft.mood === 'question' && !full) return null;
    return mood;
  }
  if (piece.role === 'intention' && (full || draft.mood !== 'statement'))
    return colour(piece, draft, pieces, i) === null ? 'statement' : null;
  // A "no" or a "yes" after what was supposed or told begins something stated.
  const outOfMood = draft.mood === 'supposing' || draft.mood === 'instruction' || draft.mood === 'plan';
  if (outOfMood && full && (answer !== null || readingOf(piece, 'talk.courtesy') !== null)) {
    if (answer !== null && waiting && answers(piece, pieces, i, tokens)) return 'answer';
    if (i > 0 && piece.role !== 'site') return 'statement';
  }
  // What was done or measured, after a pause, is no part of what was told or planned before it.
  const paused = (tokens[piece.from - 1]?.pause ?? '') !== '';
  if ((outOfMood || draft.mood === 'question') && paused && isDone(piece)) return 'statement';
  if (full && takesBack(pieces, i)) return 'correction';
  if (asked && piece.role === 'vital') return 'statement';
  return null;
}

const isDone = (piece: Piece): boolean =>
  (piece.role === 'care' && (marked(piece, 'on') || marked(piece, 'put'))) ||
  (piece.role === 'vital' && (piece.islands[0]?.slots.length ?? 0) > 0);

// "Swelling left ankle no the right": a "no" with nothing after it but a side.
function takesBack(pieces: readonly Piece[], i: number): boolean {
  const [piece, next, after] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (piece === undefined || next === undefined || !marked(piece, 'plain')) return false;
  return next.role === 'side' && next.to - next.from > 1 && (after === undefined || after.role === 'site');
}

// "Going to put a tourniquet on" is a plan; "going to check your leg" is what is being done.
const isPlanned = (piece: Piece, pieces: readonly Piece[], i: number): boolean =>
  marked(piece, 'mood', 'plan') && pieces.slice(i + 1).find(({ role }) => role !== 'small')?.role === 'care';

const tagged = (piece: Piece): Mood | null => {
  const island = piece.role === 'mood' ? piece.islands[0] : undefined;
  return island === undefined ? null : ((tagOf(island, 'mood') as Mood | null) ?? null);
};

// A mood that colours the clause it stands in: somebody else's, the examiner's own, long ago, or put off till later.
function colour(piece: Piece, draft: Draft, pieces: readonly Piece[], i: number): Mood | null {
  const mood = tagged(piece);
  if (mood === 'others' || mood === 'own' || mood === 'past') return mood;
  const namesOnly =
    draft.pieces.some(({ role }) => role === 'site') && !draft.pieces.some(({ role }) => STATING.has(role));
  const next = pieces.slice(i + 1).find(({ role }) => role !== 'small');
  const promised = marked(piece, 'future') && next?.role !== 'site' && next?.role !== 'side';
  if ((mood === 'plan' || promised || marked(piece, 'mood', 'later')) && namesOnly) return 'plan';
  return calls(pieces, i) ? 'others' : null;
}

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history', 'same']);

// "Bram you're bleeding": a name that is called before "you" may be anybody's; what is said to it is kept in words.
function calls(pieces: readonly Piece[], i: number): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  const called = piece?.role === 'unknown' && i === 0;
  return called && next !== undefined && (isSmall(next, 'you') || marked(next, 'you'));
}

// What a strike can name: a thing, and no new reading ("scratch that, pulse ninety").
const isNamed = (piece: Piece): boolean => {
  if (piece.role === 'finding' || piece.role === 'site' || piece.role === 'side' || piece.role === 'csm')
    return true;
  if (piece.role === 'vital') return marked(piece, 'heading');
  return (piece.role === 'care' || piece.role === 'history') && marked(piece, 'noun');
};

// "Strike that" is whole by itself; what follows it is said anew, unless it names what to strike ("scratch that bruise").
const closesItself = (draft: Draft, piece: Piece, pause: Pause): boolean => {
  const [first] = draft.pieces;
  if (first === undefined || draft.mood !== 'strike' || !marked(first, 'strike', 'last')) return false;
  return !(marked(first, 'strike', 'named') && pause === '' && isNamed(piece));
};

function settle(draft: Draft, pause: Pause, tokens: readonly Token[], asking: boolean): Mood {
  if (draft.mood !== 'statement') return draft.mood;
  return pause === 'ask' || hasTagQuestion(draft, tokens) || asksOn(draft, tokens, asking)
    ? 'question'
    : 'statement';
}

// "No pain in your back, right": a "right" at the end of what is said to the patient asks for a yes or a no.
function hasTagQuestion({ pieces }: Draft, tokens: readonly Token[]): boolean {
  const [last, before] = [pieces.at(-1), pieces.at(-2)];
  if (last === undefined || before === undefined || pieces.length < 4) return false;
  const isRight =
    last.weak &&
    last.to - last.from === 1 &&
    readingOf(last, 'talk.courtesy') !== null &&
    last.role === 'side';
  return (
    isRight &&
    before.role === 'site' &&
    tokens.slice(pieces[0]?.from, last.from).some(({ word }) => word === 'your') &&
    pieces.some(({ role }) => role === 'finding')
  );
}

// "And your shoulders" after a question asks the same of another site.
function asksOn({ pieces }: Draft, tokens: readonly Token[], asking: boolean): boolean {
  const site = pieces.find(({ role }) => role === 'site');
  if (site === undefined || !pieces.every(({ role }) => NAMING.has(role))) return false;
  const lead = tokens.slice(pieces[0]?.from, site.to).map(({ word }) => word);
  return lead.includes('and') && (asking || lead.includes('your'));
}

const NAMING: ReadonlySet<Role> = new Set(['site', 'small', 'side', 'part', 'talk', 'intention', 'mood']);

const withoutTag = (draft: Draft, tokens: readonly Token[]): readonly Piece[] => {
  const last = draft.pieces.at(-1);
  if (last === undefined || !hasTagQuestion(draft, tokens)) return draft.pieces;
  return [...draft.pieces.slice(0, -1), { ...last, role: 'talk' }];
};

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
    // "Sorry, laceration" corrects; "actually there is swelling" says something new.
    if (next.role === 'finding') return !marked(piece, 'hedge');
    if (next.role === 'correction') continue;
    if (next.role !== 'small' && next.role !== 'talk' && next.role !== 'negation' && next.role !== 'answer')
      return false;
    if (tokens[next.to - 1]?.pause === 'end') return false;
  }
  return false;
}
