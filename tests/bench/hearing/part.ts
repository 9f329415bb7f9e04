// One part of the benchmark: one set in one voice and one wind, heard with the levers as they are or with one of them moved.

import { appendFileSync } from 'node:fs';
import { hearingFiles } from '../../../src/replay/hearing-setup.ts';
import { loadModule } from '../../../src/speech/file/load-module.ts';
import { openHearing } from '../../../src/speech/index.ts';
import { LEVERS, saidWith, workedOutWith } from './levers.ts';
import { type Benched, bench } from './sentence.ts';
import { evenly, setOf } from './sets.ts';
import { rowOf } from './sum.ts';

export interface PartAsked {
  readonly set: string;
  readonly voice: string;
  /** decibels of the speech over the wind, or none */
  readonly wind: number | null;
  /** exam sentences and ordinary ones, at most so many of each */
  readonly some: number;
  readonly kind: 'both' | 'exam' | 'ordinary';
  /** a name of levers.ts */
  readonly lever: string;
}

export interface PartDone extends PartAsked {
  readonly row: string;
  /** megabytes of compiled memory after the last sentence */
  readonly memory: number;
}

/** Hears the part; every sentence goes to the file `log` as a line, when there is one. */
export async function runPart(
  asked: PartAsked,
  log?: string,
): Promise<readonly [PartDone, readonly Benched[]]> {
  const { module, models } = await loadModule();
  const files = hearingFiles();
  const lever = LEVERS[asked.lever];
  if (lever === undefined) throw new Error(`There is no lever ${asked.lever}.`);
  const hearing = openHearing({ module, models, worked: workedOutWith(lever, files), ...lever });
  const hear = (said: string): Benched => {
    const one = bench(hearing, asked, said);
    if (log !== undefined) appendFileSync(log, `${JSON.stringify({ ...asked, ...one })}\n`);
    return one;
  };
  const { exam, ordinary } = setOf(asked.set);
  const fits = saidWith(asked.lever, files);
  const examined = asked.kind === 'ordinary' ? [] : evenly(exam.filter(fits), asked.some).map(hear);
  const talked = asked.kind === 'exam' ? [] : evenly(ordinary, asked.some).map(hear);
  hearing.close();
  const memory = Math.round(module.HEAP8.length / 1e6);
  return [{ ...asked, row: rowOf(asked.set, asked, examined, talked), memory }, [...examined, ...talked]];
}
