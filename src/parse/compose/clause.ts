// Reads one clause by its mood: states, asks, answers, corrects, strikes, marks; or leaves it to be kept in words.

import type { Topic, Vital } from '../../terms/index.ts';
import type { Clause } from '../clause.ts';
import type { Command } from '../frame.ts';
import { hasTag, tagOf } from '../islands/island.ts';
import { marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { answer, answersWithSite, answerWord } from './answer.ts';
import { correct, dryRun, strike } from './correction.ts';
import { itemsOf, stateExam } from './exam.ts';
import { answeredTopic, historyOf } from './history.ts';
import { reachIn } from './polarity.ts';
import { ask, askQuietly } from './question.ts';
import { sameAgain, sameIn } from './same.ts';
import { sideIn } from './side-in.ts';
import { bear, place, spanOf, state, type Talk, textOf } from './talk.ts';
import { timeFor } from './times.ts';
import { vitalFromFigure, vitalOf } from './vital.ts';

/** Reads one clause into the talk's frames and context. */
export function readClause(talk: Talk, clause: Clause): void {
  talk.at = timeFor(talk, clause);
  // A free answer may have taken this clause in already.
  if (clause.pieces.every((piece) => isPlaced(talk, piece))) return;
  switch (clause.mood) {
    case 'statement':
      return readStatement(talk, clause);
    case 'question':
      return ask(talk, clause);
    case 'answer':
      return readAnswer(talk, clause);
    case 'correction':
      return readCorrection(talk, clause);
    case 'strike':
      return strike(talk, clause);
    case 'mark':
      return mark(talk, clause);
    case 'command':
      return command(talk, clause);
    case 'instruction':
      return openTold(talk, clause);
    default:
      // Supposed, planned, somebody else's, the examiner's own, long ago: no finding, and not lost either.
      return;
  }
}

function isPlaced(talk: Talk, piece: Piece): boolean {
  for (let at = piece.from; at < piece.to; at++) if (talk.placed[at] !== true) return false;
  return piece.to > piece.from;
}

// "Swelling to the right, no, the left wrist": a finding whose site comes only with the correction.
function openFinding(talk: Talk, clause: Clause): readonly Piece[] {
  const before = talk.clauses[talk.clauses.indexOf(clause) - 1];
  const named = clause.pieces.some(({ role }) => role === 'site');
  if (before === undefined || before.sentence !== clause.sentence || !named) return [];
  if (before.mood !== 'statement' || before.pieces.some(({ role }) => role === 'site')) return [];
  return before.pieces.filter((piece) => piece.role === 'finding' && !isPlaced(talk, piece));
}

// "Left hand, sorry, right hand: the fingers are fine": a site named and taken back before anything was said of it.
function readCorrection(talk: Talk, clause: Clause): void {
  const open = openFinding(talk, clause);
  if (open.length > 0) return stateAll(talk, [...open, ...clause.pieces.slice(1)]);
  const last = talk.frames.at(-1);
  const rest = clause.pieces.filter(({ role }) => role !== 'correction');
  const repairs =
    last?.frame === 'statement' &&
    last.statement.kind === 'visit' &&
    rest.some(({ role }) => role === 'site');
  if (repairs && rest.some(({ role }) => STATING.has(role))) {
    talk.frames.pop();
    return stateAll(talk, rest);
  }
  if (!correct(talk, clause, stateAll)) stateAll(talk, clause.pieces);
}

const LIGHT: ReadonlySet<Role> = new Set(['small', 'talk', 'negation', 'answer', 'side', 'attribute']);

function readStatement(talk: Talk, clause: Clause): void {
  const { asked } = talk.context;
  if (asked?.about === 'topic' && answersFreely(talk, clause)) return freeAnswer(talk, clause, asked.topic);
  if (asked?.about === 'topic' && asked.topic === 'events' && tellsMechanism(clause))
    return freeAnswer(talk, clause, 'mechanism');
  if (asked?.about === 'vital' && figureAnswer(talk, clause.pieces, asked.vital))
    return void bear(talk, { asked: null });
  if (asked !== null && (asked.about === 'findings' || asked.about === 'csm') && isBareNo(clause)) {
    answer(talk, { ...clause, pieces: clause.pieces });
    return;
  }
  if (asked?.about === 'findings' && answersWithSite(talk, clause, asked)) return;
  // "No, the left": a "no" that answers nothing and turns only the side takes back the last one.
  if (asked === null && turnsSide(talk, clause)) return;
  const before = talk.frames.length;
  stateAll(talk, clause.pieces);
  if (
    talk.frames.slice(before).some((frame) => frame.frame === 'statement' && frame.statement.kind !== 'visit')
  )
    bear(talk, { asked: null });
}

/** "I don't see any": a negation alone, in answer to a question. */
const isBareNo = (clause: Clause): boolean =>
  answerWord(clause) !== null && clause.pieces.every((piece) => LIGHT.has(piece.role));

function turnsSide(talk: Talk, clause: Clause): boolean {
  const [first, ...rest] = clause.pieces;
  if (first === undefined || !marked(first, 'plain')) return false;
  const turning = rest.filter(({ role, weak }) => role !== 'small' && (role !== 'talk' || !weak));
  // "No, forty five": only a number stands against what was said.
  if (turning.length === 1 && turning[0]?.role === 'figure')
    return correct(talk, { ...clause, pieces: rest }, stateAll);
  if (
    turning.length === 0 ||
    !turning.every(({ role }) => role === 'side' || role === 'site' || role === 'talk')
  )
    return false;
  if (sideIn(rest) === null) return false;
  // "No left forearm" takes nothing back unless a pause or an article parts the two.
  const parted = (talk.tokens[first.to - 1]?.pause ?? '') !== '';
  const article = rest[0] !== undefined && rest[0].to - rest[0].from > 1;
  return (parted || article) && correct(talk, { ...clause, pieces: rest }, stateAll);
}

function readAnswer(talk: Talk, clause: Clause): void {
  const had = talk.context.asked;
  if (had?.about === 'vital' && figureAnswer(talk, clause.pieces, had.vital))
    return void bear(talk, { asked: null });
  const rest = answer(talk, clause);
  if (had === null && turnsSide(talk, clause)) return;
  if (rest.length > 0) stateAll(talk, rest);
  if (had !== null && had.about === 'findings' && talk.context.asked === null) talk.asking = [];
}

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history']);

/** Everything a stretch of pieces states: vital signs and history by themselves, the examination in between. */
export function stateAll(talk: Talk, pieces: readonly Piece[]): void {
  const same = sameIn(talk, pieces);
  if (same !== null) {
    // What stands before it in the clause is the place it is said of, or a statement of its own.
    const before = pieces.slice(0, pieces.indexOf(same));
    if (before.some(({ role }) => STATING.has(role))) stateAll(talk, before);
    sameAgain(talk, pieces, same);
    const after = pieces.slice(pieces.indexOf(same) + 1);
    if (after.length > 0) stateAll(talk, after);
    return;
  }
  let stretch: Piece[] = [];
  const flush = () => {
    if (stretch.length > 0) stateExam(talk, stretch, true);
    stretch = [];
  };
  const reach = reachIn(itemsOf(talk, pieces), pieces.at(-1)?.to ?? 0);
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i];
    if (piece === undefined) continue;
    if (piece.role === 'vital' && isOfSite(piece, pieces)) stretch.push(asCsm(piece));
    else if (piece.role === 'vital' && piece.islands[0]?.rule !== 'vitals.pain-score') {
      const taken = stateVital(talk, pieces, i);
      if (taken === 0) stretch.push(piece);
      else flush();
      i += Math.max(0, taken - 1);
    } else if (piece.role === 'history') {
      const end = stateHistory(talk, pieces, i, reach.polarity(piece.from, false) === 'negated');
      flush();
      while (i + 1 < pieces.length && (pieces[i + 1]?.from ?? 0) < end) i++;
    } else stretch.push(piece);
  }
  flush();
}

// "Left foot pale and cool" is said of the foot and not of the skin as a vital sign.
const isOfSite = (piece: Piece, pieces: readonly Piece[]): boolean =>
  marked(piece, 'bare') &&
  marked(piece, 'vital', 'skin') &&
  pieces.some(({ role, weak }) => role === 'site' && !weak);

const asCsm = (piece: Piece): Piece => {
  const csm = readingOf(piece, 'csm');
  return csm === null ? { ...piece, role: 'unknown' } : { ...piece, role: 'csm' };
};

/** States the vital sign at `i`; returns how many pieces it took (0: its numbers cannot be). */
function stateVital(talk: Talk, pieces: readonly Piece[], i: number): number {
  const piece = pieces[i];
  const island = piece?.islands[0];
  if (piece === undefined || island === undefined) return 0;
  if (hasTag(island, 'heading')) return stateHeading(talk, pieces, i);
  // "Temp thirty four nine": a figure that runs straight on may belong to the number, so neither is taken.
  const next = pieces[i + 1];
  const runsOn = next?.role === 'figure' && !next.weak && (talk.tokens[piece.to - 1]?.pause ?? '') === '';
  if (runsOn && island.slots.at(-1)?.to === piece.to) return 0;
  for (const reading of piece.islands.filter((one) => one.file === 'vitals')) {
    const read = vitalOf(reading);
    if (read === null) continue;
    const { from, to } = piece;
    const doubt = reading.slots.some((slot) => slot.loose) ? ['A number was heard as another word.'] : [];
    state(talk, [{ ...read, from, to, doubt }]);
    place(talk, piece);
    return 1;
  }
  return 0;
}

// "Pulse … ninety two": the figure may come after a pause or a few small words.
function stateHeading(talk: Talk, pieces: readonly Piece[], i: number): number {
  const heading = pieces[i];
  const vital =
    heading?.islands[0] === undefined ? null : (tagOf(heading.islands[0], 'vital') as Vital | null);
  if (heading === undefined || vital === null) return 0;
  for (let k = i + 1; k < pieces.length; k++) {
    const piece = pieces[k];
    if (piece === undefined) break;
    if (piece.role === 'figure') return figureAfter(talk, heading, piece, vital) ? k - i + 1 : 0;
    if (piece.role === 'vital' && marked(piece, 'bare') && vital === 'blood-pressure')
      return pressureAfter(talk, heading, piece) ? k - i + 1 : 0;
    if (!LIGHT.has(piece.role) && piece.role !== 'time') break;
  }
  return 0;
}

// "Pressure at fifteen twenty was ninety four over sixty": the name comes first, the time between.
function pressureAfter(talk: Talk, heading: Piece, figures: Piece): boolean {
  const island = readingOf(figures, 'vitals.blood-pressure');
  const read = island === null ? null : vitalOf(island);
  if (read === null) return false;
  state(talk, [{ statement: read.statement, from: heading.from, to: figures.to }]);
  place(talk, { from: heading.from, to: figures.to });
  return true;
}

function figureAfter(talk: Talk, heading: Piece, figure: Piece, vital: Vital): boolean {
  const value = readingOf(figure, 'small.figure')?.slots[0]?.value;
  const read = value === undefined ? null : vitalFromFigure(vital, value);
  if (read === null) return false;
  state(talk, [{ ...read, from: heading.from, to: figure.to }]);
  place(talk, { from: heading.from, to: figure.to });
  return true;
}

function figureAnswer(talk: Talk, pieces: readonly Piece[], vital: Vital): boolean {
  const figure = pieces.find((piece) => piece.role === 'figure');
  if (figure === undefined || pieces.some((piece) => piece.role === 'vital' || piece.role === 'site'))
    return false;
  const value = readingOf(figure, 'small.figure')?.slots[0]?.value;
  const read = value === undefined ? null : vitalFromFigure(vital, value);
  if (read === null) return false;
  const last = pieces.at(-1) ?? figure;
  state(talk, [
    {
      ...read,
      known: { ...read.known, vital: 'carried' },
      from: pieces[0]?.from ?? figure.from,
      to: last.to,
    },
  ]);
  for (const piece of pieces) place(talk, piece);
  return true;
}

/** States the history at `i`; returns the token past its words. */
function stateHistory(talk: Talk, pieces: readonly Piece[], i: number, negated: boolean): number {
  const piece = pieces[i];
  if (piece === undefined) return 0;
  const found = historyOf(talk, pieces.slice(i), negated);
  if (!('topic' in found) && found.length === 0) return piece.to;
  if ('topic' in found) {
    bear(talk, { asked: { about: 'topic', topic: found.topic } });
    return piece.to;
  }
  state(
    talk,
    found.map(({ statement, known, from, to }) => ({ statement, known, from, to })),
  );
  place(talk, ...found);
  return found.at(-1)?.to ?? piece.to;
}

// Free words answer a question of history unless they examine, command or set out to do something else.
function answersFreely(talk: Talk, clause: Clause): boolean {
  const { pieces } = clause;
  const { asked } = talk.context;
  if (asked?.about !== 'topic' || pieces.every(({ role }) => role === 'talk' || role === 'small'))
    return false;
  if (pieces.some(({ role }) => OTHER_TALK.has(role))) return false;
  const trial = dryRun(talk, pieces, stateAll);
  return (
    FEELINGS.has(asked.topic) ||
    !trial.some(({ statement, known }) => statement.kind === 'finding' && known.site === undefined)
  );
}

// "What happened?" "My tip caught and I fell": the whole answer is the mechanism.
const tellsMechanism = (clause: Clause): boolean =>
  clause.pieces.some((piece) => piece.role === 'history' && marked(piece, 'topic', 'mechanism'));

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
const FEELINGS: ReadonlySet<string> = new Set([
  'events',
  'provocation',
  'quality',
  'radiation',
  'onset',
  'symptoms',
]);

function freeAnswer(talk: Talk, clause: Clause, topic: Topic): void {
  const from = clause.pieces[0]?.from ?? 0;
  const to = endOfAnswer(talk, clause);
  const figure = clause.pieces.find((piece) => piece.role === 'figure');
  const value = figure === undefined ? undefined : readingOf(figure, 'small.figure')?.slots[0]?.value;
  const found = answeredTopic(talk, topic, from, to);
  bear(talk, { asked: null });
  if (found === null) return;
  const years = topic === 'age' && value !== undefined && value <= 120 ? { years: value } : {};
  state(talk, [{ statement: { ...found.statement, ...years }, known: found.known, from, to }]);
  place(talk, { from, to });
}

// "Penicillin. I come out in a rash.": the clauses after a free answer belong to it while they name no place of their own.
function endOfAnswer(talk: Talk, clause: Clause): number {
  let end = clause.pieces.at(-1)?.to ?? 0;
  for (const next of talk.clauses.slice(talk.clauses.indexOf(clause) + 1)) {
    if (next.mood !== 'statement') break;
    if (next.pieces.some(({ role, weak }) => OTHER_TALK.has(role) || (role === 'site' && !weak))) break;
    if (next.pieces.every(({ role }) => role === 'talk' || role === 'small')) break;
    end = next.pieces.at(-1)?.to ?? end;
  }
  return end;
}

function mark(talk: Talk, clause: Clause): void {
  const from = clause.pieces[0]?.from ?? 0;
  const to = clause.pieces.at(-1)?.to ?? 0;
  const rest = clause.pieces.slice(1);
  const text = rest.length > 0 ? textOf(talk, rest[0]?.from ?? from, to) : textOf(talk, from, to);
  state(talk, [{ statement: { kind: 'mark', text }, from, to }]);
  // What is marked may be a statement too: "mark the time, tourniquet on the left thigh".
  const stated = dryRun(talk, rest, stateAll).filter(
    ({ statement }) => statement.kind !== 'visit' && statement.kind !== 'note',
  );
  if (stated.length > 0) stateAll(talk, rest);
  place(talk, { from, to });
}

function command(talk: Talk, clause: Clause): void {
  const [piece] = clause.pieces;
  const island = piece === undefined ? null : readingOf(piece, 'commands.command');
  if (piece === undefined || island === null) return;
  const said = tagOf(island, 'command') as Command;
  talk.frames.push({
    frame: 'command',
    command: said,
    heard: textOf(talk, piece.from, piece.to),
    span: spanOf(talk, piece.from, piece.to),
  });
  place(talk, piece);
  const rest = clause.pieces.slice(1);
  if (rest.length > 0) stateAll(talk, rest);
}

// "Wiggle your toes for me" finds nothing. "Tell me if it hurts" asks all the same, though it leaves no visit.
function openTold(talk: Talk, clause: Clause): void {
  if (clause.pieces.some((piece) => marked(piece, 'tell-if') || marked(piece, 'mood', 'supposing')))
    askQuietly(talk, clause);
  for (const piece of clause.pieces)
    if (piece.role !== 'unknown' && piece.role !== 'vital') place(talk, piece);
}
