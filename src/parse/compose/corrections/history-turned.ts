// History that was denied or affirmed and is taken back: "any allergies? no." "Oh wait, yes, bee stings."

import type { HistoryStatement, Topic } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Piece, Role } from '../../pieces/piece.ts';
import { type Span, spanned } from '../../span.ts';
import { bear, type Talk, textOf } from '../talk.ts';
import type { Changed } from './changes.ts';
import { change } from './correction.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { sameTarget } from './target.ts';
import type { Lead } from './turning-words.ts';

/** "Any medical problems? No." "Oh, actually, she's diabetic": what is told of the same takes the place of the denial. */
export function toldAfterAll(
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
export function turnsHistory(
  talk: Talk,
  clause: Clause,
  one: HistoryStatement,
  { word, rest, end }: Lead,
): boolean {
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
