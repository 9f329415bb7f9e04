// What was denied or affirmed and is taken back a breath later: "any allergies? no." "Oh wait, yes, bee stings."

import type { HistoryStatement, Statement, Topic } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, type Span, spanned } from '../../span.ts';
import { attributesOf, joinAttributes } from '../findings/attributes.ts';
import { isChatter } from '../light.ts';
import { wordOf } from '../questions/answer-word.ts';
import { sideIn } from '../sites/side-in.ts';
import { bear, type Talk, textOf } from '../talk.ts';
import type { Changed } from './changes.ts';
import { change } from './correction.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { sameTarget } from './target.ts';

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

interface Lead {
  /** what the words say that turn it, or null where they only take back */
  readonly word: 'yes' | 'no' | null;
  readonly rest: readonly Piece[];
  /** where the words end that take it back and answer */
  readonly end: number;
}

const TURNS = /^(actually|wait|mistake|oops|hang|hold)$/;

const SORRY = /\bsorry (no|nope|yes|yeah|yep|he|she|it|there)\b|^(no )?well (yes|yeah|yep|aye|no|it|there)\b/;

/** The words at the start of a clause that take something back, and what they answer; null where it does not begin so. */
function leadOf({ tokens }: Talk, pieces: readonly Piece[]): Lead | null {
  const open = pieces.findIndex((piece) => !isOfLead(piece));
  const run = open < 0 ? pieces : pieces.slice(0, open);
  // "Actually yeah | when you press there": the small words behind the answer belong to what follows.
  const past = open < 0 ? pieces.length : run.findLastIndex((piece) => !isChatter(piece)) + 1 || run.length;
  const lead = pieces.slice(0, past);
  const behind = pieces.slice(past);
  // "Penicillin, actually": the word may stand behind what it takes back.
  const late = behind.length > 1 && behind.at(-1)?.role === 'correction';
  const rest = late ? behind.slice(0, -1) : behind;
  const last = lead.at(-1);
  if (last === undefined) return null;
  const words = tokens.slice(lead[0]?.from, last.to).map(({ word }) => word);
  // "Yes, sorry, I'll stop" is sorry for the pain.
  const turns =
    late ||
    words.some((word) => TURNS.test(word)) ||
    SORRY.test(words.join(' ')) ||
    (words.at(-1) === 'sorry' && rest.length > 0);
  // "Sorry, no swelling there" denies the swelling and answers nothing; "actually no he can't feel it" denies twice.
  const denies = deniesItself(last, tokens) && rest[0] !== undefined && !isPaused(tokens, last);
  if (denies && rest[0]?.role !== 'csm') return null;
  if (!turns) return null;
  const answer = lead.findLast((piece) => wordOf(piece) !== null || deniesItself(piece, tokens));
  const word = answer === undefined ? null : (wordOf(answer) ?? 'no');
  const end = lead.findLast((piece) => !isChatter(piece))?.to ?? rest[0]?.from ?? last.to;
  return word === 'unsure' ? null : { word, rest, end };
}

const isOfLead = (piece: Piece): boolean =>
  isChatter(piece) || piece.role === 'correction' || piece.role === 'answer' || marked(piece, 'exclaim');

// "Actually no", "no sorry".
const deniesItself = ({ from, to, role }: Piece, tokens: Talk['tokens']): boolean =>
  (role === 'correction' || role === 'answer') &&
  tokens.slice(from, to).some(({ word }) => /^(no|nope|nah|not)$/.test(word));

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

function sameThing(one: Statement, other: Statement): boolean {
  if (one.kind === 'finding' && other.kind === 'finding')
    return one.finding === other.finding && one.site === other.site && one.side === other.side;
  return (
    one.kind === 'csm' &&
    other.kind === 'csm' &&
    one.aspect === other.aspect &&
    one.site === other.site &&
    one.side === other.side
  );
}

const UNASKED = 'A word that takes something back was taken to turn this: is it so?';
const WHAT_IS_WRONG = 'It was called normal, and that was taken back: what is wrong there?';
const WHICH = 'Several things were said, and this was taken back for all of them: is it so?';

/** One statement turned, or nothing where these words do not turn it. */
function turned(talk: Talk, one: Statement, word: 'yes' | 'no', rest: readonly Piece[]): readonly Changed[] {
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

/** "Any medical problems? No." "Oh, actually, she's diabetic": what is told of the same takes the place of the denial. */
function toldAfterAll(
  talk: Talk,
  clause: Clause,
  one: HistoryStatement,
  { word, rest }: Lead,
  stateAll: StateAll,
): boolean {
  if (one.present !== false || word === 'no' || itemOf(one) !== null) return false;
  const [told, ...others] = wouldSay({ ...talk }, rest, stateAll);
  const { statement } = told ?? {};
  if (told === undefined || others.length > 0 || statement?.kind !== 'history') return false;
  if (statement.topic !== one.topic || statement.present === false) return false;
  const basis = { statement, known: told.known, doubt: told.doubt };
  change(
    talk,
    [{ change: { change: 'statement', statement }, target: sameTarget(one), basis }],
    spanned(clause.pieces),
  );
  return true;
}

/** What the question asked after, where it asked after one thing ("did you pass out: no"). */
const itemOf = ({ text }: HistoryStatement): string | null =>
  text.includes(': ') ? text.slice(0, text.lastIndexOf(': ')) : null;

// Of these a patient gives a name, or several.
const NAMED: ReadonlySet<Topic> = new Set<Topic>(['allergies', 'medications', 'past-history']);
const NAMING: ReadonlySet<Role> = new Set([
  'unknown',
  'small',
  'care',
  'finding',
  'talk',
  'correction',
  'figure',
]);
// "Sorry, I missed that" names nothing.
const MOST_NAMES = 3;

/** "No allergies." "Actually yes, penicillin", "well, penicillin actually"; "Did you pass out?" "No. Wait, yes, for a moment". */
function turnsHistory(talk: Talk, clause: Clause, one: HistoryStatement, { word, rest, end }: Lead): boolean {
  const wasDenied = one.present === false;
  if (word === null ? !wasDenied : wasDenied !== (word === 'yes')) return false;
  const span = spanned(clause.pieces);
  const item = itemOf(one);
  const names = rest.some(({ role }) => role !== 'small' && role !== 'talk' && role !== 'correction');
  const isPlain = rest.every((piece) => NAMING.has(piece.role) || isNamedSign(piece));
  // What else was said there is read for itself.
  if (names && !(isPlain && (item !== null || NAMED.has(one.topic)))) return false;
  if (word === null && (item !== null || !NAMED.has(one.topic) || !isOnlyNames(rest))) return false;
  change(
    talk,
    [
      historyChange(
        talk,
        one,
        word,
        { item, names },
        { from: names ? end : span.from, to: names ? spanned(rest).to : span.to },
      ),
    ],
    span,
  );
  // What it is may be said next.
  if (word === 'yes' && !names && item === null) bear(talk, { asked: { about: 'topic', topic: one.topic } });
  return true;
}

// "Yes, for blood pressure."
const isNamedSign = ({ role, islands: [island] }: Piece): boolean =>
  role === 'vital' && island?.slots.length === 0;

const isOnlyNames = (rest: readonly Piece[]): boolean =>
  rest.length > 0 &&
  rest.length <= MOST_NAMES &&
  rest.every((piece) => piece.role === 'unknown' || piece.role === 'finding' || piece.role === 'care');

function historyChange(
  talk: Talk,
  one: HistoryStatement,
  word: Lead['word'],
  { item, names }: { readonly item: string | null; readonly names: boolean },
  { from, to }: Span,
): Changed {
  const said = textOf(talk, from, to);
  const { present: _, ...told } = one;
  const text = item !== null ? `${item}: ${said}` : names || word !== 'no' ? said : one.text;
  const statement: HistoryStatement = word === 'no' ? { ...told, text, present: false } : { ...told, text };
  const basis = { statement, known: { topic: 'carried' }, doubt: [] } as const;
  return { change: { change: 'statement', statement }, target: sameTarget(one), basis };
}
