// "That was at fourteen ten": a time said by itself after care, or after what happened, says when that was so.

import type { Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { hasTag } from '../../islands/island.ts';
import { marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { hoursBack, resolveTime, type SpokenTime } from '../../times/index.ts';
import { isChatter } from '../light.ts';
import { aheadDoubt, farBack, place, spanOf, type Talk, textOf } from '../talk.ts';
import { asksWhen } from './asked-when.ts';
import { sameTarget } from './target.ts';
import { retimed } from './told-anew.ts';

/** Times what was last said anew; false where the clause is not a time alone, or nothing was said that has a moment. */
export function lateTime(talk: Talk, clause: Clause): boolean {
  const time = timeAlone(talk, clause);
  return time !== null && retimeLast(talk, clause, { time, pieces: clause.pieces }, hasMoment);
}

/** "No, fourteen oh nine" behind care at another time: the time put right; false where the clause is anything else. */
export function timeAnew(talk: Talk, clause: Clause): boolean {
  const { pieces } = clause;
  const opens = pieces.findIndex((piece) => !isTurning(talk, piece) && !isChatter(piece));
  if (opens < 1 || !pieces.slice(0, opens).some((piece) => isTurning(talk, piece))) return false;
  const [piece, ...rest] = pieces.slice(opens);
  const time = piece === undefined ? null : timeIn(piece);
  return (
    time !== null &&
    rest.every(isChatter) &&
    retimeLast(talk, clause, { time, pieces: pieces.slice(opens) }, isTimed)
  );
}

const TURNING = /^(no|nope|sorry|negative|correction|wait|actually|rather)$/;

const isTurning = ({ tokens }: Talk, { from, to }: Piece): boolean =>
  tokens.slice(from, to).some(({ word }) => TURNING.test(word));

function retimeLast(
  talk: Talk,
  clause: Clause,
  { time, pieces }: { readonly time: SpokenTime; readonly pieces: readonly Piece[] },
  isMeant: (statement: Statement) => boolean,
): boolean {
  const { context, utterance } = talk;
  if (context.said.length === 0 || !context.said.every(isMeant)) return false;
  const { from, to } = spanned(clause.pieces);
  const at = resolveTime(time, utterance.heardAt, utterance.zone);
  for (const statement of context.said)
    talk.frames.push({
      frame: 'correction',
      target: sameTarget(statement),
      change: { change: 'statement', statement: retimed(talk, statement, pieces) },
      heard: textOf(talk, from, to),
      span: spanOf(talk, from, to),
      known: {},
      doubt: [
        ...aheadDoubt(at, utterance.heardAt),
        ...farBack(statement, { hoursBack: hoursBack(time, at, utterance.heardAt) }),
      ],
      at,
    });
  place(talk, { from, to });
  return true;
}

// A sign has a moment too, but a time alone after it may as well open the next set.
const hasMoment = (statement: Statement): boolean =>
  statement.kind === 'care' || (statement.kind === 'history' && statement.topic === 'mechanism');

const TIMED_TOPICS: ReadonlySet<string> = new Set([
  'mechanism',
  'events',
  'onset',
  'last-intake',
  'symptoms',
]);

/** True for what a time is told of: a time that is put right may be its. */
export const isTimed = (statement: Statement): boolean =>
  statement.kind === 'care' || (statement.kind === 'history' && TIMED_TOPICS.has(statement.topic));

/** Words that only lead to the time of what was done: "tightened at", "time of application". */
export const LEAD =
  /^(time|on|that|was|it|is|at|and|applied|given|put|went|so|this|of|application|happened|about|around|the|been|done|placed|tightened|secured|fitted|started|commenced|in|finished|repeated)$/;

const timeIn = (piece: Piece): SpokenTime | null =>
  readingOf(piece, 'times.when')?.slots.find((slot) => slot.time !== null)?.time ?? null;

function timeAlone(talk: Talk, { pieces }: Clause): SpokenTime | null {
  const [piece, ...others] = pieces.filter(({ role }) => role === 'time');
  const island = piece === undefined ? null : readingOf(piece, 'times.when');
  const time = piece === undefined ? null : timeIn(piece);
  if (piece === undefined || island === null || time === null || others.length > 0) return null;
  if (!pieces.every((one) => one === piece || isLead(talk, one))) return null;
  // Two bare numbers are a time only after words that say so: "time on, fourteen fourteen".
  const { question } = talk.context;
  const isAsked = question !== null && asksWhen(question);
  const isBare = hasTag(island, 'ago-only') && time.kind === 'clock' && !isAsked;
  return isBare && !pieces.some((one) => one !== piece && /^(time|on|at|was)$/.test(wordOf(talk, one)))
    ? null
    : time;
}

const wordOf = (talk: Talk, { from }: Piece): string => talk.tokens[from]?.word ?? '';

const isLead = (talk: Talk, piece: Piece): boolean =>
  !marked(piece, 'negation', 'before') &&
  talk.tokens.slice(piece.from, piece.to).every(({ word }) => LEAD.test(word));
