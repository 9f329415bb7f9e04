import { describe, expect, test } from 'vitest';
import {
  formatIso,
  isZone,
  parseIso,
  readTimes,
  resolveTime,
  type SpokenTime,
} from '../../src/parse/times/index.ts';

const split = (text: string): readonly string[] => text.split(' ');
const longest = (text: string): SpokenTime | undefined => {
  const words = split(text);
  const [first] = readTimes(words, 0);
  return first?.end === words.length ? first.time : undefined;
};

describe('a time on the twenty-four hour clock', () => {
  test.each([
    ['fourteen thirty two', 14, 32],
    ['fourteen hundred', 14, 0],
    ['fourteen hundred hours', 14, 0],
    ['two hundred hours', 2, 0],
    ['oh six hundred', 6, 0],
    ['zero six hundred hours', 6, 0],
    ['oh six fifteen', 6, 15],
    ['zero six fifteen', 6, 15],
    ['zero six one five', 6, 15],
    ['one four three two', 14, 32],
    ['fourteen oh five', 14, 5],
    ['fourteen zero five', 14, 5],
    ['twenty two fifteen', 22, 15],
    ['twenty one oh five', 21, 5],
    ['twenty twenty five', 20, 25],
    ['zero hundred hours', 0, 0],
    ['zero thirty', 0, 30],
    ['two fifteen hours', 2, 15],
    ['14:32', 14, 32],
    ['06:15', 6, 15],
    ['1432', 14, 32],
    ['1432 hours', 14, 32],
    ['0615', 6, 15],
    ['14 32', 14, 32],
    ['06 15', 6, 15],
    ['2400', 0, 0],
    ['noon', 12, 0],
    ['twelve noon', 12, 0],
    ['midday', 12, 0],
    ['midnight', 0, 0],
    ['ten to midnight', 23, 50],
    ['twenty past midnight', 0, 20],
    ['ten to noon', 11, 50],
    ['fourteen thirty pm', 14, 30],
  ])('"%s" is %d:%d', (text, hour, minute) => {
    expect(longest(text)).toEqual({ kind: 'clock', hour, minute, twentyFour: true });
  });
});

describe('a time on the twelve hour clock', () => {
  test.each([
    ['two fifteen', 2, 15],
    ['two oh five', 2, 5],
    ['ten forty five', 10, 45],
    ['2:15', 2, 15],
    ['quarter past two', 2, 15],
    ['a quarter past two', 2, 15],
    ['quarter after two', 2, 15],
    ['half past two', 2, 30],
    ['ten to three', 2, 50],
    ['five past three', 3, 5],
    ['twenty to nine', 8, 40],
    ['twenty five to nine', 8, 35],
    ['quarter to one', 12, 45],
    ['three minutes to eight', 7, 57],
    ['10 past 9', 9, 10],
    ['thirty five minutes past nine', 9, 35],
    ['thirty five minutes to nine', 8, 25],
    ['half past seven o clock', 7, 30],
    ["two o'clock", 2, 0],
    ["2 o'clock", 2, 0],
    ['two o clock', 2, 0],
  ])('"%s" is %d:%d, morning or evening not said', (text, hour, minute) => {
    expect(longest(text)).toEqual({ kind: 'clock', hour, minute, twentyFour: false });
  });

  test.each([
    ['two fifteen pm', 2, 15, 'pm'],
    ['two fifteen p m', 2, 15, 'pm'],
    ['2:15 am', 2, 15, 'am'],
    ['nine am', 9, 0, 'am'],
    ['9 p m', 9, 0, 'pm'],
    ['nine in the morning', 9, 0, 'am'],
    ['three this afternoon', 3, 0, 'pm'],
    ['half past six this evening', 6, 30, 'pm'],
    ['nine at night', 9, 0, 'pm'],
    ['two at night', 2, 0, 'am'],
    ['eleven in the night', 11, 0, 'pm'],
    ["eight o'clock tonight", 8, 0, 'pm'],
    ['ten to one in the afternoon', 12, 50, 'pm'],
    ['340 pm', 3, 40, 'pm'],
    ['twelve thirty am', 12, 30, 'am'],
  ] as const)('"%s" is %d:%d %s', (text, hour, minute, half) => {
    expect(longest(text)).toEqual({ kind: 'clock', hour, minute, twentyFour: false, half });
  });

  test('"about" is kept', () => {
    expect(longest('about two fifteen')).toMatchObject({ kind: 'clock', hour: 2, minute: 15, about: true });
  });
});

describe('a time before now', () => {
  test.each([
    ['ten minutes ago', 600, false],
    ['10 minutes ago', 600, false],
    ['10 min ago', 600, false],
    ['an hour ago', 3600, false],
    ['half an hour ago', 1800, false],
    ['half hour ago', 1800, false],
    ['a half hour ago', 1800, false],
    ['three quarters of an hour ago', 2700, false],
    ['about an hour and a half ago', 5400, true],
    ['an hour and a half ago', 5400, false],
    ['two and a half hours ago', 9000, false],
    ['an hour and ten minutes ago', 4200, false],
    ['one hour ten minutes ago', 4200, false],
    ['a couple of minutes ago', 120, true],
    ['couple minutes ago', 120, true],
    ['two hours ago', 7200, false],
    ['thirty seconds ago', 30, false],
    ['a minute ago', 60, false],
    ['two days ago', 172_800, false],
    ['ten minutes or so ago', 600, true],
    ['just over an hour ago', 3600, true],
    ['to minutes ago', 120, false],
    ['for hours ago', 14_400, false],
  ])('"%s" is %d seconds ago (about: %s)', (text, seconds, about) => {
    expect(longest(text)).toEqual({ kind: 'ago', seconds, about });
  });

  test.each(['just now', 'right now', 'a moment ago'])('"%s" is now', (text) => {
    expect(longest(text)).toEqual({ kind: 'now' });
  });
});

describe('what is no time gives none', () => {
  test.each([
    'nine',
    '9',
    'fourteen',
    'two hundred',
    'ninety two',
    'twenty five seventy',
    'twenty five thirty',
    'ten sixty',
    '14:60',
    '25:00',
    '2460',
    '1998',
    '24:30',
    'four to five',
    'five to ten minutes',
    'five to ten percent',
    'one twenty over eighty',
    'ten to three fifty',
    'half to three',
    'thirty to three',
    'seven past three',
    'sixty minutes to nine',
    'ten past fourteen',
    'thirteen am',
    'twenty thirty minutes ago',
    'one two three four five',
    'ten minutes',
    'ten minutes and ten hours ago',
    'ten minutes and',
    'fourteen hundred and fifty',
    'now',
    'ago',
    'hundred hours',
    'am',
    'o clock',
    'about',
    'to ninety minutes',
    '',
  ])('"%s"', (text) => {
    expect(readTimes(split(text), 0)).toEqual([]);
  });

  test('a half of the day that cannot be is left unread', () => {
    expect(readTimes(split('fourteen thirty am'), 0)[0]).toMatchObject({
      end: 2,
      time: { hour: 14, minute: 30 },
    });
  });

  test('what follows a time is not eaten', () => {
    expect(readTimes(split('tourniquet on at 14:12 2 litres'), 3)[0]).toMatchObject({ end: 4 });
    expect(readTimes(split('fourteen twelve hours ago'), 0)).toEqual([]);
  });
});

describe('the instant a clock time means', () => {
  const at = (iso: string): number => {
    const parsed = parseIso(iso);
    if (parsed === null) throw new Error(`no instant in ${iso}`);
    return parsed.epochMs;
  };
  const meant = (text: string, heard: string, zone: string): string => {
    const time = longest(text);
    if (time === undefined) throw new Error(`no time in ${text}`);
    return formatIso(resolveTime(time, at(heard), zone), zone);
  };
  const heard = '2026-05-03T14:20:00-06:00';
  const denver = 'America/Denver';

  test.each([
    ['fourteen twelve', '2026-05-03T14:12:00-06:00'],
    ['fourteen twenty', '2026-05-03T14:20:00-06:00'],
    ['fourteen twenty five', '2026-05-03T14:25:00-06:00'],
    ['fourteen twenty six', '2026-05-03T14:26:00-06:00'],
    ['fifteen thirty', '2026-05-02T15:30:00-06:00'],
    ['two fifteen', '2026-05-03T14:15:00-06:00'],
    ['two fifteen am', '2026-05-03T02:15:00-06:00'],
    ['nine thirty', '2026-05-03T09:30:00-06:00'],
    ['nine thirty pm', '2026-05-02T21:30:00-06:00'],
    ['three thirty', '2026-05-03T03:30:00-06:00'],
    ['twelve thirty', '2026-05-03T12:30:00-06:00'],
    ['twelve thirty am', '2026-05-03T00:30:00-06:00'],
    ['noon', '2026-05-03T12:00:00-06:00'],
    ['midnight', '2026-05-03T00:00:00-06:00'],
    ['ten to two', '2026-05-03T13:50:00-06:00'],
    ['ten minutes ago', '2026-05-03T14:10:00-06:00'],
    ['just now', '2026-05-03T14:20:00-06:00'],
  ])('"%s", heard at twenty past two in the afternoon, is %s', (text, expected) => {
    expect(meant(text, heard, denver)).toBe(expected);
    expect(meant(text, heard, '-06:00')).toBe(expected);
  });

  test('just after midnight an evening time was yesterday', () => {
    expect(meant('twenty three fifty', '2026-05-03T00:05:00-06:00', denver)).toBe(
      '2026-05-02T23:50:00-06:00',
    );
    expect(meant('eleven fifty', '2026-05-03T00:05:00-06:00', denver)).toBe('2026-05-02T23:50:00-06:00');
  });

  test('just before midnight, midnight is the coming one', () => {
    expect(meant('midnight', '2026-05-03T23:57:00-06:00', denver)).toBe('2026-05-04T00:00:00-06:00');
  });

  test('across the spring change of 8 March 2026 in Denver the offset follows the clocks', () => {
    expect(meant('oh one thirty', '2026-03-08T03:10:00-06:00', denver)).toBe('2026-03-08T01:30:00-07:00');
    expect(meant('oh three oh five', '2026-03-08T03:10:00-06:00', denver)).toBe('2026-03-08T03:05:00-06:00');
    expect(meant('twenty three hundred', '2026-03-08T09:00:00-06:00', denver)).toBe(
      '2026-03-07T23:00:00-07:00',
    );
    expect(meant('two hours ago', '2026-03-08T03:10:00-06:00', denver)).toBe('2026-03-08T00:10:00-07:00');
  });

  test('in the hour that is skipped, the watch that was not put forward is believed', () => {
    expect(meant('oh two thirty', '2026-03-08T03:40:00-06:00', denver)).toBe('2026-03-08T03:30:00-06:00');
  });

  test('in the hour that comes twice, the later one that fits is meant', () => {
    expect(meant('oh one thirty', '2026-11-01T01:40:00-07:00', denver)).toBe('2026-11-01T01:30:00-07:00');
    expect(meant('oh one thirty', '2026-11-01T01:10:00-07:00', denver)).toBe('2026-11-01T01:30:00-06:00');
    expect(meant('oh one thirty', '2026-11-01T01:40:00-06:00', denver)).toBe('2026-11-01T01:30:00-06:00');
  });
});

describe('ISO 8601', () => {
  test.each([
    ['2026-05-03T14:02:00-06:00', 'America/Denver'],
    ['2026-01-03T14:02:09-07:00', 'America/Denver'],
    ['2026-05-03T14:02:00+00:00', 'UTC'],
    ['2026-05-03T01:47:00+05:45', 'Asia/Kathmandu'],
    ['2026-05-03T14:02:00-06:00', '-06:00'],
    ['2026-05-03T14:02:00+05:30', '+0530'],
    ['2026-03-08T01:59:59-07:00', 'America/Denver'],
    ['2026-03-08T03:00:00-06:00', 'America/Denver'],
  ])('%s in %s comes back as it was', (iso, zone) => {
    expect(formatIso(parseIso(iso)?.epochMs ?? Number.NaN, zone)).toBe(iso);
  });

  test('an instant and its offset are read', () => {
    expect(parseIso('2026-05-03T14:02:00-06:00')).toEqual({
      epochMs: Date.UTC(2026, 4, 3, 20, 2),
      offset: '-06:00',
    });
    expect(parseIso('2026-05-03T20:02Z')).toEqual({ epochMs: Date.UTC(2026, 4, 3, 20, 2), offset: '+00:00' });
    expect(parseIso('2026-05-03T20:02:00.750Z')?.epochMs).toBe(Date.UTC(2026, 4, 3, 20, 2));
  });

  test.each([
    '2026-02-30T10:00:00Z',
    '2026-13-01T10:00:00Z',
    '2026-05-03T24:01:00Z',
    '2026-05-03T10:60:00Z',
    '2026-05-03T10:00:00',
    '2026-05-03',
    '2026-05-03T10:00:00+25:00',
    'today',
    '',
  ])('"%s" is no instant', (text) => {
    expect(parseIso(text)).toBeNull();
  });

  test('milliseconds are cut off, before 1970 too', () => {
    expect(formatIso(1999, 'UTC')).toBe('1970-01-01T00:00:01+00:00');
    expect(formatIso(-1, 'America/Denver')).toBe('1969-12-31T16:59:59-07:00');
  });

  test('a zone is told from another word', () => {
    expect(['America/Denver', 'UTC', '-06:00', '+0530'].every(isZone)).toBe(true);
    expect(['Denver/America', '', 'six', '+99:00', 'Z5'].some(isZone)).toBe(false);
  });
});
