// Rows of a test: a talk, `|` between its utterances, and each statement or correction that it makes as one short line.

import { expect, it } from 'vitest';
import { corrections, read } from './read.ts';

type Rows = readonly (readonly [talk: string, means: readonly string[]])[];

/** A test for each row: its talk makes these statements and no others. */
export const checkStatements = (rows: Rows): void =>
  it.each(rows)('%s', (talk, means) => {
    expect(read(talk)).toEqual(means);
  });

/** A test for each row: its talk makes these corrections and no others. */
export const checkCorrections = (rows: Rows): void =>
  it.each(rows)('%s', (talk, means) => {
    expect(corrections(talk)).toEqual(means);
  });
