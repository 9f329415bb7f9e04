// What a clause says in words that are of no substance one by one, and that no entry took: it must not be lost.

import type { Clause } from '../clauses/clause.ts';
import { isSmall, marked, type Piece, readingOf } from '../pieces/piece.ts';
import { breathsOf } from './breaths.ts';
import { aspectsOf } from './csm/details.ts';
import { bareAble, bareComparison, bareReference, bareTelling, doerBehind } from './leaning-words.ts';
import { oneMore } from './sites/one-more.ts';
import { pointedPlace } from './sites/pointed-place.ts';
import { SUBSTANCE } from './substance.ts';
import { isPlaced, type Talk } from './talk.ts';
import { isHeard } from './unheard-denials.ts';

/** The pieces of a clause that are owed a note although each of them alone says nothing. */
export const saidInSmallWords = (talk: Talk, clause: Clause): readonly Piece[] => [
  ...unsaidChecks(talk, clause),
  ...barePredicate(talk, clause),
  ...calledRest(talk, clause),
  ...softAnswer(talk, clause),
  ...unaskedAnswer(talk, clause),
  ...bareRemoval(talk, clause),
  ...bareMood(talk, clause),
  ...notDone(talk, clause),
  ...bareAble(talk, clause),
  ...unable(talk, clause),
  ...bareTelling(talk, clause),
  ...bareComparison(talk, clause),
  ...bareMoving(talk, clause),
  ...pointedPlace(talk, clause),
  ...bareAttributes(talk, clause),
  ...oneMore(talk, clause),
  ...bareReference(talk, clause),
  ...doerBehind(talk, clause),
];

// "Unable to follow my finger, eyes open": each word is small, and what somebody cannot do is not.
function unable(talk: Talk, { pieces, mood }: Clause): readonly Piece[] {
  const at = pieces.findIndex(({ from }) => talk.tokens[from]?.word === 'unable');
  if (at < 0 || mood !== 'statement') return [];
  const end = pieces.findIndex((piece, k) => k > at && isPlaced(talk, piece));
  const told = pieces.slice(at, end < 0 ? pieces.length : end);
  const isSmallTalk = told.every(({ role }) => role === 'small' || role === 'mood');
  return isSmallTalk && told.length > TO.length ? told : [];
}

/** "Unable to" alone tells nothing. */
const TO = ['unable', 'to'];

// "They look alike. A bit big.": of what it is said the breath before tells.
function bareAttributes({ clauses, tokens }: Talk, { pieces, mood, sentence }: Clause): readonly Piece[] {
  const before = clauses.findLast((one) => (one.pieces.at(-1)?.to ?? 0) <= (pieces[0]?.from ?? 0));
  const isSaid = pieces.every(({ role }) => role === 'attribute' || role === 'small');
  const goesOn = before?.sentence === sentence && before.mood !== 'statement';
  const says = pieces.filter(({ role }) => role === 'attribute').length > 1;
  return mood === 'statement' && isSaid && goesOn && says && tokens.length > 0 ? pieces : [];
}

// "Left foot, sensation but no movement": of the sensation nobody said how it is, and no entry tells of it.
function unsaidChecks({ frames }: Talk, { pieces, mood }: Clause): readonly Piece[] {
  const checks = mood === 'statement' ? pieces.filter(({ role }) => role === 'csm') : [];
  if (checks.length < 2) return [];
  const said = new Set(
    frames.flatMap((one) =>
      one.frame === 'statement' && one.statement.kind === 'csm' ? [one.statement.aspect] : [],
    ),
  );
  return checks.filter((piece) => {
    const island = readingOf(piece, 'csm');
    return island !== null && aspectsOf(island).every((aspect) => !said.has(aspect));
  });
}

// "Kneecap's off to the side, skin is intact": what an "is" says of a place in nothing but small words, and what no entry took.
const barePredicate = (talk: Talk, { pieces, mood }: Clause): readonly Piece[] =>
  mood === 'statement'
    ? breathsOf(talk, pieces)
        .filter((part) => saysInSmallWords(talk, part))
        .flat()
    : [];

function saysInSmallWords(talk: Talk, pieces: readonly Piece[]): boolean {
  if (pieces.some((piece) => piece.role !== 'site' && isHeard(talk, piece))) return false;
  const site = pieces.findIndex(({ role }) => role === 'site');
  const [place, next] = [pieces[site], pieces[site + 1]];
  if (place === undefined || next === undefined) return false;
  const isLink = isSmall(next, 'link') && !isSmall(next, 'having');
  // The "is" of "kneecap's" stands in the word as it was written.
  const word = talk.tokens[place.to - 1];
  const isHeld = word !== undefined && word.to - word.from > word.word.length;
  const said = pieces.slice(site + (isLink ? 2 : 1));
  const says = said.some((piece) => isSmall(piece, 'word') && !isSmall(piece, 'turn'));
  return (isLink || isHeld) && says && said.every(({ role }) => role === 'small');
}

const REST: ReadonlySet<string> = new Set([
  'rest',
  'else',
  'elsewhere',
  'remainder',
  'otherwise',
  'other',
  'below',
  'above',
]);

// "Everything else is fine", "all below the waist is fine" call normal what nobody named: no entry, and not lost.
const calledRest = (talk: Talk, { pieces, mood }: Clause): readonly Piece[] =>
  mood === 'statement'
    ? breathsOf(talk, pieces)
        .filter((part) => isOfRest(talk, part))
        .flat()
    : [];

const isOfRest = (talk: Talk, pieces: readonly Piece[]): boolean =>
  pieces.some((piece) => piece.role === 'finding' && !isPlaced(talk, piece)) &&
  talk.tokens.slice(pieces[0]?.from, pieces.at(-1)?.to).some(({ word }) => REST.has(word)) &&
  !pieces.some((piece) => isHeard(talk, piece));

// "How's your breathing?" "Fine.": an answer that settles nothing.
const softAnswer = ({ clauses, placed }: Talk, clause: Clause): readonly Piece[] => {
  const [word, ...rest] = clause.pieces.filter(({ role }) => role !== 'small');
  const isAfter = clauses[clauses.indexOf(clause) - 1]?.mood === 'question';
  return isAfter && rest.length === 0 && word?.role === 'finding' && placed[word.from] !== true
    ? clause.pieces
    : [];
};

// "Who saw it happen?" "My brother.": what nobody here asks after, and its answer, are kept as said.
function unaskedAnswer(talk: Talk, clause: Clause): readonly Piece[] {
  const { clauses } = talk;
  const at = clauses.indexOf(clause);
  const [question, answer] =
    clause.mood === 'question' ? [clause, clauses[at + 1]] : [clauses[at - 1], clause];
  if (question?.mood !== 'question' || question.pause !== 'ask' || answer === undefined) return [];
  if (!ANSWERING.has(answer.mood) || answer.pieces.every(({ role }) => NO_ANSWER.has(role))) return [];
  const isFree = [...question.pieces, ...answer.pieces].every(
    (piece) => piece.role !== 'talk' && !isHeard(talk, piece) && !isPlaced(talk, piece),
  );
  return isFree ? clause.pieces : [];
}

const ANSWERING: ReadonlySet<Clause['mood']> = new Set(['statement', 'others', 'past', 'own']);
const NO_ANSWER: ReadonlySet<string> = new Set(['answer', 'talk', 'site', 'side', 'part', 'intention']);

// "Took it off": of what, the talk before tells; that something was ended must not be lost.
const bareRemoval = (talk: Talk, { pieces, mood }: Clause): readonly Piece[] =>
  mood === 'statement' && pieces.some((piece) => endsCare(talk, piece) && !isHeard(talk, piece))
    ? pieces.filter((piece) => !isHeard(talk, piece))
    : [];

// "Rechecked at ten" leads to what was checked.
const endsCare = ({ tokens }: Talk, piece: Piece): boolean =>
  marked(piece, 'removal') && !/^(re(?!moved|moving|leas)|adjusted)/.test(tokens[piece.from]?.word ?? '');

// "That's an old injury" says something in the words of its mood alone.
const bareMood = (talk: Talk, clause: Clause): readonly Piece[] =>
  clause.mood === 'past' &&
  !clause.pieces.every((piece) => isPlaced(talk, piece)) &&
  (clause.pieces.some((piece) => isSmall(piece, 'link')) ||
    // "No change from before."
    clause.pieces.some((piece) => marked(piece, 'negation', 'pseudo')) ||
    // "Does he smoke?" "Gave up years ago."
    talk.context.question !== null ||
    talk.clauses.some(({ mood }, k) => mood === 'question' && talk.clauses[k + 1] === clause)) &&
  clause.pieces.every(({ role, weak }) => weak || !SUBSTANCE.has(role))
    ? clause.pieces
    : [];

// "Got a collar ready but I have not put it on": without its end the note would tell the opposite.
const notDone = ({ tokens }: Talk, { mood, pieces }: Clause): readonly Piece[] =>
  mood === 'plan' && tokens[(pieces[0]?.from ?? 0) + 1]?.word === 'not' ? pieces : [];

// "Both wrists move": a joint that is no limb's end. "Both knees bend": nobody is told to.
const moves = ({ role, weak, from, to }: Piece): boolean =>
  role === 'csm' || (role === 'mood' && !weak && to - from === 1);

const bareMoving = (talk: Talk, { pieces, mood }: Clause): readonly Piece[] =>
  mood === 'statement'
    ? breathsOf(talk, pieces)
        .filter(
          (part) =>
            part
              .slice(part.findIndex(({ role }) => role === 'site') + 1)
              .some((piece) => moves(piece) && !isPlaced(talk, piece)) &&
            part.some(({ role }) => role === 'site') &&
            !part.some((piece) => isSmall(piece, 'you')) &&
            !part.some((piece) => isHeard(talk, piece)),
        )
        .flat()
    : [];
