// Whether a piece begins a clause of another mood or turns the one in hand; the rules stand in one list and the first counts.

import { isSmall, marked, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused, pauseBefore } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { answers, endsQuestion } from './answers.ts';
import { answeredInBreath, askedOn, asksOtherSide } from './asked-on.ts';
import { answeredReading, bareAsking, measured, question } from './asking.ts';
import { chosenInBreath, toldAfterWhich } from './choices.ts';
import { colour } from './colour.ts';
import { corrects, takesBack, turnsAnswer } from './corrects.ts';
import type { Draft } from './draft.ts';
import { inverted } from './inverted.ts';
import { done, outOfMood, statedAfter } from './leaving.ts';
import { beginsProblem, turnsToPatient } from './list-words.ts';
import { foundThere, lookedFor } from './looked-for.ts';
import { moodOf } from './mood-words.ts';
import { newMood } from './moods.ts';
import { movesPlace } from './moves-place.ts';
import { readAfterTalk, toldOfToday } from './own-breath.ts';
import { become, begin, isAnswer, type Place, type Rule, type Turn } from './place.ts';
import {
  answeredAsked,
  cannotAsTold,
  repliedByNumber,
  repliedByPlace,
  repliedInBreath,
  repliedInWords,
  repliedWithPlace,
  toldWhenAsked,
} from './run-on.ts';
import { tagQuestion } from './tag-questions.ts';
import {
  backToPatient,
  besideAge,
  besideSide,
  explains,
  isOfLook,
  reading,
  seenThen,
  tellsAfterAll,
} from './turns-within.ts';
import { anywhere, checkedNext, deniedAfter, onlyThat } from './unsigned.ts';

const RULES: readonly Rule[] = [
  order,
  correction,
  askedOn,
  answer,
  repliedByNumber,
  repliedInWords,
  repliedInBreath,
  repliedByPlace,
  repliedWithPlace,
  answeredAsked,
  cannotAsTold,
  toldWhenAsked,
  exclaimed,
  goingOn,
  foundThere,
  anywhere,
  deniedAfter,
  answeredInBreath,
  onlyThat,
  checkedNext,
  bareAsking,
  measured,
  answeredReading,
  tagQuestion,
  toldAfterWhich,
  inverted,
  chosenInBreath,
  question,
  lookedFor,
  besideAge,
  besideSide,
  newMood,
  intention,
  outOfMood,
  statedAfter,
  done,
  takenBack,
  seenThen,
  backToPatient,
  readAfterTalk,
  toldOfToday,
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

// "A pressure mark", "the mark on his neck": a thing that is there, and no word to the tool.
function isThing(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (piece === undefined || piece.to - piece.from > 1) return false;
  // "Mark over the left shin": a word to the tool is followed by what it is to keep.
  if (WHERE.test(tokens[piece.to]?.word ?? '') && !isPaused(tokens, piece)) return true;
  if (before === undefined || isPaused(tokens, before)) return false;
  const isWord = before.role === 'vital' && (before.islands[0]?.slots.length ?? 0) === 0;
  return (
    isWord ||
    marked(before, 'plain') ||
    before.role === 'unknown' ||
    before.role === 'attribute' ||
    before.role === 'part' ||
    isSmall(before, 'article')
  );
}

const WHERE = /^(on|over|across|behind|around|above|below|under)$/;

const SAYING = new Set<Role>(['csm', 'finding', 'asking', 'ask', 'intention', 'mood']);

function isWithinSaying(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces.slice(0, i).findLast((one) => one.role !== 'small'), pieces[i]];
  if (before === undefined || piece === undefined || marked(piece, 'strike', 'last')) return false;
  const said = tokens.slice(before.from, piece.from);
  // "Feels nothing when I scratch the sole".
  if (/^(i|we|you|me)$/.test(tokens[piece.from - 1]?.word ?? '')) return true;
  return SAYING.has(before.role) && said.every(({ pause }) => pause === '');
}

function order({ piece: { role }, pieces, i, tokens, addressed }: Place): Turn | null {
  if (addressed && beginsProblem(pieces, i, tokens)) return begin('problem');
  if (addressed && turnsToPatient(pieces, i, tokens)) return begin('patient');
  if (role === 'mark' && isThing(pieces, i, tokens)) return null;
  // "He can't feel me scratch the sole": within a breath that says something it strikes nothing.
  if (role === 'strike' && isWithinSaying(pieces, i, tokens)) return null;
  return role === 'strike' || role === 'mark' || role === 'command' ? begin(role) : null;
}

function correction({ piece, pieces, i, tokens, asked, full, waiting, draft }: Place): Turn | null {
  // "Does your left arm hurt?" "No, it's the right": it answers, and takes back nothing that was said before.
  // "How bad is it?" "Eight, no, call it six": the figure before it has answered.
  const isTold = pieces[i - 1]?.role === 'figure' && full;
  if ((asked || (waiting && !isTold)) && marked(piece, 'denies')) return null;
  // "Any pain?" "No no ow": where a question waits, it answers.
  if (waiting && !full && isAnswer(piece)) return null;
  if (piece.role !== 'correction') return null;
  const next = pieces[i + 1];
  // "Any allergies?" "No, oh wait, aye, latex."
  if (draft.mood === 'answer' && next !== undefined && isAnswer(next) && !marked(next, 'plain'))
    return begin('answer');
  if (tellsAfterAll(pieces, i, tokens)) return begin('statement');
  const turned = !asked && !waiting && turnsAnswer(pieces, i, tokens);
  return turned || corrects(pieces, i, tokens) ? begin('correction') : null;
}

function answer({ piece, pieces, i, tokens, full, asked, waiting, draft }: Place): Turn | 'stay' | null {
  if (!isAnswer(piece)) return null;
  if (asked && endsQuestion(piece, tokens)) return 'stay';
  // "Any deformity there, it looks a bit knobbly?"
  if (draft.mood === 'question' && piece.role === 'attribute' && isOfLook(pieces, i, tokens)) return 'stay';
  // "What makes it worse?" "Worse when I breathe in": when it is so is no answer of its own.
  const before = tokens[piece.from - 1];
  if (tokens[piece.from]?.word === 'when' && before?.pause === '' && /^(worse|better)$/.test(before.word))
    return 'stay';
  // "Any allergies? No, actually yes, penicillin": the second takes the first back.
  if (draft.mood === 'answer' && tokens[piece.from]?.word === 'actually') return begin('answer');
  // "The left one yes, the right one no": each answer has its side before it.
  if (waiting && !full && draft.pieces.some(({ role }) => role === 'side')) return become('answer');
  if (draft.mood === 'answer' && pieces[i - 1]?.role === 'side') return 'stay';
  const open =
    asked ||
    asksAfterAnother(draft, tokens) ||
    asksOtherSide(draft) ||
    (waiting && !full && draft.mood === 'statement');
  return open && answers(pieces, i, tokens) ? begin('answer') : null;
}

// "Can you take a deep breath for me ow": it answers nothing, and nobody can tell where it hurts.
function exclaimed({ piece, draft }: Place): Turn | null {
  const isTold = draft.mood === 'question' && draft.pieces.some((one) => marked(one, 'mood', 'instruction'));
  const isOfPlace = draft.pieces.some(({ role }) => role === 'site' || role === 'finding');
  return isTold && !isOfPlace && marked(piece, 'exclaim') ? begin('supposing') : null;
}

// "Does your left knee hurt no what about the right yes": with a side or a "this" it asks, though it names nothing.
const asksAfterAnother = ({ mood, pieces: [first, ...rest] }: Draft, tokens: readonly Token[]): boolean =>
  mood === 'question' &&
  first?.role === 'asking' &&
  /^(what|how) about$/.test(saidIn(tokens, first.from, first.to)) &&
  rest.length > 0;

function goingOn({ draft: { mood } }: Place): 'stay' | null {
  return mood === 'correction' || mood === 'strike' || mood === 'command' ? 'stay' : null;
}

function intention(place: Place): Turn | 'stay' | null {
  const { piece, pieces, i, tokens, full, draft } = place;
  if (piece.role !== 'intention') return null;
  // "We'll roll him into the recovery position": it is planned yet.
  const before = draft.pieces.at(-1);
  const isPlanned = draft.mood === 'plan' && before !== undefined && moodOf(before) === 'plan';
  if (isPlanned && pauseBefore(tokens, piece) === '') return 'stay';
  if (isAskedWhile(place) || isFoundWhile(place) || isSpreading(place)) return 'stay';
  // "Describes the pain as squeezing": so it feels, and nobody squeezes.
  if (draft.pieces.some((one) => marked(one, 'topic', 'quality'))) return null;
  if (!full && draft.mood === 'statement') return null;
  return colour(piece, draft.pieces, pieces, i, tokens) === null ? begin('statement') : 'stay';
}

// "A rash coming up all over the chest": what is found there comes up, and nobody goes on to the next place.
const isSpreading = ({ piece, pieces, i, tokens, draft }: Place): boolean => {
  const before = pieces[i - 1];
  if (draft.mood !== 'statement' || before?.role !== 'finding' || isPaused(tokens, before)) return false;
  return /^(coming|going|running|working)$/.test(tokens[piece.from]?.word ?? '');
};

const WHILE: ReadonlySet<string> = new Set(['when', 'where', 'while', 'if', 'as']);

// "Any tenderness when I press on your cheekbones" and "does it hurt where I am pressing on the wrist" ask of these places.
function isAskedWhile(place: Place): boolean {
  return place.draft.mood === 'question' && isWhile(place);
}

// "Crunching when I press on the left collarbone": what was pressed on is where it was found.
function isFoundWhile(place: Place): boolean {
  const { draft } = place;
  const finds = draft.pieces.some(({ role, weak }) => role === 'finding' && !weak);
  return (
    draft.mood === 'statement' && finds && !draft.pieces.some(({ role }) => role === 'site') && isWhile(place)
  );
}

function isWhile({ piece, pieces, i, tokens }: Place): boolean {
  const before = pieces.slice(0, i).findLast((one) => !isSmall(one, 'person') && !isSmall(one, 'link'));
  const said = tokens.slice(before?.to ?? 0, piece.from);
  return WHILE.has(tokens[(before?.to ?? 0) - 1]?.word ?? '') && said.every(({ pause }) => pause === '');
}

function takenBack({ pieces, i, tokens, full, waiting, draft }: Place): Turn | null {
  if (full && explains(pieces, i, tokens)) return begin('statement');
  if (draft.mood === 'statement' && !waiting && movesPlace(pieces, i, tokens, draft.pieces))
    return begin('correction');
  const { word } = tokens[pieces[i]?.from ?? 0] ?? { word: '' };
  return (full || word === 'not') && takesBack(pieces, i, tokens) ? begin('correction') : null;
}
