// What the page says back of the words just heard: nothing, the bare facts, or the facts with what was not spoken.

import type { Entry } from '../../record/index.ts';
import { originMarks } from '../entries/origin.ts';
import { sentenceOf } from '../entries/sentence.ts';
import type { Became, Outcome } from '../talk/became.ts';

export const ECHOES = ['off', 'short', 'full'] as const;
export type Echo = (typeof ECHOES)[number];
export const ECHO_NAMES: Readonly<Record<Echo, string>> = { off: 'Off', short: 'Short', full: 'Full' };

/** More facts than these are counted: nobody keeps a longer list in the ear. Our choice, no source. */
const MOST = 4;

const UNITS: readonly (readonly [written: RegExp, spoken: string])[] = [
  [/(\d)\s*cm\b/g, '$1 centimetres'],
  [/(\d)\s*mm\b/g, '$1 millimetres'],
  [/(\d)\s*kg\b/g, '$1 kilos'],
  [/(\d+)\/(\d+)/g, '$1 over $2'],
  [/%/g, ' percent'],
  [/°C/g, ' degrees Celsius'],
  [/\bmg\/dL\b/g, 'milligrams per decilitre'],
  [/×/g, 'times'],
  [/“|”/g, ''],
];

/** A line of the screen as a voice reads it: units in words, nothing in capitals that would be spelt out. */
export const aloud = (text: string): string =>
  UNITS.reduce((line, [written, spoken]) => line.replace(written, spoken), text)
    .replace(/\b(LEFT|RIGHT|BOTH|MIDLINE|YES|NO|INTACT|NOT|SIDE|SAID)\b/g, (word) => word.toLowerCase())
    .replace(/\s+/g, ' ')
    .trim();

/** `right forearm, laceration 3 centimetres`; `full` adds what was not spoken and that it waits. */
export function entryAloud(entry: Entry, echo: Exclude<Echo, 'off'>): string {
  const { side, place, what, answer } = sentenceOf(entry);
  const where = [side, place].filter((part) => part !== null).join(' ');
  const facts = [where, answer === null ? what : `${what}: ${answer}`].filter((part) => part !== '');
  if (echo === 'short') return aloud(facts.join(', '));
  const marks = originMarks(entry).map((mark) => mark);
  return aloud([...facts, ...marks, ...(entry.state === 'confirmed' ? ['confirmed'] : [])].join(', '));
}

function outcomeAloud(outcome: Outcome, echo: Exclude<Echo, 'off'>): readonly string[] {
  const all = (entries: readonly Entry[]): readonly string[] =>
    entries.map((entry) => entryAloud(entry, echo));
  switch (outcome.kind) {
    case 'entered':
      return all([outcome.entry]);
    case 'corrected':
      return all(outcome.now).map((text) => `now ${text}`);
    case 'struck':
      return all(outcome.entries).map((text) => `struck: ${text}`);
    case 'restored':
      return all(outcome.entries).map((text) => `stands again: ${text}`);
    case 'confirmed':
    case 'command':
      // The answer to the command tells it.
      return [];
  }
}

/** What is to be said of an utterance; empty where nothing came of it, or where it asked the page for something. */
export function echoOf({ outcomes }: Became, echo: Echo): string {
  if (echo === 'off') return '';
  const facts = outcomes.flatMap((outcome) => outcomeAloud(outcome, echo));
  const rest = facts.length - MOST;
  const told = rest > 1 ? [...facts.slice(0, MOST), `and ${rest} more`] : facts;
  const questions = entriesIn(outcomes).flatMap((entry) => entry.doubt ?? []);
  return [...told, ...questions].map((text) => `${text}.`).join(' ');
}

const entriesIn = (outcomes: readonly Outcome[]): readonly Entry[] =>
  outcomes.flatMap((outcome) => (outcome.kind === 'entered' ? [outcome.entry] : []));

export type Sound = 'heard' | 'not-understood' | 'question';

/** Commands that are done or not done, and say which. */
const TELLS = /^(?:question|misheard|open-record|new-incident)/;

/** Which short sound an utterance gets; null for small talk of which nothing came. */
export function soundOf({ outcomes }: Became): Sound | null {
  const entries = entriesIn(outcomes);
  if (entries.some(({ doubt = [] }) => doubt.length > 0)) return 'question';
  if (entries.some(({ kind }) => kind === 'note')) return 'not-understood';
  if (didNothing(outcomes)) return 'not-understood';
  // What was done, or why nothing was, is told: "heard" would sound as if it had been done.
  if (outcomes.some((outcome) => outcome.kind === 'command' && TELLS.test(outcome.command))) return null;
  return outcomes.length === 0 ? null : 'heard';
}

/** True where something was to be confirmed or taken back and nothing was: it must not sound as if it had been. */
function didNothing(outcomes: readonly Outcome[]): boolean {
  const did = (kind: Outcome['kind']): boolean => outcomes.some((outcome) => outcome.kind === kind);
  return outcomes.some(
    (outcome) =>
      outcome.kind === 'command' &&
      ((outcome.command === 'confirm' && !did('confirmed')) ||
        (outcome.command === 'restore' && !did('restored'))),
  );
}
