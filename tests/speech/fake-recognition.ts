// A fake of the browser's recognition. It plays faults that were seen in browsers, from the project's own list of them:
// results given again and settled again, sessions that end by themselves or stall, ends that never come. No browser stands
// behind it, so it proves only that those faults are dealt with, not that these are all.

import type { HeardEvent, Recognition } from '../../src/speech/browser/index.ts';
import { type HeardWords, keepRecognising } from '../../src/speech/supervisor/keep-recognising.ts';
import type { EarNow, Gap } from '../../src/speech/supervisor/now.ts';

export const START = 2_000_000;

export interface FakeSession extends Recognition {
  /** starts, stops and aborts in their order */
  readonly asked: string[];
}

type Result = readonly [text: string, isFinal: boolean, ...others: readonly string[]];

/** Results of one event, from the first place on. */
export function event(results: readonly Result[], resultIndex = 0): HeardEvent {
  const made = results.map(([text, isFinal, ...others]) =>
    Object.assign(
      [text, ...others].map((transcript) => ({ transcript, confidence: 0.8 })),
      { isFinal },
    ),
  );
  return { resultIndex, results: made };
}

/** A recogniser over fake sessions, with a clock that a test moves. */
export function arranged({ grows = false, refusesStart = false } = {}) {
  let time = START;
  const sessions: FakeSession[] = [];
  const heard: HeardWords[] = [];
  const said: EarNow[] = [];
  const gaps: Gap[] = [];
  let unsettled = '';
  let refusals = 0;
  const recogniser = keepRecognising({
    grows,
    clock: () => time,
    now: (state) => said.push(state),
    heard: (words) => heard.push(words),
    gap: (gap) => gaps.push(gap),
    phrasesRefused: () => {
      refusals += 1;
    },
    unsettled: (text) => {
      unsettled = text;
    },
    make: () => {
      const asked: string[] = [];
      const made: FakeSession = {
        lang: '',
        continuous: true,
        interimResults: true,
        maxAlternatives: 1,
        asked,
        onstart: null,
        onresult: null,
        onerror: null,
        onend: null,
        start: () => {
          asked.push('start');
          if (refusesStart) throw new Error('already started');
        },
        stop: () => asked.push('stop'),
        abort: () => asked.push('abort'),
      };
      sessions.push(made);
      return made;
    },
  });
  const latest = (): FakeSession => {
    const session = sessions.at(-1);
    if (session === undefined) throw new Error('there is no session');
    return session;
  };
  return {
    recogniser,
    sessions,
    gaps,
    latest,
    texts: () => heard.map(({ text }) => text),
    heard,
    state: () => said.at(-1),
    unsettled: () => unsettled,
    refusals: () => refusals,
    /** lets time pass, looked after as the page does it */
    pass: (ms: number) => {
      for (const end = time + ms; time < end; ) {
        time += 250;
        recogniser.check();
      }
    },
    /** starts, and the session says that it has */
    begin: () => {
      recogniser.start();
      latest().onstart?.();
    },
  };
}
