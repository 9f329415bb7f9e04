// Scores from invented entries: the latest counts, and a missing part gives no number but its name.

import { describe, expect, it } from 'vitest';
import { chartOf, reckon, type ScoreName, scoreCards, scores } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import {
  age,
  avpu,
  breaths,
  cared,
  celsius,
  clock,
  gcs,
  minute,
  pressure,
  pulse,
  saturation,
  told,
  vital,
} from './build.ts';

const card = (name: ScoreName, entries: readonly Entry[], scale: 1 | 2 = 1) => {
  const score = scoreCards(chartOf(entries), scale).find((each) => each.score === name);
  if (score === undefined) throw new Error(`no card for ${name}`);
  return score;
};

describe('the four numbers of the record', () => {
  it('are all null before anything is said', () => {
    expect(scores([], { now: clock(0) })).toEqual({
      gcs: null,
      shockIndex: null,
      meanArterialPressure: null,
      burnPercent: null,
    });
  });
  it('take the latest reading by when it was so, not by where it stands in the list', () => {
    const entries = [pressure(90, 60, 10), pressure(120, 80, 0), pulse(90, 10), pulse(60, 0)];
    expect(scores(entries, { now: clock(20) })).toMatchObject({ shockIndex: 1, meanArterialPressure: 70 });
  });
  it.each([
    [10, 1.5],
    [11, null],
    [40, null],
  ])('have a shock index of a pulse and a pressure %i minutes apart: %f', (apart, expected) => {
    const entries = [pulse(120, 0), pressure(80, 50, apart)];
    expect(scores(entries, { now: clock(60) }).shockIndex).toBe(expected);
    const { missing, text } = card('shock-index', entries);
    expect(missing).toEqual(expected === null ? ['a pulse and a pressure taken together'] : []);
    if (apart === 40) expect(text).toBe('shock index not known: pulse 120 at 14:00, systolic 80 at 14:40');
  });
  it.each(['struck', 'replaced'] as const)('leave out a reading that is %s', (state) => {
    expect(scores([{ ...pressure(90, 60), state }], { now: clock(0) }).meanArterialPressure).toBeNull();
  });
});

describe('the GCS', () => {
  it('is put together from components said one by one within one set', () => {
    const said = [{ eye: 3 }, { verbal: 4 }, { motor: 6 }].map((value, index) =>
      vital({ vital: 'gcs', value }, { at: minute(index) }),
    );
    expect(card('gcs', said)).toMatchObject({ value: 13, text: 'GCS E3 V4 M6 = 13', missing: [] });
    expect(card('gcs', said).evidence).toHaveLength(3);
  });
  it('is not put together from components of two sets', () => {
    const said = [
      vital({ vital: 'gcs', value: { eye: 3, verbal: 4 } }, { at: minute(0) }),
      vital({ vital: 'gcs', value: { motor: 6 } }, { at: minute(20) }),
    ];
    expect(card('gcs', said)).toMatchObject({ value: null, missing: ['eye response', 'verbal response'] });
  });
  it('has no total with a component not testable, even after an earlier total', () => {
    expect(card('gcs', [gcs(4, 5, 6, 0), gcs(3, 'NT', 5, 10)])).toMatchObject({
      value: null,
      text: 'GCS E3 VNT M5, no total',
    });
  });
  it('gives a sum said after its components those components, and another sum none', () => {
    const alone = (total: number): Entry => vital({ vital: 'gcs', value: { total } }, { at: minute(1) });
    expect(card('gcs', [gcs(3, 4, 6), alone(13)]).text).toBe('GCS E3 V4 M6 = 13');
    expect(card('gcs', [gcs(3, 4, 6), alone(14)]).text).toBe('GCS 14');
  });
  it('takes a sum that was said alone', () => {
    expect(card('gcs', [vital({ vital: 'gcs', value: { total: 14 } })]).value).toBe(14);
  });
  it('says that an unconfirmed entry is unconfirmed', () => {
    const heard = { ...gcs(4, 5, 6), state: 'heard' as const };
    expect(card('gcs', [heard]).unconfirmed).toEqual([heard.id]);
  });
});

describe('AVPU', () => {
  it('is never turned into a number', () => {
    expect(card('responsiveness', [avpu('P')])).toMatchObject({
      value: null,
      text: 'AVPU P, responds to pain',
    });
    expect(scores([avpu('U')], { now: clock(0) }).gcs).toBeNull();
  });
});

describe('GCS-P', () => {
  const pupils = (value: { reactive?: boolean; leftReactive?: boolean; rightReactive?: boolean }): Entry =>
    vital({ vital: 'pupils', value });
  it.each([
    ['both react', { reactive: true }, 15],
    ['neither reacts', { reactive: false }, 13],
    ['one does not', { leftReactive: true, rightReactive: false }, 14],
    ['one side is not known', { leftReactive: false }, null],
  ] as const)('with a GCS of 15: %s', (_, value, expected) => {
    expect(card('gcs-pupils', [gcs(4, 5, 6), pupils(value)]).value).toBe(expected);
  });
  it('is undefined without a GCS total', () => {
    expect(card('gcs-pupils', [gcs(1, 'NT', 6), pupils({ reactive: true })]).value).toBeNull();
  });
});

describe('NEWS2', () => {
  const whole = (): readonly Entry[] => [
    age(40),
    breaths(16),
    saturation(98, false),
    pressure(120, 80),
    pulse(70),
    avpu('A', 4),
    celsius(37),
  ];
  it('is a total only with all seven items', () => {
    expect(card('news2', whole())).toMatchObject({ value: 0, missing: [] });
  });
  it.each([
    [1, 'breaths a minute'],
    [2, 'oxygen saturation'],
    [3, 'systolic pressure'],
    [4, 'pulse'],
    [5, 'consciousness, with new confusion'],
    [6, 'temperature'],
    [0, 'age (16 and over)'],
  ])('without item %i names it as missing and gives no total', (index, missing) => {
    const score = card('news2', whole().toSpliced(index, 1));
    expect(score.value).toBeNull();
    expect(score.missing).toContain(missing);
  });
  it('does not take an unsaid air for room air', () => {
    expect(
      card(
        'news2',
        whole().map((entry) =>
          entry.kind === 'vital' && entry.vital === 'oxygen-saturation' ? saturation(98) : entry,
        ),
      ).missing,
    ).toEqual(['air or oxygen']);
  });
  it('knows oxygen that was given', () => {
    expect(
      card('news2', [...whole().toSpliced(2, 1), cared('oxygen'), saturation(98, undefined, 1)]).value,
    ).toBe(2);
  });
  it('does not take alert for not confused', () => {
    expect(card('news2', [...whole().toSpliced(5, 1), avpu('A')]).missing).toEqual([
      'consciousness, with new confusion',
    ]);
    expect(card('news2', [...whole().toSpliced(5, 1), avpu('A', 3)]).value).toBe(3);
  });
  it('is not for those under 16, nor in pregnancy', () => {
    expect(card('news2', [age(15), ...whole().slice(1)]).text).toContain('under 16');
    expect(card('news2', [...whole(), told('past-history', 'pregnant')]).text).toContain('pregnancy');
  });
});

describe('the Revised Trauma Score', () => {
  it('names what it lacks', () => {
    expect(card('revised-trauma-score', [gcs(4, 5, 6), pressure(120, 80)])).toMatchObject({
      value: null,
      missing: ['breaths a minute'],
    });
  });
  it('gives the coded sum and the weighted one in its text', () => {
    const score = card('revised-trauma-score', [gcs(4, 5, 6), pressure(120, 80), breaths(16)]);
    expect(score.value).toBe(12);
    expect(score.text).toContain('weighted 7.8408');
  });
});

describe('the ranges for children', () => {
  const ranges = (entries: readonly Entry[]) => reckon(entries, { now: clock(0) }).childRanges;
  it('set a reading against each published range, which do not agree', () => {
    const [rate] = ranges([age(4), pulse(94)]);
    expect(rate?.against.map((each) => [each.name, each.standing])).toEqual([
      ['APLS', 'below'],
      ['PALS', 'inside'],
      ['EPLS', 'inside'],
      ['ATLS', 'inside'],
    ]);
  });
  it('are not given without an age, nor to adults', () => {
    expect(ranges([pulse(150)])).toEqual([]);
    expect(ranges([age(18), pulse(150)])).toEqual([]);
  });
});
