// Vitals as sets, series and what is due, from invented readings.

import { describe, expect, it } from 'vitest';
import { reckon, spokenReminder } from '../../src/clinical/index.ts';
import { age, breaths, clock, gcs, pressure, pulse, saturation } from './build.ts';

const at = (now: number, entries: Parameters<typeof reckon>[0]) => reckon(entries, { now: clock(now) });

describe('sets', () => {
  it('take in readings up to five minutes after the first, and say the minutes since the set before', () => {
    const { sets } = at(30, [pulse(80, 0), pressure(120, 80, 5), pulse(82, 6), pulse(90, 20)]);
    expect(sets.map((set) => [set.vitals, set.minutesSince])).toEqual([
      [['pulse', 'blood-pressure'], null],
      [['pulse'], 6],
      [['pulse'], 14],
    ]);
  });
});

describe('series', () => {
  it('give first, last, direction and change', () => {
    const series = at(30, [pulse(84, 0), pulse(96, 10), pulse(118, 20)]).series[0];
    expect(series).toMatchObject({ measure: 'pulse', direction: 'up', change: 34 });
    expect(series?.points.map((point) => point.value)).toEqual([84, 96, 118]);
  });
  it('have no direction with one reading', () => {
    expect(at(0, [pulse(84)]).series[0]?.direction).toBeNull();
  });
  it('say level where first and last are the same', () => {
    expect(at(20, [pulse(84, 0), pulse(84, 10)]).series[0]?.direction).toBe('level');
  });
  it('leave out a pressure by palpation from the diastolic', () => {
    expect(at(0, [pressure(80, null)]).series.map((series) => series.measure)).toEqual(['systolic']);
  });
});

const steady = (minutes: number) => [
  age(30),
  pulse(70, minutes),
  pressure(120, 80, minutes),
  breaths(16, minutes),
  gcs(4, 5, 6, minutes),
];

describe('what is due', () => {
  it('is a first set, now, before any', () => {
    expect(at(0, []).due).toMatchObject({ dueAt: null, reminder: 'No vitals yet.', stability: 'unknown' });
  });
  it('is every 15 minutes where function was asked and is normal', () => {
    expect(at(14, steady(0)).due).toMatchObject({ stability: 'stable', everyMinutes: 15, reminder: null });
    expect(at(15, steady(0)).due).toMatchObject({
      overdueMinutes: 0,
      reminder: 'Vitals are due: last taken 15 minutes ago.',
    });
  });
  it('is every 5 minutes where a red criterion is met', () => {
    expect(at(5, [...steady(0), breaths(34, 0)]).due).toMatchObject({
      stability: 'unstable',
      everyMinutes: 5,
      dueAt: clock(5),
    });
  });
  it('is every 5 minutes where it is not known whether the patient is stable', () => {
    expect(at(5, [pulse(70, 0), saturation(98, false, 0)]).due).toMatchObject({
      stability: 'unknown',
      everyMinutes: 5,
    });
  });
  it('follows the responder, who can set both the view and the minutes', () => {
    const due = reckon(steady(0), { now: clock(11), due: { regard: 'unstable', unstableMinutes: 10 } }).due;
    expect(due).toMatchObject({ stability: 'unstable', everyMinutes: 10, overdueMinutes: 1 });
  });
});

describe('the spoken reminder', () => {
  const say = (now: number, spokenAt: number | null, entries: Parameters<typeof reckon>[0]) => {
    const { due, sets } = at(now, entries);
    return spokenReminder(due, sets, {
      now: clock(now),
      spokenAt: spokenAt === null ? null : clock(spokenAt),
    });
  };

  it('asks for a first set, and again after five minutes', () => {
    expect(say(0, null, [])).toBe('No vitals yet. Take a first set.');
    expect(say(4, 0, [])).toBeNull();
    expect(say(5, 0, [])).toBe('No vitals yet. Take a first set.');
  });
  it('asks for a first set only once an interval has passed since the examination began, where that is known', () => {
    const { due, sets } = at(0, []);
    const first = (minutes: number) =>
      spokenReminder(due, sets, { now: clock(minutes), spokenAt: null, startedAt: clock(0) });
    expect(first(4)).toBeNull();
    expect(first(5)).toBe('No vitals yet. Take a first set.');
  });
  it('comes when a set is due and not before, and names what was last taken and no value', () => {
    expect(say(14, null, steady(0))).toBeNull();
    expect(say(15, null, steady(0))).toBe(
      'Vitals are due. Last taken 15 minutes ago: pulse, blood pressure, respirations, GCS.',
    );
  });
  it('is not said twice within five minutes, and is said again for a new set', () => {
    expect(say(17, 15, steady(0))).toBeNull();
    expect(say(20, 15, steady(0))).toMatch(/^Vitals are due/);
    expect(say(32, 15, [...steady(0), ...steady(17)])).toMatch(/Last taken 15 minutes ago/);
  });
});
