// Scores against published bands at both edges and against worked examples; all readings not cited are invented.

import { describe, expect, it } from 'vitest';
import { scores } from '../../src/clinical/index.ts';
import { palsSystolicLimit } from '../../src/clinical/score/child-pressure.ts';
import { CHILD_BREATHS, CHILD_PULSE, childRow } from '../../src/clinical/score/child-ranges.ts';
import { gcsSum } from '../../src/clinical/score/gcs.ts';
import { gcsPupils } from '../../src/clinical/score/gcs-pupils.ts';
import { type News2Readings, news2Total } from '../../src/clinical/score/news2.ts';
import { riskOf } from '../../src/clinical/score/news2-table.ts';
import { meanArterialPressure, shockIndex, shockIndexCutOff } from '../../src/clinical/score/pressure.ts';
import { codedRts, rtsCodes, weightedRts } from '../../src/clinical/score/revised-trauma.ts';
import { clock, gcs, pressure, pulse } from '../clinical/build.ts';

describe('the GCS sums and Revised Trauma Scores of the NEMSIS TAC 2025 compliance cases', () => {
  // Read: NEMSIS TAC 2025 compliance cases, eVitals.19-23 and unweighted RTS in eVitals.33; weighted column computed.
  const cases = [
    ['crash 17:04', 102, 68, 4, 5, 5, 14, 11, 7.55],
    ['crash 17:11', 98, 54, 4, 5, 5, 14, 11, 7.55],
    ['crash 17:16', 100, 46, 4, 5, 5, 14, 11, 7.55],
    ['crash 17:28', 108, 35, 4, 5, 5, 14, 11, 7.55],
    ['bicycle 15:08', 102, 12, 1, 1, 4, 6, 10, 5.9672],
    ['bicycle 15:23', 100, 10, 1, 1, 4, 6, 10, 5.9672],
    ['bicycle 15:24', 100, 20, 1, 1, 4, 6, 10, 5.9672],
    ['bicycle 15:40', 104, 20, 1, 1, 4, 6, 10, 5.9672],
    ['bicycle 15:55', 104, 20, 1, 1, 4, 6, 10, 5.9672],
    ['arrest 06:44', 0, 0, 1, 1, 1, 3, 0, 0],
    ['arrest 06:48', 0, 0, 1, 1, 1, 3, 0, 0],
  ] as const;
  it.each(cases)('%s', (_, systolic, breaths, eye, verbal, motor, sum, coded, weighted) => {
    expect(gcsSum(eye, verbal, motor)).toBe(sum);
    expect(codedRts(sum, systolic, breaths)).toBe(coded);
    expect(weightedRts(sum, systolic, breaths)).toBe(weighted);
  });
});

describe('the Revised Trauma Score', () => {
  // Read: Champion HR et al. J Trauma 1989;29:623-629, bands as in SJTREM Utstein 2008 table 7.
  it.each([
    [15, 4],
    [13, 4],
    [12, 3],
    [9, 3],
    [8, 2],
    [6, 2],
    [5, 1],
    [4, 1],
    [3, 0],
  ])('codes a GCS of %i as %i', (value, code) => expect(rtsCodes(value, 120, 16).gcs).toBe(code));
  it.each([
    [90, 4],
    [89, 3],
    [76, 3],
    [75, 2],
    [50, 2],
    [49, 1],
    [1, 1],
    [0, 0],
  ])('codes a systolic of %i as %i', (value, code) => expect(rtsCodes(15, value, 16).systolic).toBe(code));
  it.each([
    [10, 4],
    [29, 4],
    [30, 3],
    [9, 2],
    [6, 2],
    [5, 1],
    [1, 1],
    [0, 0],
  ])('codes %i breaths as %i', (value, code) => expect(rtsCodes(15, 120, value).breaths).toBe(code));
  it('goes up to 7.8408 weighted and 12 coded', () => {
    expect(weightedRts(15, 120, 16)).toBe(7.8408);
    expect(codedRts(15, 120, 16)).toBe(12);
  });
});

describe('the GCS', () => {
  it('has no sum with a component not testable (from memory: Lancet Neurol 2014;13:844-854)', () => {
    expect(gcsSum(1, 'NT', 6)).toBeNull();
    expect(scores([gcs(1, 'NT', 6)], { now: clock(0) }).gcs).toBeNull();
  });
  it('sums HL7 R4 example Observation/glasgow, M5 V4 E4, to 13 (read)', () => {
    expect(gcsSum(4, 4, 5)).toBe(13);
  });
  it('less pupils: 3 with both unreactive is 1, 10 with both reactive is 10 (read: J Neurosurg 2018;128:1612-1620)', () => {
    expect(gcsPupils(3, 2)).toBe(1);
    expect(gcsPupils(10, 0)).toBe(10);
  });
});

describe('NEWS2', () => {
  // Read: Royal College of Physicians, National Early Warning Score (NEWS) 2, London 2017, chart 1. Acknowledged.
  const normal: News2Readings = {
    respirations: 16,
    saturation: 98,
    onOxygen: false,
    systolic: 120,
    pulse: 70,
    consciousness: 'A',
    celsius: 37,
  };
  const points = (change: Partial<News2Readings>, scale: 1 | 2 = 1): number =>
    news2Total({ ...normal, ...change }, scale);

  it.each([
    [8, 3],
    [9, 1],
    [11, 1],
    [12, 0],
    [20, 0],
    [21, 2],
    [24, 2],
    [25, 3],
  ])('gives %i breaths %i', (respirations, expected) => expect(points({ respirations })).toBe(expected));
  it.each([
    [91, 3],
    [92, 2],
    [93, 2],
    [94, 1],
    [95, 1],
    [96, 0],
  ])('gives a saturation of %i on scale 1 %i', (saturation, expected) =>
    expect(points({ saturation })).toBe(expected),
  );
  it.each([
    [83, 3],
    [84, 2],
    [85, 2],
    [86, 1],
    [87, 1],
    [88, 0],
    [92, 0],
    [93, 0],
    [97, 0],
  ])('gives a saturation of %i on scale 2 on air %i', (saturation, expected) =>
    expect(points({ saturation }, 2)).toBe(expected),
  );
  it.each([
    [92, 0],
    [93, 1],
    [94, 1],
    [95, 2],
    [96, 2],
    [97, 3],
  ])('gives a saturation of %i on scale 2 on oxygen %i and 2 for the oxygen', (saturation, expected) =>
    expect(points({ saturation, onOxygen: true }, 2)).toBe(expected + 2),
  );
  it.each([
    [90, 3],
    [91, 2],
    [100, 2],
    [101, 1],
    [110, 1],
    [111, 0],
    [219, 0],
    [220, 3],
  ])('gives a systolic of %i %i', (systolic, expected) => expect(points({ systolic })).toBe(expected));
  it.each([
    [40, 3],
    [41, 1],
    [50, 1],
    [51, 0],
    [90, 0],
    [91, 1],
    [110, 1],
    [111, 2],
    [130, 2],
    [131, 3],
  ])('gives a pulse of %i %i', (pulseRate, expected) => expect(points({ pulse: pulseRate })).toBe(expected));
  it.each([
    [35.0, 3],
    [35.1, 1],
    [36.0, 1],
    [36.1, 0],
    [38.0, 0],
    [38.1, 1],
    [39.0, 1],
    [39.1, 2],
  ])('gives %f degrees %i', (celsius, expected) => expect(points({ celsius })).toBe(expected));
  it.each(['C', 'V', 'P', 'U'] as const)('gives %s 3', (consciousness) =>
    expect(points({ consciousness })).toBe(3),
  );

  // First row read: documentation of the open package `cliot` (CRAN), news2_score. The others are computed.
  it.each([
    [
      '4 for the documented example on scale 2',
      {
        respirations: 22,
        saturation: 90,
        onOxygen: true,
        systolic: 130,
        pulse: 80,
        consciousness: 'A',
        celsius: 37,
      },
      2,
      4,
    ],
    [
      '7 for the same on scale 1',
      {
        respirations: 22,
        saturation: 90,
        onOxygen: true,
        systolic: 130,
        pulse: 80,
        consciousness: 'A',
        celsius: 37,
      },
      1,
      7,
    ],
    [
      '0 at the lower edges',
      {
        respirations: 12,
        saturation: 96,
        onOxygen: false,
        systolic: 111,
        pulse: 51,
        consciousness: 'A',
        celsius: 36.1,
      },
      1,
      0,
    ],
    [
      '0 at the upper edges',
      {
        respirations: 20,
        saturation: 96,
        onOxygen: false,
        systolic: 219,
        pulse: 90,
        consciousness: 'A',
        celsius: 38,
      },
      1,
      0,
    ],
    [
      '20 at the most',
      {
        respirations: 25,
        saturation: 91,
        onOxygen: true,
        systolic: 90,
        pulse: 131,
        consciousness: 'U',
        celsius: 35,
      },
      1,
      20,
    ],
    [
      '7 for a mixture',
      {
        respirations: 24,
        saturation: 95,
        onOxygen: false,
        systolic: 110,
        pulse: 110,
        consciousness: 'A',
        celsius: 39.1,
      },
      1,
      7,
    ],
  ] as const)('totals %s', (_, readings, scale, total) => expect(news2Total(readings, scale)).toBe(total));

  it('says low, low to medium for a single 3, medium from 5, high from 7 (read: chart 4)', () => {
    expect([riskOf(4, false), riskOf(3, true), riskOf(5, false), riskOf(6, true), riskOf(7, false)]).toEqual([
      'low',
      'low-medium',
      'medium',
      'medium',
      'high',
    ]);
  });
});

describe('the shock index', () => {
  it.each([
    [118, 102, 1.16],
    [86, 108, 0.8],
    [120, 80, 1.5],
    [84, 120, 0.7],
  ])('of %i over %i is %f to two decimals (computed)', (rate, systolic, expected) =>
    expect(scores([pulse(rate), pressure(systolic, 60)], { now: clock(0) }).shockIndex).toBe(expected),
  );
  it('is the pulse over the systolic (read: Koch E et al. Open Access Emerg Med 2019;11:179-199)', () => {
    expect(shockIndex(118, 102)).toBeCloseTo(1.157, 3);
  });
  // Read: Acker SN et al. J Pediatr Surg 2015;50:331-334. None under 4; adults as Koch 2019.
  it.each([
    [3, null],
    [4, 1.22],
    [6, 1.22],
    [7, 1.0],
    [12, 1.0],
    [13, 0.9],
    [16, 0.9],
    [17, 1.0],
  ])('has at %i years the cut-off %s', (years, cutOff) => expect(shockIndexCutOff(years)).toBe(cutOff));
});

describe('the mean arterial pressure', () => {
  // From memory: any physiology text; the four rows are computed.
  it.each([
    [120, 80, 93.3],
    [107, 60, 75.7],
    [98, 52, 67.3],
    [102, 50, 67.3],
  ])('of %i/%i is %f', (systolic, diastolic, expected) =>
    expect(meanArterialPressure(systolic, diastolic)).toBeCloseTo(expected, 1),
  );
  it('is the whole mmHg in the record, and null by palpation', () => {
    expect(scores([pressure(120, 80)], { now: clock(0) }).meanArterialPressure).toBe(93);
    expect(scores([pressure(80, null)], { now: clock(0) }).meanArterialPressure).toBeNull();
  });
});

describe('children', () => {
  it.each([
    [0.05, 60],
    [0.5, 70],
    [1, 72],
    [5, 80],
    [9, 88],
    [10, 90],
    [11, 90],
    [17, 90],
  ])('at %f years are hypotensive under %i by PALS (read in secondary pages)', (years, limit) =>
    expect(palsSystolicLimit(years)).toBe(limit),
  );
  it('have the ranges quoted in web box 1 of Lancet 2011;377:1011-1018 (read; columns to be rechecked)', () => {
    expect(childRow(CHILD_BREATHS, 0.5)?.pals).toEqual([30, 60]);
    expect(childRow(CHILD_BREATHS, 4)?.pals).toEqual([22, 34]);
    expect(childRow(CHILD_BREATHS, 11.9)?.apls).toEqual([20, 25]);
    expect(childRow(CHILD_PULSE, 4)?.apls).toEqual([95, 140]);
    expect(childRow(CHILD_PULSE, 10)?.pals).toEqual([60, 100]);
    expect(childRow(CHILD_PULSE, 17.9)?.atls).toEqual([100]);
    expect(childRow(CHILD_PULSE, 18)).toBeNull();
  });
});
