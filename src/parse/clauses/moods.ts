// Where what is supposed, planned or told to somebody begins; "he can bend it" tells nobody to bend anything.

import { isSmall, marked, type Piece } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { colour } from './colour.ts';
import type { Draft } from './draft.ts';
import { moodOf } from './mood-words.ts';
import { become, begin, type Place, type Turn } from './place.ts';

export function newMood({ piece, pieces, i, tokens, full, waiting, draft }: Place): Turn | 'stay' | null {
  // "Grip's strong and move your toes for me."
  if (full && draft.mood === 'statement' && movesYours(pieces, i)) return begin('instruction');
  const mood = isPlanned(piece, pieces, i) ? 'plan' : moodOf(piece);
  // "Needs some water, left knee swollen": only care that is wanted is planned.
  if (marked(piece, 'wanted') && mood === 'plan' && !isPlanned(piece, pieces, i)) return null;
  if (mood === 'supposing' && isHedge(pieces, i, tokens)) return 'stay';
  // "If I push on your ribs, does it hurt?": it is being done.
  if (mood === 'supposing' && PUSHES.test(saidIn(tokens, piece.from, piece.from + PUSHED))) return 'stay';
  // "Where does it hurt?" "I think it's my wrist": so the patient answers.
  if (waiting && !full && marked(piece, 'guess')) return 'stay';
  // These moods begin where their words stand; the others ("his brother", "years ago") colour the whole clause.
  if (mood !== 'supposing' && mood !== 'plan' && mood !== 'instruction') return null;
  // "Eyes open for me": to whom it is said comes last.
  // "Unable to follow commands": what somebody cannot do.
  if (mood === 'instruction' && ABLE_TO.test(saidIn(tokens, Math.max(0, piece.from - 2), piece.from)))
    return null;
  if (mood === 'instruction' && isForMe(piece, tokens) && isBareTelling(draft, pieces, i, tokens))
    return become('instruction');
  if (mood === 'instruction' && (!mayTell(pieces, i, tokens) || isAskedOn(pieces, i, tokens, draft)))
    return isTellingIf(piece) ? begin('supposing') : 'stay';
  const coloured =
    mood === 'plan' && draft.mood === 'statement' && colour(piece, draft.pieces, pieces, i, tokens) !== null;
  // "Tell me if it hurts" is one instruction, and "does it hurt if…" one question.
  const within =
    draft.mood === 'instruction' || ((draft.mood === 'supposing' || draft.mood === 'question') && !full);
  return coloured || within ? 'stay' : begin(mood);
}

const PUSHES = /^(if|whenever) (i|we) (just |gently )?(press|push|squeeze|prod|poke|touch|tap|feel)\b/;
const PUSHED = 4;

const movesYours = (pieces: readonly Piece[], i: number): boolean => {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  const isJoined = before !== undefined && isSmall(before, 'join');
  return isJoined && piece?.role === 'csm' && piece.weak && next !== undefined && isSmall(next, 'you');
};

// "Cough for me."
const isBareVerb = ([only, ...others]: readonly Piece[], tokens: readonly Token[]): boolean =>
  others.length === 0 && /^(cough|breathe|swallow|smile)$/.test(tokens[only?.from ?? -1]?.word ?? '');

const isForMe = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  to - from === 2 && tokens[from]?.word === 'for' && /^(me|us)$/.test(tokens[to - 1]?.word ?? '');

const isBareTelling = (
  { mood, pieces: said }: Draft,
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
): boolean => {
  const before = pieces[i - 1];
  return (
    mood === 'statement' &&
    before !== undefined &&
    !isPaused(tokens, before) &&
    (isBareVerb(said, tokens) || said.some(({ role }) => role === 'mood')) &&
    said.every(
      ({ role, weak }) =>
        weak ||
        role === 'site' ||
        role === 'side' ||
        role === 'mood' ||
        role === 'small' ||
        role === 'history',
    )
  );
};

// "He will tell me if his leg hurts": it is not said that it does.
const isTellingIf = (piece: Piece): boolean => marked(piece, 'conditional');

const MAYBE = /^(maybe|possibly|perhaps|probably)$/;
const MEASURE = /^(a|an|half|one|couple|ten|hundred|more|less|about|around)$/;

// "Fell maybe three metres": how far is what is guessed, and not that it was so.
function isHedge(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || piece.to - piece.from > 1 || !MAYBE.test(tokens[piece.from]?.word ?? ''))
    return false;
  // "Fifteen minutes maybe".
  if ((next === undefined || isPaused(tokens, piece)) && endsNumber(pieces[i - 1], tokens)) return true;
  if (next === undefined || isPaused(tokens, piece)) return false;
  const isNumber = next.role === 'figure' || next.islands[0]?.slots[0]?.from === next.from;
  const isTold = pieces.slice(0, i).some(({ role }) => role === 'history');
  return isNumber || (isTold && MEASURE.test(tokens[next.from]?.word ?? ''));
}

const UNIT = /^(minutes?|hours?|days?|weeks?|months?|years?|metres?|meters?|feet|foot|miles?|kilos?)$/;

const endsNumber = (before: Piece | undefined, tokens: readonly Token[]): boolean =>
  before !== undefined &&
  !isPaused(tokens, before) &&
  (before.role === 'figure' || before.role === 'time' || UNIT.test(tokens[before.to - 1]?.word ?? ''));

// "Going to put a tourniquet on" is a plan; "going to check your leg" is what is being done.
// "Going to pop a sling on": one verb that the grammar does not know may stand before the care.
function isPlanned(piece: Piece, pieces: readonly Piece[], i: number): boolean {
  if (!marked(piece, 'mood', 'plan')) return false;
  const [verb] = pieces.slice(i + 1);
  const on = pieces.slice(verb?.role === 'unknown' && verb.to - verb.from === 1 ? i + 2 : i + 1);
  return on.find(({ role }) => role !== 'small')?.role === 'care';
}

const ABLE_TO =
  /^(unable|able|fails|failed|failing|refuses|refused|refusing|struggles|struggling|trying|tries) to$/;

// An instruction opens what is said: "he can bend it" tells nobody to bend anything.
function mayTell(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (before === undefined || isPaused(tokens, before)) return true;
  // "Going to look in your mouth": the verb of what somebody is about to do.
  if (before.role === 'intention' && tokens[before.to - 1]?.word === 'to' && isHandsOn(pieces[i], tokens))
    return false;
  if (isPlannedOn(pieces, i, tokens)) return false;
  // "I don't like the look of his skin": a thing that is spoken of.
  if (
    isSmall(before, 'article') &&
    /^(look|feel|sound)s? of$/.test(saidIn(tokens, piece?.from ?? 0, (piece?.from ?? 0) + 2))
  )
    return false;
  // "Airway's open": the verb is in the word as it was written.
  const last = tokens[before.to - 1];
  if (before.role === 'unknown' && last !== undefined && last.to - last.from > last.word.length) return false;
  if (isSmall(before, 'person') && !isSmall(before, 'you')) return false;
  // "But the bones don't hurt": so it is with them.
  if (before.role === 'unknown' && isDoNot(pieces[i], tokens) && isNamed(pieces, i - 1)) return false;
  // "The airway is open", "he can bend it".
  if (isSmall(before, 'link')) return false;
  const earlier = pieces[i - 2];
  // "Left shin deformed get me a splint": what somebody is to bring is told, whatever stands before it.
  if (BRING.test(saidIn(tokens, pieces[i]?.from, (pieces[i]?.from ?? 0) + 2)) && before.role !== 'small')
    return true;
  // "Hips okay to squeeze": what was done; "I want you to squeeze" tells.
  if (tokens[before.to - 1]?.word === 'to' && earlier?.role === 'finding') return false;
  // "Can bite down okay": so somebody is able to, and nobody is told to; "you can lie back" tells.
  if (isAble(before, tokens) && !(earlier !== undefined && isSmall(earlier, 'you'))) return false;
  if (
    earlier !== undefined &&
    before.role === 'small' &&
    isSmall(earlier, 'person') &&
    !isSmall(earlier, 'you')
  )
    return false;
  // "He does not want to lift it" tells nobody anything.
  if (isOfThirdPerson(pieces, i, tokens)) return false;
  // "Grip's strong and wiggle your toes": whose they are says whom it is told.
  const [next] = pieces.slice(i + 1);
  if (next !== undefined && isSmall(next, 'you')) return true;
  // "Pressing on the ribs tell me if it hurts": nothing else is meant, whatever stands before it.
  if (piece !== undefined && isTellingIf(piece)) return true;
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

const BRING = /^(get|bring|pass|hand|find|fetch|grab|throw) (me|us)$/;

const isHandsOn = (piece: Piece | undefined, tokens: readonly Token[]): boolean =>
  /^(look|feel|lift|press|push|squeeze|raise|bend|straighten|turn|pull|move|open|touch|tilt|flex)$/.test(
    tokens[piece?.from ?? -1]?.word ?? '',
  );

// "Going to lift your top and look at your chest": the plan goes on.
function isPlannedOn(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  if (tokens[pieces[i]?.from ?? -1]?.word !== 'and') return false;
  const start = pieces.slice(0, i).findLastIndex((piece) => isPaused(tokens, piece)) + 1;
  return pieces.slice(start, i).some(({ role, to }) => role === 'intention' && tokens[to - 1]?.word === 'to');
}

const isDoNot = (piece: Piece | undefined, tokens: readonly Token[]): boolean =>
  piece !== undefined && tokens[piece.from]?.word === 'do' && tokens[piece.from + 1]?.word === 'not';

// A thing with its article: "the bones", "his muscles".
function isNamed(pieces: readonly Piece[], noun: number): boolean {
  const start = pieces.slice(0, noun).findLastIndex(({ role }) => role !== 'unknown');
  const article = pieces[start];
  return article !== undefined && isSmall(article, 'article');
}

const isAble = ({ role, to }: Piece, tokens: readonly Token[]): boolean =>
  role === 'small' && /^(can|could)$/.test(tokens[to - 1]?.word ?? '');

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
