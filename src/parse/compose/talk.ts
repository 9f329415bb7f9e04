// The talk being read: its tokens, what has been understood of it so far, and the context that grows with it.

import type { Known, Statement } from '../../terms/index.ts';
import { caredFor, withCared } from '../cared.ts';
import type { Clause } from '../clauses/clause.ts';
import type { AskedOne, Context } from '../context.ts';
import type { CorrectionTarget, Frame } from '../frame.ts';
import { runOn } from '../run.ts';
import type { Span } from '../span.ts';
import { isAhead } from '../times/index.ts';
import type { Token } from '../token.ts';
import { keptOf } from '../told.ts';
import type { Utterance } from '../utterance.ts';
import { withChecks } from './csm/checks.ts';

/** How each slot that was not spoken came to be known. */
export type HowKnown = Readonly<Record<string, Exclude<Known, 'spoken'>>>;

/** The work in hand for one utterance; only the functions of compose/ change it, and it never leaves them. */
export interface Talk {
  readonly utterance: Utterance;
  readonly tokens: readonly Token[];
  readonly clauses: readonly Clause[];
  readonly frames: Frame[];
  /** tokens that found their place in a frame or in talk */
  readonly placed: boolean[];
  context: Context;
  group: number;
  /** sites named in a question that is not answered yet; each leaves a visit where it stays so */
  asking: readonly Said[];
  /** the questions after findings of this utterance, for "neck pain? back pain?" and "no and no" */
  questions: readonly AskedFindings[];
  /** what the words before a correction named ("that gash I said was on the left shin"), or null */
  meant: CorrectionTarget | null;
  /** the times that go with the clause in hand */
  times: readonly SaidTime[];
}

/** A question after findings. */
export type AskedFindings = Extract<AskedOne, { readonly about: 'findings' }>;

/** A spoken time, in milliseconds since the epoch. */
export interface SaidTime {
  readonly instant: number;
  /** where it was said */
  readonly piece: Span;
  /** the same, where it stands in the clause in hand */
  readonly words: Span | null;
  /** what it is said of */
  readonly scope: Span;
  /** hours before now, where the other half of the day may be meant */
  readonly hoursBack: number | null;
}

/** A statement with the words it came from. */
export interface Said extends Span {
  readonly statement: Statement;
  readonly known?: HowKnown;
  readonly doubt?: readonly string[];
}

/** The text of the tokens from `from` up to but not with `to`, as said. */
export function textOf(talk: Talk, from: number, to: number): string {
  const first = talk.tokens[from];
  const last = talk.tokens[to - 1];
  return first === undefined || last === undefined ? '' : talk.utterance.text.slice(first.from, last.to);
}

/** The character offsets of those tokens. */
export const spanOf = (talk: Talk, from: number, to: number): readonly [number, number] => [
  talk.tokens[from]?.from ?? 0,
  talk.tokens[to - 1]?.to ?? 0,
];

/** Marks tokens as understood. */
export function place(talk: Talk, ...spans: readonly Span[]): void {
  for (const { from, to } of spans) for (let at = from; at < to; at++) talk.placed[at] = true;
}

/** True where every token of a stretch was understood. */
export function isPlaced(talk: Talk, { from, to }: Span): boolean {
  for (let at = from; at < to; at++) if (talk.placed[at] !== true) return false;
  return to > from;
}

/** Adds statements said as one; they share a group, and "same on the right" means them. */
export function state(talk: Talk, said: readonly Said[]): void {
  if (said.length === 0) return;
  const group = talk.group++;
  for (const { statement, known, doubt, ...words } of said) {
    const at = isLasting(statement) ? undefined : timeOf(talk, words);
    // A time that goes with nothing is owed a note like any other word.
    if (at !== undefined) place(talk, at.piece);
    const from = Math.min(words.from, at?.words?.from ?? words.from);
    const to = Math.max(words.to, at?.words?.to ?? words.to);
    talk.frames.push({
      frame: 'statement',
      statement,
      heard: textOf(talk, from, to),
      span: spanOf(talk, from, to),
      known: known ?? {},
      doubt: [...(doubt ?? []), ...aheadOf(talk, at), ...farBack(statement, at)],
      ...(at === undefined ? {} : { at: at.instant }),
      group,
    });
  }
  const statements = said.map(({ statement }) => statement);
  bear(talk, { run: runOn(talk.context.run, statements) });
  const exam = statements.filter(({ kind }) => kind === 'finding' || kind === 'csm');
  if (exam.length > 0) bear(talk, { last: exam, checks: withChecks(talk.context.checks, exam) });
  const found = statements.flatMap((one) => (one.kind === 'finding' ? [keptOf(one)] : []));
  if (found.length > 0)
    bear(talk, {
      found: [...new Set([...talk.context.found.filter((one) => !found.includes(one)), ...found])],
    });
  const cared = said.flatMap(({ statement, ...words }) =>
    statement.kind === 'care' ? [caredFor(statement, timeOf(talk, words)?.instant ?? null)] : [],
  );
  if (cared.length > 0) bear(talk, { cared: withCared(talk.context.cared, cared) });
  const kept = statements.filter(({ kind }) => kind !== 'visit' && kind !== 'note');
  bear(talk, kept.length > 0 ? { said: kept, isSaidLast: true, isToldAsking: false } : { isSaidLast: false });
}

/** The time that is said of these words, or undefined. */
export const timeOf = ({ times }: Talk, { from, to }: Span): SaidTime | undefined =>
  times.findLast(({ scope }) => scope.from < to && from < scope.to);

const aheadOf = ({ utterance }: Talk, at: SaidTime | undefined): readonly string[] =>
  at === undefined ? [] : aheadDoubt(at.instant, utterance.heardAt);

/** What is asked of a time that lies ahead of the moment it was said. */
export const aheadDoubt = (instant: number, heardAt: number): readonly string[] =>
  isAhead(instant, heardAt) ? ['That time is still to come: is it right?'] : [];

// At this many hours the other half of the day is within the next hour, and nobody can tell which is meant.
const HALF_A_DAY_HOURS = 11;

/** "Given at quarter to three", said at two: care and signs are told as they come, a meal or a fall may be of last night. */
export function farBack({ kind }: Statement, at: Pick<SaidTime, 'hoursBack'> | undefined): readonly string[] {
  const hours = at?.hoursBack ?? null;
  if (hours === null || (kind === 'history' && hours < HALF_A_DAY_HOURS)) return [];
  return [`That would be ${String(hours)} hours ago: is it right?`];
}

// An age or an allergy has no moment, whatever time was said beside it.
const LASTING: ReadonlySet<string> = new Set([
  'name',
  'age',
  'sex',
  'weight',
  'allergies',
  'medications',
  'past-history',
]);

const isLasting = (statement: Statement): boolean =>
  statement.kind === 'history' && LASTING.has(statement.topic);

/** Keeps words as they were said. */
export function note(talk: Talk, { from, to }: Span): void {
  state(talk, [{ statement: { kind: 'note', text: textOf(talk, from, to) }, from, to }]);
}

/** Changes what is in mind. */
export function bear(talk: Talk, change: Partial<Context>): void {
  talk.context = { ...talk.context, ...change };
}
