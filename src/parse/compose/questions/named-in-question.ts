// "Any medical problems asthma", "any allergies latex": what is named straight behind a whole question of history may be its answer, or
// what is asked after. It is stated and asked about.

import type { Topic } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { isLikely, likelyTag, marked, type Piece, type Role, readingOf, tagIn } from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { StateAll } from '../corrections/dry-run.ts';
import { answeredTopic } from '../history/history.ts';
import { bear, place, state, type Talk, textOf } from '../talk.ts';
import { doubtFrom } from './told-in-question.ts';

/** States what is named so; returns the pieces that still ask, all where nothing is. */
export function tellNamed(talk: Talk, clause: Clause, stateAll: StateAll): readonly Piece[] {
  const { pieces, pause } = clause;
  const at = pieces.findIndex((piece) => readingOf(piece, 'history.ask') !== null);
  const [ask, ...named] = pieces.slice(at);
  const topic = ask === undefined ? null : (tagIn(ask, 'history.ask', 'asks') as Topic | null);
  if (at < 0 || ask === undefined || topic === null || named.length === 0) return pieces;
  if (pause === 'ask' || isPaused(talk.tokens, ask) || marked(ask, 'item') || marked(ask, 'to-end'))
    return pieces;
  const isTerms = named.every((piece, k) =>
    k % 2 === 0 ? isTerm(piece, topic) : saidIn(talk.tokens, piece.from, piece.to) === 'and',
  );
  if (!isTerms && (!isNamed(talk, ask, named, topic) || asksOn(talk, clause))) return pieces;
  if (isAnsweredNext(talk, clause)) {
    const text = textOf(talk, ask.from, clause.pieces.at(-1)?.to ?? ask.to);
    const asked = { about: 'topic', topic, item: text } as const;
    bear(talk, { asked, askedBefore: asked, question: text });
    place(talk, ask, ...named);
    return [];
  }
  const before = talk.frames.length;
  if (isTerms) stateAll(talk, named);
  else if (!stateFree(talk, named, topic)) return pieces;
  doubtFrom(talk, before, ({ kind }) => kind === 'history');
  place(talk, ask, ...named);
  bear(talk, { asked: null, isToldAsking: true, asking: true });
  return [];
}

// A thing by its name: "asthma", and neither "medical history" nor "no asthma".
const isTerm = (piece: Piece, topic: string): boolean =>
  piece.role === 'history' &&
  isLikely(piece, 'topic', topic) &&
  !isLikely(piece, 'noun') &&
  !marked(piece, 'denied');

const NAMED: ReadonlySet<Topic> = new Set<Topic>(['allergies', 'medications', 'past-history', 'name']);
// Of these only a question that opens with "what" is answered by a name.
const BY_WHAT: ReadonlySet<Topic> = new Set<Topic>(['last-intake', 'quality', 'provocation']);

const NAMING: ReadonlySet<Role> = new Set(['unknown', 'attribute', 'history']);
const OPENS = /^(a|an|the|my|some)$/;
const JOINS = /^(and( (a|an|the|my|some))?|a|an|the|my|some)$/;
const MOST_WORDS = 5;

/** True for a few words that name something and could not go on with the question: "latex and nuts", "a water tablet". */
function isNamed({ tokens, utterance }: Talk, ask: Piece, named: readonly Piece[], topic: Topic): boolean {
  const isWhat = tokens[ask.from]?.word === 'what';
  if (!NAMED.has(topic) && !(BY_WHAT.has(topic) && isWhat)) return false;
  const { from, to } = spanned(named);
  if (to - from > MOST_WORDS || tokens.slice(from, to - 1).some(({ pause }) => pause !== '')) return false;
  const [first, ...rest] = named;
  const isNoun = (piece: Piece): boolean => isNounOf(piece, topic, piece === first);
  if (first === undefined || !(isNoun(first) || OPENS.test(saidIn(tokens, first.from, first.to))))
    return false;
  const isJoint = (piece: Piece): boolean => JOINS.test(saidIn(tokens, piece.from, piece.to));
  if (!rest.every((piece) => isNoun(piece) || isJoint(piece)) || !named.some(isNoun)) return false;
  // "Any allergies Dave": who is asked is called by his name.
  const isCalled = topic !== 'name' && /^\p{Lu}/u.test(utterance.text.slice(tokens[from]?.from ?? 0));
  return !isCalled && (topic === 'quality' || named.some(({ role }) => role !== 'attribute'));
}

function isNounOf(piece: Piece, topic: Topic, isFirst: boolean): boolean {
  if (marked(piece, 'denied') || marked(piece, 'negation', 'before')) return false;
  if (NAMING.has(piece.role)) return true;
  switch (topic) {
    // "Allergic to anything wasp stings."
    case 'allergies':
      return piece.role === 'finding' && !isLikely(piece, 'adj');
    // "A blue puffer", "a blood pressure tablet".
    case 'medications':
      return (
        (piece.role === 'care' && likelyTag(piece, 'care') === 'medication') ||
        (piece.role === 'vital' && piece.islands[0]?.slots.length === 0) ||
        (piece.role === 'finding' && isLikely(piece, 'predicate'))
      );
    // "Bad knees", behind a word that says how they are.
    case 'past-history':
      return piece.role === 'site' && !isFirst;
    case 'quality':
      return piece.role === 'finding';
    case 'provocation':
      return piece.role === 'csm' && piece.weak;
    default:
      return false;
  }
}

// "Any allergies latex no": the "no" may be of the latex.
const isAnsweredNext = ({ clauses }: Talk, clause: Clause): boolean =>
  clauses[clauses.indexOf(clause) + 1]?.mood === 'answer';

// "Any allergies latex anything like that."
const asksOn = ({ clauses }: Talk, clause: Clause): boolean =>
  clause.pause === '' && clauses[clauses.indexOf(clause) + 1]?.mood === 'question';

function stateFree(talk: Talk, named: readonly Piece[], topic: Topic): boolean {
  const { from, to } = spanned(named);
  const found = answeredTopic(talk, topic, from, to);
  if (found !== null) state(talk, [{ statement: found.statement, known: found.known, from, to }]);
  return found !== null;
}
