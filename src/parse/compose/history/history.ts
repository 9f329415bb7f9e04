// Composes history from its opening words and the patient's own words that follow, as said.

import type { HistoryStatement, Topic } from '../../../terms/index.ts';
import { hasTag, numberOf, tagOf } from '../../islands/island.ts';
import { mayBegin } from '../../numbers/index.ts';
import { countsThing } from '../../pieces/counts-thing.ts';
import { isSmall, marked, type Piece, type Role, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Talk, textOf } from '../talk.ts';
import type { FoundHistory, OpenTopic } from './found-history.ts';
import { ageOf, weightOf } from './measured.ts';
import { endOfName, endOfText, namesReason, opensText, startOfName, startOfText } from './text.ts';

/** What one history piece says with the pieces after it; `pieces` is the rest of the clause from that piece on. */
export function historyOf(
  talk: Talk,
  pieces: readonly Piece[],
  negated: boolean,
): readonly FoundHistory[] | OpenTopic {
  const [piece] = pieces;
  const island = piece === undefined ? null : readingOf(piece, 'history');
  const topic = island === null ? null : (tagOf(island, 'topic') as Topic | null);
  if (piece === undefined || island === null || topic === null) return [];
  const { from, to } = piece;
  const give = (text: string, end: number, more: Partial<HistoryStatement> = {}): readonly FoundHistory[] => [
    { statement: { kind: 'history', topic, text, ...more }, known: {}, from, to: end },
  ];
  // "My name is …" is the patient's only in answer to being asked: the responder has a name too.
  // Who was asked for name and age in one breath tells both.
  if (hasTag(island, 'mine') && !isAsked(talk, topic) && !isAsked(talk, 'age')) return [];
  if (topic === 'name' && callsFor(talk, piece)) return [];
  if (topic === 'last-intake' && isWhile(talk, from)) return [];
  const whole = hasTag(island, 'whole');
  const except = exceptionAfter(talk, pieces);
  // "No medical history apart from the thyroid": there is one, and nothing is denied as a whole.
  if (except !== null && (negated || hasTag(island, 'denied'))) {
    const end = endOfText(talk.tokens, pieces.slice(pieces.indexOf(except)), true, topic);
    const start = negated ? (deniedFrom(talk, from) ?? from) : from;
    return [{ ...give(textOf(talk, start, end), end)[0], from: start } as FoundHistory];
  }
  if (hasTag(island, 'denied') || (negated && (hasTag(island, 'noun') || whole)))
    return give(textOf(talk, from, to), to, { present: false });
  // "Looks about fifty feet": a bare number is years only where nothing is counted in it.
  if (hasTag(island, 'alone') && !standsAlone(talk, pieces) && !answersAge(talk, topic, pieces)) return [];
  if (topic === 'age') return ageOf(talk, island, piece);
  if (topic === 'sex') return give(tagOf(island, 'sex') ?? textOf(talk, from, to), to);
  if (topic === 'weight' && numberOf(island, 'weight') !== null) return weightOf(talk, island, piece);
  // "Took the weight fine" weighs nobody.
  if (topic === 'weight' && !pieces.some((one) => talk.tokens.slice(one.from, one.to).some(isNumber)))
    return [];
  if (whole) return give(textOf(talk, from, to), to);
  const inBreath = hasTag(island, 'breath');
  const wholeOn = hasTag(island, 'whole-on') || inBreath;
  const own = inBreath ? breathOf(talk, pieces) : pieces;
  // "Spilt tea on her thigh there's a burn": the place is that of the burn.
  if (hasTag(island, 'yields') && isFoundThere(pieces)) return [];
  if (hasTag(island, 'to-place') && !leadsToPlace(own)) return [];
  const end = endOfText(talk.tokens, own, wholeOn || LOOSE.has(topic), topic);
  if (hasTag(island, 'denied-on')) return give(textOf(talk, from, end), end, { present: false });
  if (wholeOn)
    return give(
      textOf(talk, from, end),
      end,
      negated && !isAfterAnswer(talk, from) ? { present: false } : {},
    );
  // "Taking this glove off" takes no drug.
  if (hasTag(island, 'guard') && !opensText(talk.tokens, pieces[1])) return [];
  if (end === to) return { topic, from, to };
  // "Name is Ilse Brandt and…": a name is short.
  const past = hasTag(island, 'short') ? endOfName(talk.tokens, to, end) : end;
  const start = startOfText(talk.tokens, to, past);
  if (start >= past) return { topic, from, to };
  const told = give(textOf(talk, start, past), past, negated ? { present: false } : {});
  return topic === 'medications' && !negated ? [...told, ...conditionsIn(talk, pieces, past)] : told;
}

// "It hurts when she's drinking water", "choked while eating a roll": it tells when something else was so.
const isWhile = ({ tokens }: Talk, from: number): boolean =>
  tokens[from - 1]?.pause === '' && /^(when|while|whenever|if|without)$/.test(tokens[from - 1]?.word ?? '');

// "Started at noon, worse since": what is told in one breath ends where the speaker paused.
function breathOf({ tokens }: Pick<Talk, 'tokens'>, pieces: readonly Piece[]): readonly Piece[] {
  const last = pieces.findIndex((piece) => isPaused(tokens, piece));
  return last < 0 ? pieces : pieces.slice(0, last + 1);
}

// A finding of this place: no other one is named before it.
const isFoundThere = (pieces: readonly Piece[]): boolean => {
  const found = pieces.findIndex(({ role, weak }) => role === 'finding' && !weak);
  return found > 0 && pieces.slice(0, found).filter(({ role }) => role === 'site').length === 1;
};

const BESIDE_PLACE: ReadonlySet<Role> = new Set(['small', 'side', 'part', 'attribute']);

// "Goes up into the neck" names where, and "goes up evenly" does not.
const leadsToPlace = ([, ...rest]: readonly Piece[]): boolean =>
  rest.find(({ role }) => !BESIDE_PLACE.has(role))?.role === 'site';

const isNumber = ({ word }: Token): boolean => mayBegin(word, false);

// The words of an exception straight after the phrase.
function exceptionAfter({ tokens }: Talk, [piece, ...rest]: readonly Piece[]): Piece | null {
  const [next, after] = rest;
  if (piece === undefined || next === undefined || after === undefined || isPaused(tokens, piece))
    return null;
  // "Takes nothing but vitamins."
  const isBut =
    tokens[next.from]?.word === 'but' && /^(anything|nothing)$/.test(tokens[piece.to - 1]?.word ?? '');
  return marked(next, 'except') || isBut ? next : null;
}

// The "no" straight before it, without which the words would say the opposite.
const deniedFrom = ({ tokens }: Talk, from: number): number | null =>
  /^(no|denies|without|nil)$/.test(tokens[from - 1]?.word ?? '') ? from - 1 : null;

// "Warfarin for atrial fibrillation" tells of both.
function conditionsIn(talk: Talk, pieces: readonly Piece[], end: number): readonly FoundHistory[] {
  return pieces.slice(1).flatMap((piece): readonly FoundHistory[] => {
    const island = piece.to <= end ? readingOf(piece, 'history.past-history') : null;
    if (island === null || hasTag(island, 'noun') || !namesReason(talk.tokens, piece)) return [];
    const { from, to } = piece;
    const text = textOf(talk, from, to);
    return [{ statement: { kind: 'history', topic: 'past-history', text }, known: {}, from, to }];
  });
}

/** "No, I remember all of it": the "no" answers what was asked, and what follows has a subject of its own and is told. */
const isAfterAnswer = (talk: Talk, from: number): boolean =>
  /^(no|nope|nah)$/.test(talk.tokens[from - 1]?.word ?? '') &&
  /^(i|we|he|she|they|it|my)$/.test(talk.tokens[from]?.word ?? '');

const CALLER =
  /^(i|we|he|she|they|you|who|someone|somebody|already|have|has|just|mate|friend|wife|husband|guide|and|been|was|were|helicopter|heli|chopper|ambulance|rescue|patrol|police|backup|base|dispatch|team|help)$/;
const CALLED_FOR =
  /^(mountain|rescue|for|in|out|an|a|the|ambulance|it|you|us|him|her|them|at|patrol|help|dispatch|police|about|back|off|this|that|when|after|before|by|oh|quarter)$/;

// "We called mountain rescue at ten": help was called, and nobody's name.
const callsFor = ({ tokens }: Talk, { from, to }: Piece): boolean =>
  to - from === 1 &&
  tokens[from]?.word === 'called' &&
  (CALLER.test(tokens[from - 1]?.word ?? '') || isCalledFor(tokens[to]?.word ?? ''));

// "Called ten fifteen" is a time.
const isCalledFor = (word: string): boolean => CALLED_FOR.test(word) || mayBegin(word, false);

// These go on over other history: "history of asthma and high blood pressure".
const LOOSE: ReadonlySet<Topic> = new Set<Topic>(['mechanism', 'past-history']);

function standsAlone(talk: Talk, [piece, next]: readonly Piece[]): boolean {
  if (piece === undefined || next === undefined || isPaused(talk.tokens, piece)) return true;
  return isSmall(next, 'join') || isSmall(next, 'person') || isSmall(next, 'link') || next.role === 'history';
}

// "How old are you?" "I'm eighty can you believe it": asked for, it needs nothing but that it counts nothing else.
const answersAge = (talk: Talk, topic: Topic, pieces: readonly Piece[]): boolean =>
  topic === 'age' &&
  isAsked(talk, topic) &&
  AFTER_AGE.has(pieces[1]?.role ?? 'unknown') &&
  !countsThing(pieces, 0, talk.tokens);

const AFTER_AGE: ReadonlySet<Role> = new Set(['small', 'talk', 'mood', 'unknown', 'answer']);

const isAsked = (talk: Talk, topic: Topic): boolean =>
  talk.context.asked?.about === 'topic' && talk.context.asked.topic === topic;

/** Free words in answer to a question of history, or null where nothing is left of them. */
export function answeredTopic(talk: Talk, topic: Topic, from: number, end: number): FoundHistory | null {
  // "Penicillin and, any numbness?": the word that leads on is no part of it.
  let to = end;
  while (to > from && /^(and|but)$/.test(talk.tokens[to - 1]?.word ?? '')) to -= 1;
  const told = startOfText(talk.tokens, from, to);
  const start = topic === 'name' ? startOfName(talk.tokens, told, to) : told;
  if (start >= to) return null;
  return {
    statement: { kind: 'history', topic, text: textOf(talk, start, to) },
    known: { topic: 'carried' },
    from: start,
    to,
  };
}
