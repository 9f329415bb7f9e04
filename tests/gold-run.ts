// A gold set run from file to verdicts, for the test that counts them and the script that shows them.

import { readFileSync } from 'node:fs';
import type { Reader } from '../src/parse/index.ts';
import type { Entry } from '../src/record/index.ts';
import { type GoldCase, judge, type Verdict } from './talk/gold-match.ts';
import { entriesOf } from './talk-case.ts';

export interface Judged extends Verdict {
  readonly gold: GoldCase;
  readonly entries: readonly Entry[];
  readonly passed: boolean;
}

/** The cases of a gold set, one JSON document on each line. */
export const casesOf = (file: string | URL): readonly GoldCase[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as GoldCase);

/** Every case with what it missed and what it should not have had. */
export const runGold = (reader: Reader, cases: readonly GoldCase[]): readonly Judged[] =>
  cases.map((gold) => {
    const entries = entriesOf(reader, gold.talk);
    const verdict = judge(gold, entries);
    return { gold, entries, ...verdict, passed: verdict.missing.length + verdict.unwanted.length === 0 };
  });

export interface Figures {
  readonly cases: number;
  readonly passed: number;
  /** passed over cases, 0 to 1 */
  readonly share: number;
  readonly missing: number;
  readonly unwanted: number;
}

export function figuresOf(judged: readonly Judged[]): Figures {
  const passed = judged.filter((one) => one.passed).length;
  return {
    cases: judged.length,
    passed,
    share: judged.length === 0 ? 0 : passed / judged.length,
    missing: judged.reduce((sum, one) => sum + one.missing.length, 0),
    unwanted: judged.reduce((sum, one) => sum + one.unwanted.length, 0),
  };
}

/** The figures as one line. */
export const figuresText = (name: string, { cases, passed, share, missing, unwanted }: Figures): string =>
  `${name}: ${passed} of ${cases} cases pass (${(share * 100).toFixed(1)} %); ${missing} expected entries missing, ${unwanted} forbidden ones present`;
