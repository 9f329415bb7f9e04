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

describe('a reading with what it was before', () => {
  it.each([
    ['pulse one oh four, down from one twenty six', ['pulse rate=104']],
    ['resps sixteen up from ten', ['respirations rate=16']],
    [
      "eighty eight over fifty, that's down from one twelve over seventy",
      ['blood-pressure systolic=88 diastolic=50'],
    ],
    ['temp was thirty three, we have got her up to thirty five', ['temperature celsius=35']],
    ['gcs was nine on arrival, thirteen now', ['gcs total=13']],
    ["pain's come down to a three", ['pain-score score=3']],
  ])('is the one of now: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it('is kept in words where the reading of now stands among other words', () => {
    const talk = 'sats were eighty one when the probe went on and they are ninety four now with the mask';
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });

  it.each([
    [
      'pulse ninety, pressure one ten over seventy',
      ['pulse rate=90', 'blood-pressure systolic=110 diastolic=70'],
    ],
    ['pulse was ninety two', ['pulse rate=92']],
  ])('is no former one where only one was said: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('two readings of one sign', () => {
  it.each([
    [
      'sats eighty four on air, ninety three on ten litres',
      ['oxygen-saturation percent=84 onOxygen=false', 'oxygen-saturation percent=93 onOxygen=true'],
    ],
    ['pulse eighty, ninety three on ten litres', ['pulse rate=80', 'note: ninety three on ten litres']],
  ])('need a name only once, and only after their own kind: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('the size of a pupil', () => {
  it.each([
    [
      'left pupil sluggish at six, right brisk at two',
      ['pupils leftReactive=true rightReactive=true leftMm=6 rightMm=2 quality=left-sluggish'],
    ],
    ['pupils two left four right', ['pupils leftMm=2 rightMm=4']],
    ['pupils five right, three left', ['pupils leftMm=3 rightMm=5']],
    ['pupils four', ['pupils equal=true leftMm=4 rightMm=4']],
    [
      'pupils five and five, sluggish',
      ['pupils equal=true reactive=true leftMm=5 rightMm=5 quality=sluggish'],
    ],
    // Two sizes without their sides are none of both pupils.
    ['pupils two and five', ['pupils equal=false']],
    [
      'left pupil larger than the right, they react',
      ['pupils equal=false reactive=true quality=left-dilated'],
    ],
  ])('is of the side that is said: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('the coma scale', () => {
  it.each([
    ['gcs two three five ten', ['gcs eye=2 verbal=3 motor=5 total=10']],
    ['E two V T M four', ['gcs eye=2 verbal=NT motor=4']],
    ['eyes open to pain, makes sounds, withdraws', ['gcs eye=2 verbal=2 motor=4 total=8']],
  ])('is read: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each(['gcs two three five eleven', 'eyes opening spontaneously', 'her eyes are open by themselves'])(
    'is none where its parts do not fit or one is all there is, and nobody looked at the eyes: %s',
    (talk) => {
      expect(read(talk)).toEqual([`note: ${talk}`]);
    },
  );

  it('that was asked for is not the first of several figures', () => {
    expect(read('what is his gcs | E two V T M four', 'vital')).toEqual(['gcs eye=2 verbal=NT motor=4']);
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

it('asks which pupil is which where two sizes have no sides', () => {
  const [one] = statementsOf('pupils two and five');
  expect(one?.doubt).toEqual(['Which pupil is 2 mm, and which 5?']);
});
