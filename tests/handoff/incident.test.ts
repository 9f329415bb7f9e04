// When it happened, and what came after it at a time of its own; the entries are invented.

import { describe, expect, test } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import { imistAmbo, mist, radio, sbar, soap, textOf } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { Topic } from '../../src/terms/index.ts';
import { clockTime, input, made } from './made-up.ts';

const told = (topic: Topic, text: string, at?: string): Entry =>
  made(text, { kind: 'history', topic, text }, at === undefined ? {} : { at: clockTime(at) });

const written = (entries: readonly Entry[]): readonly string[] =>
  [soap, mist, imistAmbo, sbar].map((report) => textOf(report(input(entries))));

const spoken = (entries: readonly Entry[]): string =>
  radio(input(entries))
    .chunks.map(({ text }) => text)
    .join('\n');

const times = (text: string): readonly string[] => text.match(/Time of incident: \S+(?= before|,)/g) ?? [];

const CRASH = told('mechanism', 'knocked down by a van at ten past one', '13:10');

describe('an event that came later', () => {
  const later = [
    ['he collapsed at thirteen thirty', 'He collapsed, at one three three zero'],
    ['had a fit ten minutes ago', 'Had a fit, at one three three zero'],
    ['passed out', 'Passed out, at one three three zero'],
    ['came round at the roadside', 'Came round at the roadside, at one three three zero'],
  ] as const;
  test.each(later)('%s: is no second time of the incident', (text, onAir) => {
    const entries = [CRASH, told('events', text, '13:30')];
    for (const report of written(entries)) expect(report).toContain(`Events: ${text}, at 13:30`);
    for (const report of written(entries).slice(1))
      expect(times(report)).toEqual(['Time of incident: 13:10']);
    expect(spoken(entries)).toMatch(/Incident one three one zero/);
    expect(spoken(entries)).not.toMatch(/Incident one three three zero/);
    expect(spoken(entries)).toContain(onAir);
  });

  test('leaves an incident whose time was not spoken without one', () => {
    const entries = [told('mechanism', 'knocked down by a van'), told('events', 'he collapsed', '13:30')];
    for (const report of written(entries).slice(1))
      expect(report).toMatch(/Time of incident: not recorded[\s\S]*he collapsed, at 13:30/);
    expect(reckon(entries, { now: Date.parse(clockTime('14:40')) }).clocks[0]?.since).toBeNull();
  });

  test('does not stand before the injury on its clock, whichever was told first', () => {
    const entries = [told('events', 'he collapsed', '12:50'), CRASH];
    expect(reckon(entries, { now: Date.parse(clockTime('14:40')) }).clocks[0]?.since).toBe(
      clockTime('13:10'),
    );
  });

  test('is told beside the mechanism where it has no time too', () => {
    for (const report of written([CRASH, told('events', 'knocked out for a minute')]))
      expect(report).toContain('Events: knocked out for a minute');
  });
});

test('the time at which a patient was found is no time of the incident', () => {
  const entries = [told('mechanism', 'found at the foot of the crag at thirteen hundred', '13:00')];
  for (const report of written(entries)) expect(report).toContain('at thirteen hundred, at 13:00');
  for (const report of written(entries).slice(1)) expect(report).toContain('Time of incident: not recorded');
  expect(spoken(entries)).toContain('Found at the foot of the crag, at one three zero zero');
});
