// The handover's order, length and short words, against what was published on them. The patient is invented.

import { describe, expect, test } from 'vitest';
import { CRITERIA } from '../../src/clinical/index.ts';
import {
  CHUNK_WORDS,
  CLEAN_WORDS,
  imistAmbo,
  mist,
  SERIOUS_WORDS,
  sbar,
  soap,
} from '../../src/handoff/index.ts';
import { shortCriterion } from '../../src/handoff/sentences/criterion-words.ts';
import { clockTime, input, made } from '../handoff/made-up.ts';

// Source: a worked spoken ATMISTER handover on Geeky Medics (read). Its facts, in the order it tells them: age and sex,
// time, mechanism, injury, respirations, heart rate, pressure, saturation, temperature, GCS, binder, arrival. The words
// are ours. Within the signs we keep the record's own order of vitals, so these are held as a set.
test('ATMIST tells the facts of the published example in its order', () => {
  const told = { at: clockTime('13:00') };
  const entries = [
    made('eta', { kind: 'note', text: 'ETA 10 minutes' }),
    made('binder', { kind: 'care', care: 'pelvic-binder', site: 'pelvis', side: null }),
    made('gcs', { kind: 'vital', vital: 'gcs', value: { total: 15 } }),
    made('temperature', { kind: 'vital', vital: 'temperature', value: { celsius: 37 } }),
    made('saturation', { kind: 'vital', vital: 'oxygen-saturation', value: { percent: 95 } }),
    made('pressure', { kind: 'vital', vital: 'blood-pressure', value: { systolic: 110, diastolic: 70 } }),
    made('pulse', { kind: 'vital', vital: 'pulse', value: { rate: 120 } }),
    made('respirations', { kind: 'vital', vital: 'respirations', value: { rate: 20 } }),
    made('pelvis', { kind: 'finding', site: 'pelvis', side: null, finding: 'instability', present: true }),
    made('crash', { kind: 'history', topic: 'mechanism', text: 'car rolled over' }, told),
    made('sex', { kind: 'history', topic: 'sex', text: 'male' }),
    made('age', { kind: 'history', topic: 'age', text: '30', years: 30 }),
  ];
  const text = mist(input(entries))
    .lines.map((line) => line.text)
    .join('\n');
  const signs = ['Respirations: 20', 'Pulse: 120', '110/70', '95%', '37.0 °C', 'GCS: total 15'];
  const places = [
    'Age: 30',
    'Time of incident: 13:00',
    'rolled over',
    'instability',
    '',
    'Pelvic binder',
    'ETA 10',
  ].map((words) =>
    words === '' ? Math.min(...signs.map((sign) => text.indexOf(sign))) : text.indexOf(words),
  );
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((one, other) => one - other));
  expect(Math.max(...signs.map((sign) => text.indexOf(sign)))).toBeLessThan(text.indexOf('Pelvic binder'));
});

const initials = (report: typeof mist): string =>
  report(input([]))
    .lines.filter(({ role }) => role === 'heading')
    .map(({ text }) => text.charAt(0))
    .join('')
    .slice(1);

describe('each order has its parts in the published order', () => {
  // Sources: RCEM Learning (read); Iedema R and others, BMJ Qual Saf 2012;21:627-633, and a protocol sheet (read);
  // Leonard M and others, Qual Saf Health Care 2004;13(suppl 1):i85-i90 (from memory).
  test.each([
    ['ATMIST', mist],
    ['IMISTAMBO', imistAmbo],
    ['SBAR', sbar],
  ] as const)('%s', (letters, report) => {
    expect(initials(report)).toBe(letters);
  });
  // Source: Weed LL, N Engl J Med 1968;278:593-600 and 652-657 (from memory).
  test('SOAP', () => {
    const parts = soap(input([])).lines.filter(({ text }) => /^[A-Z]{4,}$/.test(text));
    expect(parts.map(({ text }) => text.charAt(0)).join('')).toBe('SOAP');
  });
});

// Source: Kansas City North ARES, segments of 20 to 30 seconds (read); ICAO Doc 9432 2.2, slower than 100 words a minute
// where the listener writes (read). 80 words a minute is ours; the arithmetic is computed.
test('a piece is said in 30 seconds, a serious report in 90 and a calm one in 45, at 80 words a minute', () => {
  expect([CHUNK_WORDS, SERIOUS_WORDS, CLEAN_WORDS].map((words) => (words / 80) * 60)).toEqual([30, 90, 45]);
});

// Source: the criteria of the 2021 guideline, as src/clinical has them from NEMSIS v3.5.1 eInjury (read).
describe('every triage criterion has a few words of its own', () => {
  test.each(CRITERIA.map(({ rule, level, text }) => [rule, level, text] as const))(
    '%s',
    (rule, level, text) => {
      const flag = { rule, level, text, state: 'met', evidence: [], source: '' } as const;
      const short = shortCriterion(flag);
      // A rule without a row falls back on its published text.
      const fallback = shortCriterion({ ...flag, rule: 'no such rule' });
      expect(short).not.toBe(fallback);
      expect(short.split(' ').length).toBeLessThanOrEqual(8);
      // No number of the criterion is turned on the way.
      for (const number of short.match(/\d+/g) ?? []) expect(text).toContain(number);
    },
  );
});
