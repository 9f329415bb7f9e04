// A reading of now and an earlier one in one sentence: the time is of the earlier one alone. All talk here is invented; it is heard at 14:02.

import { describe, expect, it } from 'vitest';
import { BEGINS, line, statementsOf } from '../read.ts';

const MINUTE = 60_000;
const timed = (talk: string): readonly string[] =>
  statementsOf(talk).map(({ statement, at }) =>
    at === undefined ? line(statement) : `${line(statement)} ${(BEGINS - at) / MINUTE} min ago`,
  );

describe('a reading of now and one of before', () => {
  it.each([
    [
      'heart rate eighty eight now, it was one twenty six a quarter of an hour ago',
      ['pulse rate=88', 'pulse rate=126 15 min ago'],
    ],
    [
      'pulse ninety two now and it was one forty twenty minutes ago',
      ['pulse rate=92', 'pulse rate=140 20 min ago'],
    ],
    [
      'heart rate now ninety four, it was one forty twenty minutes ago',
      ['pulse rate=94', 'pulse rate=140 20 min ago'],
    ],
    [
      'sats ninety six now they were eighty eight ten minutes ago',
      ['oxygen-saturation percent=96', 'oxygen-saturation percent=88 10 min ago'],
    ],
    [
      'bp one hundred over sixty, it was eighty over forty at ten to two',
      ['blood-pressure systolic=100 diastolic=60', 'blood-pressure systolic=80 diastolic=40 12 min ago'],
    ],
    [
      'pressure one twenty over eighty, eighty over fifty twenty minutes ago',
      ['blood-pressure systolic=120 diastolic=80', 'blood-pressure systolic=80 diastolic=50 20 min ago'],
    ],
    [
      'pain four out of ten now, down from eight out of ten half an hour ago',
      ['pain-score score=4', 'pain-score score=8 30 min ago'],
    ],
    [
      'resps twelve, they were thirty ten minutes ago, sats ninety seven',
      ['respirations rate=12', 'respirations rate=30 10 min ago', 'oxygen-saturation percent=97'],
    ],
    [
      'pulse eighty now, he was unconscious ten minutes ago',
      ['pulse rate=80', 'responsiveness avpu=U 10 min ago'],
    ],
    ['gcs fifteen now, thirteen at ten to two', ['gcs total=15', 'gcs total=13 12 min ago']],
    [
      'temperature thirty six now, thirty four half an hour ago',
      ['temperature celsius=36', 'temperature celsius=34 30 min ago'],
    ],
  ])('are of two times: %s', (talk, expected) => {
    expect(timed(talk)).toEqual(expected);
  });

  it.each([
    ['gcs fourteen now, was nine ten minutes ago', ['gcs total=14', 'note: was nine ten minutes ago']],
    [
      'resps eighteen now, were thirty five minutes ago',
      ['respirations rate=18', 'note: were thirty five minutes ago'],
    ],
  ])('leave the first of now where the second cannot be told: %s', (talk, expected) => {
    expect(timed(talk)).toEqual(expected);
  });

  it.each([
    [
      'pulse ninety, bp one ten over seventy at ten to two',
      ['pulse rate=90 12 min ago', 'blood-pressure systolic=110 diastolic=70 12 min ago'],
    ],
    [
      'pulse was ninety, resps were twenty at ten to two',
      ['pulse rate=90 12 min ago', 'respirations rate=20 12 min ago'],
    ],
    [
      'pulse now ninety, resps now twenty at fourteen hundred',
      ['pulse rate=90 2 min ago', 'respirations rate=20 2 min ago'],
    ],
    ['gcs was nine, now thirteen', ['gcs total=13']],
    ['pulse was eighty now, one ten', ['pulse rate=110']],
    ['pulse was eighty ten minutes ago, now one twenty', ['pulse rate=80 10 min ago', 'pulse rate=120']],
  ])('stay one set where nothing parts them: %s', (talk, expected) => {
    expect(timed(talk)).toEqual(expected);
  });
});
