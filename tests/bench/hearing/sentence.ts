// One sentence spoken, heard through the same stream as the microphone's, and made into entries.

import { beginExam, type Entry, hearUtterance, keepingRefusals } from '../../../src/record/index.ts';
import type { HeardUtterance, Hearing } from '../../../src/speech/index.ts';
import { realReader } from '../../talk-case.ts';
import { factsOf, type Score, scoreOf, wordErrors } from './score.ts';
import { speak } from './voices.ts';
import { inWind } from './wind.ts';

export interface Condition {
  readonly voice: string;
  /** decibels of the speech over the wind; null without any */
  readonly wind: number | null;
}

export interface Benched extends Condition {
  readonly said: string;
  readonly heard: readonly HeardUtterance[];
  readonly score: Score;
  readonly wordErrors: number;
  /** seconds of work, and of sound */
  readonly work: number;
  readonly sound: number;
}

const RATE = 16_000;
/** Samples that a microphone hands over at once. */
const BLOCK = 2048;
const reader = keepingRefusals(realReader());
const ZONE = '-06:00';
const START = Date.UTC(2026, 4, 3, 20, 2, 0);
/** What went before, so that "same on the left" has something to be the same as. */
const BEFORE = 'right knee is swollen';

type Said = Pick<HeardUtterance, 'text'> & Partial<HeardUtterance>;

function entriesOf(said: readonly Said[]): readonly Entry[] {
  const begun = beginExam(reader, { device: 'bench', startedAt: START, zone: ZONE });
  const lines: readonly Said[] = [{ text: BEFORE }, ...said];
  const exam = lines.reduce(
    (before, heard, index) =>
      hearUtterance(before, reader, { ...heard, heardAt: START + 5000 * index, zone: ZONE }),
    begun,
  );
  return exam.state.entries;
}

/** Without what recognisers never give; two words for one thing are one. */
const plain = (text: string): readonly string[] => text.toLowerCase().replace(/[,.]/g, '').split(/\s+/);

export function bench(hearing: Hearing, condition: Condition, said: string): Benched {
  const clean = speak(condition.voice, said);
  const sound = condition.wind === null ? clean : inWind(clean, condition.wind, said.length);
  // The processor's time and not the clock's: other programs run beside this one.
  const begun = process.cpuUsage();
  const stream = hearing.begin(RATE);
  const heard: HeardUtterance[] = [];
  for (let at = 0; at < sound.length; at += BLOCK)
    for (const { utterance } of stream.push(sound.subarray(at, at + BLOCK))) heard.push(utterance);
  for (const { utterance } of stream.flush()) heard.push(utterance);
  const { user, system } = process.cpuUsage(begun);
  const work = (user + system) / 1e6;
  const understood = heard.filter((one) => one.understood).map(({ text }) => text);
  // The entry made of what went before stands on both sides, and is heard and said alike.
  const before = factsOf(entriesOf([])).length;
  const [typed, made] = [factsOf(entriesOf([{ text: said }])), factsOf(entriesOf(heard))];
  const score = scoreOf(typed, made);
  return {
    ...condition,
    said,
    heard,
    score: { ...score, entries: Math.max(0, made.length - before) },
    wordErrors: wordErrors(plain(said), plain(understood.join(' '))),
    work,
    sound: sound.length / RATE,
  };
}
