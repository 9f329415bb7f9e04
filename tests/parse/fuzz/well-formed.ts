// Says what is wrong with a frame's shape: spans outside the text, words not as said, slots that name nothing.

import type { Frame } from '../../../src/parse/index.ts';
import {
  ASPECTS,
  CARES,
  DIGITS,
  FINDINGS,
  isSite,
  PARTS,
  type ProblemChange,
  PULSE_POINTS,
  SEVERITIES,
  SIDES,
  STRENGTHS,
  type Statement,
  TOPICS,
  VITALS,
  WARMTHS,
} from '../../../src/terms/index.ts';

type Check = (value: unknown) => boolean;

const among =
  (words: readonly string[]): Check =>
  (value) =>
    typeof value === 'string' && words.includes(value);
const text: Check = (value) => typeof value === 'string' && value.trim() !== '';
const number: Check = (value) => typeof value === 'number' && Number.isFinite(value);
const flag: Check = (value) => typeof value === 'boolean';
const site: Check = (value) => typeof value === 'string' && isSite(value);
const side: Check = (value) => value === null || among(SIDES)(value);
const listOf =
  (check: Check): Check =>
  (value) =>
    Array.isArray(value) && value.length > 0 && value.every(check);
const either =
  (...checks: readonly Check[]): Check =>
  (value) =>
    checks.some((check) => check(value));
const object: Check = (value) => typeof value === 'object' && value !== null && Object.keys(value).length > 0;
const level: Check = (value) =>
  typeof value === 'string' && /^(C[1-8]|T([1-9]|1[0-2])|L[1-5]|S[1-5]|rib-([1-9]|1[0-2]))$/.test(value);
const size: Check = (value) =>
  object(value) && number((value as { value: unknown }).value) && (value as { unit: unknown }).unit === 'cm';

interface Slots {
  readonly must: Readonly<Record<string, Check>>;
  readonly may: Readonly<Record<string, Check>>;
}

const quality = listOf(text);

/** The slots of each kind, as the record's contract lists them. */
const SLOTS: Readonly<Record<Statement['kind'], Slots>> = {
  finding: {
    must: { site, side, finding: among(FINDINGS), present: flag },
    may: {
      part: listOf(among(PARTS)),
      level,
      size,
      severity: either(among(SEVERITIES), number),
      count: number,
      quality,
    },
  },
  csm: {
    must: { site: among(['hand', 'foot']), side, aspect: among(ASPECTS), present: flag },
    may: {
      capRefillSeconds: number,
      pulse: among(PULSE_POINTS),
      warmth: among(WARMTHS),
      digit: among(DIGITS),
      strength: either(among(STRENGTHS), number),
      quality,
    },
  },
  vital: { must: { vital: among(VITALS), value: object }, may: {} },
  history: { must: { topic: among(TOPICS), text }, may: { present: flag, years: number, kg: number } },
  care: { must: { care: among(CARES) }, may: { site, side, text } },
  visit: { must: { site, side }, may: {} },
  mark: { must: { text }, may: {} },
  note: { must: { text }, may: {} },
};

function statementFaults(statement: Statement): readonly string[] {
  const { must, may } = SLOTS[statement.kind];
  const slots = statement as unknown as Readonly<Record<string, unknown>>;
  const missing = Object.entries(must).filter(([name, check]) => !check(slots[name]));
  const wrong = Object.entries(slots).filter(
    ([name, value]) => name !== 'kind' && !(name in must) && !(may[name]?.(value) ?? false),
  );
  return [...missing, ...wrong].map(
    ([name]) => `${statement.kind}.${name} is ${JSON.stringify(slots[name])}`,
  );
}

function problemFaults(change: ProblemChange): readonly string[] {
  if (change.change === 'add') return text(change.text) ? [] : ['the problem to add has no words'];
  const { problem } = change;
  const named = 'words' in problem ? text(problem.words) : site(problem.site) && side(problem.side);
  return named && among(['first', 'strike'])(change.change) ? [] : ['the problem is not named'];
}

/** Everything that is wrong with a frame of an utterance; nothing where it is well-formed. */
export function faultsOf(frame: Frame, utterance: string): readonly string[] {
  const [start, end] = frame.span;
  const faults: string[] = [];
  if (
    !(
      Number.isInteger(start) &&
      Number.isInteger(end) &&
      start >= 0 &&
      start < end &&
      end <= utterance.length
    )
  )
    faults.push(`the span ${start} to ${end} lies outside`);
  if (frame.heard !== utterance.slice(start, end)) faults.push('the words heard are not those of the span');
  if (frame.frame === 'command') return text(frame.command) ? faults : [...faults, 'the command has no name'];
  if (frame.frame === 'problem') return [...faults, ...problemFaults(frame.change)];
  if (!Object.values(frame.known).every(among(['carried', 'inferred'])))
    faults.push('known has another word');
  if (!frame.doubt.every(text)) faults.push('a doubt says nothing');
  if (frame.at !== undefined && !Number.isFinite(frame.at)) faults.push('the time is none');
  const stated =
    frame.frame === 'statement'
      ? frame.statement
      : frame.change.change === 'statement'
        ? frame.change.statement
        : null;
  return stated === null ? faults : [...faults, ...statementFaults(stated)];
}
