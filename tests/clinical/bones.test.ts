// Two long bones broken, and a splint on the side that was said to be whole; all entries are invented.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { cared, clock, denied, found, minute } from './build.ts';

const worked = (entries: readonly Entry[]) => {
  const { flags, conflicts } = reckon(entries, { now: clock(30) });
  const flag = flags.find(({ rule }) => rule === 'proximal-long-bones');
  return {
    state: flag?.state,
    missing: flag?.missing.join('; '),
    asked: conflicts.map((one) => one.conflict),
  };
};
const late = { at: minute(5) };

describe('a traction splint on a thigh', () => {
  it.each([
    ['said to have nothing', denied('thigh', 'left', 'abnormality', late)],
    ['where deformity was denied', denied('thigh', 'left', 'deformity', late)],
    ['of a leg said to have nothing', denied('leg', 'left', 'abnormality', late)],
  ])('%s is no second broken bone: which side is asked', (_, denial) => {
    const all = [found('thigh', 'right', 'deformity'), denial, cared('traction-splint', 'thigh', 'left', 9)];
    expect(worked(all)).toMatchObject({
      state: 'unknown',
      missing: expect.stringContaining('which side is meant: traction splint on the left thigh'),
      asked: expect.arrayContaining(['care-without-finding']),
    });
  });
  it('that is deformed too is the second', () => {
    const all = [
      found('thigh', 'right', 'deformity'),
      denied('thigh', 'left', 'abnormality'),
      found('thigh', 'left', 'deformity', late),
      cared('traction-splint', 'thigh', 'left', 9),
    ];
    expect(worked(all).state).toBe('met');
  });
  it('on the deformed side leaves the denied one out', () => {
    const all = [
      found('thigh', 'right', 'deformity'),
      denied('thigh', 'left', 'deformity'),
      denied('arm', 'both', 'deformity'),
      cared('traction-splint', 'thigh', 'right', 9),
    ];
    expect(worked(all)).toMatchObject({ state: 'not-met', asked: [] });
  });
});
