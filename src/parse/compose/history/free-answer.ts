// The patient's free words in answer to a question of history: "Penicillin. I come out in a rash."

import type { Topic } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { countsThing } from '../../pieces/counts-thing.ts';
import { figureIn, likelyTag, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { dryRun, type StateAll } from '../corrections/dry-run.ts';
import { isChatter } from '../light.ts';
import type { AskedTopic } from '../questions/settle.ts';
import { bear, place, type Said, state, type Talk, textOf } from '../talk.ts';
import { headingOf } from './heading.ts';
import { answeredTopic } from './history.ts';
import { isAge } from './measured.ts';

// A clause with one of these says something of its own.
const OTHER_TALK: ReadonlySet<Role> = new Set([
  'vital',
  'care',
  'csm',
  'history',
  'intention',
  'same',
  'ask',
  'asking',
]);

// In answer to these a patient names sites and feelings freely ("down my arm", "when I breathe in").
const FEELINGS: ReadonlySet<Topic> = new Set<Topic>([
  'events',
  'provocation',
  'quality',
  'radiation',
  'onset',
  'time',
  'symptoms',
]);

/** Takes a clause for the answer to the open question of history; false where it says something of its own. */
export function answerFreely(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const { asked } = talk.context;
  if (asked?.about !== 'topic') return false;
  if (isFree(talk, clause, asked, stateAll)) {
    const found = asked.topic === 'events' ? whatDidIt(talk, clause, stateAll) : [];
    take(talk, clause, asked.topic);
    state(talk, found);
  } else if (asked.topic === 'events' && tellsMechanism(clause)) take(talk, clause, 'mechanism');
  else return false;
  return true;
}

// "What happened to your foot?" "A wasp stung me there": what happened is what is there as well.
const whatDidIt = (talk: Talk, { pieces }: Clause, stateAll: StateAll): readonly Said[] =>
  dryRun(talk, pieces, stateAll).flatMap(({ statement, known }) =>
    statement.kind === 'finding' && (statement.finding === 'sting' || statement.finding === 'bite')
      ? [{ statement, known, ...spanned(pieces) }]
      : [],
  );

// Free words answer a question of history unless they examine, command or set out to do something else.
function isFree(talk: Talk, { pieces }: Clause, { topic, item }: AskedTopic, stateAll: StateAll): boolean {
  const isYesNo = item !== undefined;
  // "What does it feel like?" "Squeezing": so it feels, and nobody squeezes.
  const isOther = (piece: Piece): boolean =>
    OTHER_TALK.has(piece.role) &&
    !(FEELINGS.has(topic) && isSatDown(piece, talk)) &&
    !(topic === 'medications' && isNamed(piece)) &&
    !(topic === 'provocation' && piece.role === 'csm' && opensWhen(talk, pieces)) &&
    !(topic === 'quality' && piece.role === 'intention' && pieces.length === 1) &&
    !isOfTopic(piece, topic);
  // "How old are you?" "I have four sons": no age.
  const isCount =
    topic === 'age' &&
    pieces.some((_, i) => pieces[i]?.role === 'figure' && countsThing(pieces, i, talk.tokens)) &&
    !pieces.some((piece, i) => piece.role === 'figure' && !countsThing(pieces, i, talk.tokens));
  if (isCount) return false;
  const says =
    pieces.some((piece) => !isChatter(piece) || tellsHowOften(talk, piece)) || tellsWhen(talk, pieces);
  if (!says || pieces.some(isOther)) return false;
  const finds =
    pieces.some(isLocated) ||
    dryRun(talk, pieces, stateAll).some(
      ({ statement, known }) => statement.kind === 'finding' && known.site === undefined,
    );
  // "Did you black out?" "Left knee swollen.": what is found there answers no yes or no.
  return (FEELINGS.has(topic) && !isYesNo) || !finds;
}

// "What makes it worse?" "When I move.": nobody's movement was checked.
const opensWhen = ({ tokens }: Talk, pieces: readonly Piece[]): boolean =>
  /^(when|if|only|just|moving|lifting|bending|standing)$/.test(tokens[pieces[0]?.from ?? -1]?.word ?? '');

// "Just a blood pressure pill": what it is for.
const isNamed = ({ role, islands: [island] }: Piece): boolean =>
  role === 'vital' && island?.slots.length === 0;

// "Got dizzy, sat down": nobody's saturation.
const isSatDown = ({ role, from, islands: [island] }: Piece, { tokens }: Talk): boolean =>
  role === 'vital' && island?.slots.length === 0 && tokens[from]?.word === 'sat';

// "Trachea's central" has a place of its own.
const isLocated = (piece: Piece): boolean => piece.role === 'finding' && marked(piece, 'at');

// "When did you last go?" "Before we set off.": small words that say when or where, and no mere courtesy.
function tellsWhen({ tokens }: Talk, pieces: readonly Piece[]): boolean {
  const [first, last] = [pieces[0], pieces.at(-1)];
  if (first === undefined || last === undefined || last.to - first.from < FEWEST_WORDS) return false;
  return (
    pieces.every(({ role }) => role === 'small' || role === 'talk') &&
    WHEN.test(tokens[first.from]?.word ?? '')
  );
}

const FEWEST_WORDS = 3;
const WHEN = /^(before|after|when|while|since|until|all|every|up|down|through)$/;

// "Have you been sick?" "Twice."
const tellsHowOften = ({ tokens }: Talk, { from, to }: Piece): boolean =>
  tokens
    .slice(from, to)
    .some(({ word }) => /^(once|twice|sometimes|always|often|mostly|yesterday|today|earlier)$/.test(word));

// "When did it start?" "About noon, out of nowhere": what tells of the same answers with the words before it.
const isOfTopic = (piece: Piece, topic: Topic): boolean =>
  piece.role === 'history' &&
  FEELINGS.has(topic) &&
  topic !== 'symptoms' &&
  likelyTag(piece, 'topic') === topic;

// "What happened?" "My tip caught and I fell": the whole answer is the mechanism.
const tellsMechanism = (clause: Clause): boolean =>
  clause.pieces.some((piece) => piece.role === 'history' && marked(piece, 'topic', 'mechanism'));

function take(talk: Talk, clause: Clause, topic: Topic): void {
  const { from: start } = spanned(clause.pieces);
  const from = headingOf(talk, topic, start)?.from ?? start;
  const to = endOfAnswer(talk, clause);
  const found = answeredTopic(talk, topic, start, to);
  const { asked } = talk.context;
  bear(talk, { asked: null });
  if (found === null) return;
  const figure = clause.pieces.find(
    (piece, i) => piece.role === 'figure' && !countsThing(clause.pieces, i, talk.tokens),
  );
  const age = topic === 'age' && figure !== undefined ? figureIn(figure) : null;
  const years = age !== null && isAge(age) ? { years: age } : {};
  // "Did you lose consciousness?" "Just for a few seconds": the answer alone would not say what of.
  const item = asked?.about === 'topic' && asked.topic === topic ? asked.item : undefined;
  const text = item === undefined ? found.statement.text : `${item}: ${textOf(talk, start, to)}`;
  state(talk, [{ statement: { ...found.statement, text, ...years }, known: found.known, from, to }]);
  place(talk, { from, to });
}

// The clauses after a free answer belong to it while they name no place of their own.
function endOfAnswer(talk: Talk, clause: Clause): number {
  let { to: end } = spanned(clause.pieces);
  for (const { mood, pieces } of talk.clauses.slice(talk.clauses.indexOf(clause) + 1)) {
    if (mood !== 'statement' || pieces.every(isChatter)) break;
    if (pieces.some(({ role, weak }) => OTHER_TALK.has(role) || (role === 'site' && !weak))) break;
    if (pieces.some(isLocated)) break;
    end = pieces.at(-1)?.to ?? end;
  }
  return end;
}
