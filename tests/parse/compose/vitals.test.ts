// A vital sign is read with its numbers where they can be; where they cannot, its words are kept and no number is. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';

describe('a vital sign', () => {
  it.each([
    ['pulse one oh six weak and regular', ['pulse rate=106 quality=weak+regular']],
    ['pulse, um, eighty four', ['pulse rate=84']],
    ['fifteen in fifteen seconds pulse sixty', ['pulse rate=60']],
    ['resps sixteen', ['respirations rate=16']],
    ['pressure one eighteen over seventy six', ['blood-pressure systolic=118 diastolic=76']],
    ['pressure ninety by palpation', ['blood-pressure systolic=90 diastolic= method=palpation']],
    ['sats ninety six on room air', ['oxygen-saturation percent=96 onOxygen=false']],
    ['sats ninety one on oxygen', ['oxygen-saturation percent=91 onOxygen=true']],
    ['temp thirty seven point two', ['temperature celsius=37.2']],
    ['temp ninety seven point seven', ['temperature celsius=36.5']],
    ['glucose five point five', ['glucose mgPerDl=99']],
    ['sugar one oh four', ['glucose mgPerDl=104']],
    ['skin pink, warm and dry', ['skin color=pink temperature=warm moisture=dry']],
    ['pupils equal round and reactive', ['pupils equal=true round=true reactive=true']],
    ['pupils four millimetres', ['pupils equal=true leftMm=4 rightMm=4']],
    ['alert and oriented times four', ['responsiveness avpu=A orientation=4']],
    ['responds to voice', ['responsiveness avpu=V']],
    ['gcs fifteen', ['gcs total=15']],
    ['eyes four verbal five motor six', ['gcs eye=4 verbal=5 motor=6 total=15']],
    ['gcs thirteen, eyes three, verbal four, motor six', ['gcs eye=3 verbal=4 motor=6 total=13']],
    ['gcs eyes two verbal not testable motor five', ['gcs eye=2 verbal=NT motor=5']],
    ['pain is six out of ten', ['pain-score score=6']],
    [
      'pulse one fourteen, respirations twenty two, sats ninety four',
      ['pulse rate=114', 'respirations rate=22', 'oxygen-saturation percent=94'],
    ],
  ])('is read: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    'heart rate twelve hundred',
    'pressure seventy six over one eighteen',
    'sats one hundred and five',
    'temp sixty',
    'glucose two thousand',
    'pupils thirty millimetres',
    'alert and oriented times nine',
    'eyes five',
    'gcs twelve, eyes three, verbal four, motor six',
    'pain fifteen out of ten',
    'pulse',
    'if his pulse goes over one twenty call me',
  ])('is not made of what cannot be or was not measured, and the words stay: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });

  it.each([
    ['one thirty over eighty five', { vital: 'inferred' }],
    ['temp ninety seven point seven', { unit: 'inferred' }],
    ['pupils four millimetres', { equal: 'inferred' }],
    ['eyes four verbal five motor six', { total: 'inferred' }],
    ['pressure one eighteen over seventy six', {}],
  ])('says what of it was worked out: %s', (talk, known) => {
    expect(statementsOf(talk).map((one) => one.known)).toEqual([known]);
  });
});

describe('what a reading was before', () => {
  it('is no reading of now, and stays in words', () => {
    expect(read('pressure ninety over sixty, was one twenty over eighty before', 'vital', 'note')).toEqual([
      'blood-pressure systolic=90 diastolic=60',
      'note: was one twenty over eighty before',
    ]);
  });
});

describe('a sign that is denied', () => {
  it.each(['not alert', 'he is not alert', "doesn't respond to voice", 'not responding to pain'])(
    'is none, and stays in words: %s',
    (talk) => {
      expect(read(talk)).toEqual([`note: ${talk}`]);
    },
  );
});

describe('a coma scale whose parts do not make its sum', () => {
  const QUESTION = 'Eyes 3, verbal 4, motor 6 make 13, and 14 was said: which is right?';
  const asked = (talk: string) =>
    statementsOf(talk).map(({ statement, doubt }) => [statement.kind, doubt] as const);
  it.each([
    'GCS eyes three, verbal four, motor six, total fourteen',
    'GCS fourteen, eyes three, verbal four, motor six',
    'E3 V4 M6 equals 14',
  ])('is no reading, and its words are kept with one question: %s', (talk) => {
    expect(asked(talk)).toEqual([['note', [QUESTION]]]);
  });
  it('said in two breaths leaves both, each with the question', () => {
    expect(asked('eyes three, verbal four, motor six. GCS fourteen')).toEqual([
      ['vital', [QUESTION]],
      ['vital', [QUESTION]],
    ]);
  });
  it.each([
    'GCS eyes three, verbal four, motor six, so thirteen',
    'eyes three, verbal four, motor six. GCS thirteen',
    'GCS fourteen',
    'eyes three, verbal four, motor six',
  ])('and one that fits asks nothing: %s', (talk) => {
    expect(asked(talk)).toEqual([['vital', []]]);
  });
});
