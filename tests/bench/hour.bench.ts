// The whole job: an invented hour of talk to the record, its scores, flags and coverage, and every report, one exam and many.

import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Bench, Row } from './bench.ts';
import type { Hours } from './hour/child.ts';
import { MINUTES } from './hour/talk.ts';

const CHILD = fileURLToPath(new URL('hour/child.ts', import.meta.url));
const AT_ONCE = [1, 4, 16, 64];

/** So many hours at once in a process of its own, whose memory is then theirs alone. */
const run = (exams: number): Hours =>
  JSON.parse(
    execFileSync(process.execPath, ['--import', 'tsx', CHILD, String(exams)], { encoding: 'utf8' }),
  ) as Hours;

/** Milliseconds for one minute of one exam's talk. */
const perMinute = (ms: number, { exams }: Hours): number => ms / exams / MINUTES;

export const benches: readonly Bench[] = [
  {
    title: 'An hour of talk to every report, and many hours at once',
    method:
      'milliseconds for a minute of one exam’s talk, twelve utterances; seeded; a process each, warm from another hour; splitting the same words is 1, for many at once one alone is 1',
    run: (): readonly Row[] => {
      const runs = AT_ONCE.map(run);
      const [one] = runs;
      if (one === undefined) return [];
      const words = perMinute(one.wordsMs, one);
      const row = (what: string, medianMs: number, beside: number): Row => ({
        what,
        medianMs,
        ratio: medianMs / beside,
      });
      const whole = (hours: Hours): number => perMinute(hours.recordMs + hours.reportsMs, hours);
      return [
        row('splitting the words alone', words, words),
        row('talk to record', perMinute(one.recordMs, one), words),
        row('record to every report', perMinute(one.reportsMs, one), words),
        row('the whole job', whole(one), words),
        ...runs.map((hours) =>
          row(`the whole job, each of ${hours.exams} at once`, whole(hours), whole(one)),
        ),
        ...runs.map(
          ({ exams, peakMb }): Row => ({
            what: `most memory held, ${exams} at once`,
            medianMs: peakMb,
            ratio: peakMb / one.peakMb,
            unit: 'MB',
          }),
        ),
      ];
    },
  },
];
