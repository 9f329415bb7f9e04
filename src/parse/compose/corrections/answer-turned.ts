// What was denied or affirmed and is taken back a breath later: "any pain? no." "Actually yes, a little."

import type { Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Piece, Role } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { attributesOf, joinAttributes } from '../findings/attributes.ts';
import { sideIn } from '../sites/side-in.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { change } from './correction.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { toldAfterAll, turnsHistory } from './history-turned.ts';
import { sameThing } from './same-thing.ts';
import { sameTarget } from './target.ts';
import { leadOf } from './turning-words.ts';

/** Turns what was said last where this clause takes it back with a yes or a no; false where it does not. */
export function turnsLastSaid(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  if (!TURNING_MOODS.has(clause.mood) || isCorrectedNext(talk, clause)) return false;
  const { asked, said, isSaidLast } = talk.context;
  if (!isSaidLast || (asked !== null && !isOfSaid(talk))) return false;
  const lead = leadOf(talk, clause.pieces);
  if (lead === null) return false;
  const { word, rest } = lead;
  // "No wait, he doesn't" turns the last thing said as any correction does.
  if (clause.mood === 'correction' && rest.length === 0) return false;
  const [only] = said;
  if (only?.kind === 'history' && said.length === 1)
    return toldAfterAll(talk, clause, only, lead, stateAll) || turnsHistory(talk, clause, only, lead);
  if (word === null || !isRestOf(talk, rest, stateAll)) return false;
  return turnAllSaid(talk, clause, word, rest);
}

/** Turns all that was said last by this answer; false where it does not turn all of it. */
export function turnAllSaid(
  talk: Talk,
  clause: Clause,
  word: 'yes' | 'no',
  rest: readonly Piece[] = [],
): boolean {
  const { said } = talk.context;
  const changes = said.flatMap((one) => turned(talk, one, word, rest));
  if (changes.length < said.length) return false;
  change(talk, changes, spanned(clause.pieces));
  return true;
}

const TURNING_MOODS: ReadonlySet<Clause['mood']> = new Set(['statement', 'answer', 'correction']);

// "No, sorry, correction, the right ankle": what is wrong with it stands behind.
function isCorrectedNext({ clauses }: Talk, clause: Clause): boolean {
  const next = clauses[clauses.indexOf(clause) + 1];
  return next?.mood === 'correction' || next?.mood === 'strike';
}

// "Tell me if it hurts" stands open behind each answer, and a history that was answered with "yes" waits for what it is.
const isOfSaid = ({ context: { asked, said } }: Talk): boolean =>
  (asked?.about === 'findings' && asked.standing === true) ||
  (asked?.about === 'topic' && said.every((one) => one.kind === 'history' && one.topic === asked.topic));

const BESIDE: ReadonlySet<Role> = new Set(['attribute', 'side', 'small', 'talk', 'answer', 'part']);

/** True where the rest says how it is, or only says again what was said: "yes, it does hurt", "no, he can't feel it". */
function isRestOf(talk: Talk, rest: readonly Piece[], stateAll: StateAll): boolean {
  if (rest.every(({ role }) => BESIDE.has(role)) || isWhenPressed(talk, rest)) return true;
  const { said } = talk.context;
  const anew = wouldSay({ ...talk }, rest, stateAll);
  return (
    anew.length > 0 &&
    anew.every(({ statement }) => said.some((one) => sameThing(one, statement))) &&
    rest.every(({ role }) => BESIDE.has(role) || role === 'finding' || role === 'csm' || role === 'site')
  );
}

// "Actually yeah, when you press there."
const isWhenPressed = ({ tokens }: Talk, rest: readonly Piece[]): boolean =>
  /^(when|if|where)$/.test(tokens[rest[0]?.from ?? -1]?.word ?? '') &&
  rest.every(({ role }) => BESIDE.has(role) || role === 'unknown' || role === 'intention' || role === 'mood');

const UNASKED = 'A word that takes something back was taken to turn this: is it so?';
const WHAT_IS_WRONG = 'It was called normal, and that was taken back: what is wrong there?';
const WHICH = 'Several things were said, and this was taken back for all of them: is it so?';

/** One statement turned, or nothing where these words do not turn it. */
function turned(talk: Talk, one: Statement, word: 'yes' | 'no', rest: readonly Piece[]): readonly Changed[] {
  // "Any medical problems asthma?" "No."
  if (one.kind === 'history' && word === 'no' && talk.context.isToldAsking) {
    const denied: Statement = { ...one, present: false };
    const basis = { statement: denied, known: { topic: 'carried' as const }, doubt: [] };
    return [{ change: { change: 'statement', statement: denied }, target: sameTarget(one), basis }];
  }
  if (one.kind !== 'finding' && one.kind !== 'csm') return [];
  const isNormal = one.kind === 'finding' && one.finding === 'abnormality' && !one.present;
  const present = isNormal || word === 'yes';
  if (present === one.present) return [];
  const side = sideIn(rest)?.side ?? null;
  // "Sorry, no, the left": the side is what was wrong.
  if (side !== null && (word === 'no' || (one.side !== side && one.side !== 'both'))) return [];
  const attributes = rest.flatMap((piece) => attributesOf(piece) ?? []).reduce(joinAttributes, {});
  const statement: Statement =
    one.kind === 'finding'
      ? { ...one, ...attributes, present, side: side ?? one.side }
      : { ...one, present, side: side ?? one.side };
  const doubt = [
    ...(isNormal ? [WHAT_IS_WRONG] : talk.context.asking ? [] : [UNASKED]),
    ...(talk.context.said.length > 1 ? [WHICH] : []),
  ];
  const target = { ...sameTarget(one), ...(one.side === null ? {} : { side: side ?? one.side }) };
  return [{ change: { change: 'statement', statement }, target, basis: { statement, known: {}, doubt } }];
}
