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
  /** seconds from the end of speech until its words were shown as they stayed, and until they were settled */
  readonly shown: number | null;
  readonly settled: number | null;
}

const RATE = 16_000;
/** Samples that a microphone hands over at once. */
const BLOCK = 1024;
/** Seconds of sound after which the page asks for the words so far again. */
const STEP = 0.1;
/** Seconds of stillness after a sentence, in which it is settled. */
const AFTER = 1.5;
/** A frame this many times weaker than the loudest is no speech. */
const FAINT = 1000;
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

/** Seconds until the last frame that is loud enough to be speech. */
function endOf(clean: Float32Array): number {
  const frames = Array.from({ length: Math.floor(clean.length / 160) }, (_, i) =>
    clean.subarray(i * 160, (i + 1) * 160).reduce((sum, value) => sum + value * value, 0),
  );
  const most = frames.reduce((one, other) => Math.max(one, other), 0);
  return (frames.findLastIndex((power) => power > most / FAINT) + 1) / 100;
}

export function bench(hearing: Hearing, condition: Condition, said: string): Benched {
  const spoken = speak(condition.voice, said);
  const clean = new Float32Array(spoken.length + AFTER * RATE);
  clean.set(spoken);
  const sound = condition.wind === null ? clean : inWind(clean, condition.wind, said.length);
  const stream = hearing.begin(RATE);
  const heard: HeardUtterance[] = [];
  const showings: { readonly words: string; readonly at: number }[] = [];
  // The processor's time and not the clock's: other programs run beside this one. A block is worked on when it was recorded
  // and those before it are done.
  let [work, done, asked, settledAt]: [number, number, number, number | null] = [0, 0, 0, null];
  const doing = (recorded: number, job: () => readonly { readonly utterance: HeardUtterance }[]): void => {
    const begun = process.cpuUsage();
    const news = job();
    const isAsked = recorded - asked >= STEP;
    const words = isAsked ? stream.soFar().join(' ') : null;
    if (isAsked) asked = recorded;
    const { user, system } = process.cpuUsage(begun);
    work += (user + system) / 1e6;
    done = Math.max(done, recorded) + (user + system) / 1e6;
    for (const { utterance } of news) {
      heard.push(utterance);
      settledAt = done;
    }
    if (words !== null && showings.at(-1)?.words !== words) showings.push({ words, at: done });
  };
  for (let at = 0; at < sound.length; at += BLOCK)
    doing((at + BLOCK) / RATE, () => stream.push(sound.subarray(at, at + BLOCK)));
  doing(sound.length / RATE, () => stream.flush());
  const end = endOf(spoken);
  const understood = heard.filter((one) => one.understood).map(({ text }) => text);
  const settled = settledAt === null ? null : settledAt - end;
  const last = plain(understood.join(' ')).join(' ');
  const shownAt = showings.find(({ words }) => plain(words).join(' ') === last)?.at;
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
    shown: shownAt === undefined ? settled : Math.min(settled ?? shownAt, Math.max(0, shownAt - end)),
    settled,
  };
}
