// Clocks, on invented entries.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { cared, clock, minute, pulse, told } from './build.ts';

const clocks = (now: number, entries: readonly Entry[]) =>
  reckon(entries, { now: clock(now) }).clocks.map((each) => [each.clock, each.of, each.minutes]);

describe('clocks', () => {
  it('are without a time before anything is said, and say what lacks', () => {
    expect(clocks(0, [])).toEqual([
      ['injury', 'injury', null],
      ['vitals', 'last vitals', null],
      ['intake', 'last intake', null],
    ]);
  });
  it('take the time of the injury only where it was spoken', () => {
    const told10 = told('mechanism', 'slipped at ten past', undefined, {
      at: minute(10),
      heardAt: minute(20),
    });
    expect(clocks(45, [told10])[0]).toEqual(['injury', 'injury', 35]);
    expect(clocks(45, [told('mechanism', 'slipped')])[0]).toEqual(['injury', 'injury', null]);
  });
  it('run one for each tourniquet from when it was first on', () => {
    const entries = [
      cared('tourniquet', 'thigh', 'left', 12),
      cared('tourniquet', 'thigh', 'left', 30),
      cared('tourniquet', 'arm', 'right', 20),
    ];
    expect(clocks(60, entries).filter(([name]) => name === 'tourniquet')).toEqual([
      ['tourniquet', 'left thigh', 48],
      ['tourniquet', 'right arm', 40],
    ]);
  });
  it('run from the last vitals and from each medication', () => {
    const entries = [
      pulse(80, 10),
      pulse(84, 20),
      cared('medication', undefined, undefined, 25, 'ibuprofen 400 mg'),
    ];
    expect(clocks(30, entries).filter(([name]) => name === 'vitals' || name === 'medication')).toEqual([
      ['vitals', 'last vitals', 10],
      ['medication', 'ibuprofen 400 mg', 5],
    ]);
  });
});
