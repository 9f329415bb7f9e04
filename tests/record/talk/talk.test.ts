// Talk files: times, directives, line ends, and faults named with their line. All talk is invented.

import { describe, expect, it } from 'vitest';
import { isTalkFile, readTalk, textOfBytes } from '../../../src/record/talk/index.ts';

const UTF8 = new TextDecoder('utf-8', { fatal: true });

const NOW = { startedAt: Date.UTC(2026, 0, 2, 3, 4, 5), zone: '+01:00' };
const START = Date.UTC(2026, 4, 3, 20, 2, 0);

function heard(text: string): readonly (readonly [seconds: number, words: string])[] {
  const talk = readTalk(text, NOW);
  if (talk.kind === 'error') throw new Error(`${talk.line}: ${talk.why}`);
  return talk.utterances.map(
    ({ heardAt, text: words }) => [(heardAt - talk.startedAt) / 1000, words] as const,
  );
}

describe('the times of a talk file', () => {
  it('begin at @start, and each line without a stamp follows four seconds after the one before', () => {
    expect(heard('@start 2026-05-03T14:02:00-06:00\none\ntwo\n[00:12:05] three\nfour\n')).toEqual([
      [0, 'one'],
      [4, 'two'],
      [725, 'three'],
      [729, 'four'],
    ]);
  });

  it('come from the directive, with its offset as the zone', () => {
    expect(readTalk('@start 2026-05-03T14:02:00-06:00\none', NOW)).toMatchObject({
      startedAt: START,
      zone: '-06:00',
    });
  });

  it('take the zone of @zone where there is one, before or after @start', () => {
    const directives = ['@start 2026-05-03T14:02:00-06:00', '@zone America/Denver'];
    for (const lines of [directives, directives.toReversed()]) {
      expect(readTalk([...lines, 'one'].join('\n'), NOW)).toMatchObject({
        startedAt: START,
        zone: 'America/Denver',
        utterances: [{ text: 'one', heardAt: START, zone: 'America/Denver' }],
      });
    }
  });

  it('begin at the time of the run where no start is given', () => {
    expect(readTalk('one', NOW)).toMatchObject({ startedAt: NOW.startedAt, zone: '+01:00' });
  });

  it('may go backwards: the words are kept at the time they state', () => {
    expect(heard('[00:01:00] one\n[00:00:30] two\nthree')).toEqual([
      [60, 'one'],
      [30, 'two'],
      [34, 'three'],
    ]);
  });

  it('go on from a stamp without words, which makes no utterance', () => {
    expect(heard('[00:01:00]\none')).toEqual([[64, 'one']]);
  });
});

describe('the lines of a talk file', () => {
  it('pass over comments and blank lines, which take no time', () => {
    expect(heard('# said by nobody\n\n  \none\n# two\n\nthree')).toEqual([
      [0, 'one'],
      [4, 'three'],
    ]);
  });

  it.each([
    ['\n', 'Unix'],
    ['\r\n', 'Windows'],
    ['\r', 'old Macintosh'],
  ])('may end as %j (%s)', (end) => {
    expect(heard(['one', 'two', ''].join(end))).toEqual([
      [0, 'one'],
      [4, 'two'],
    ]);
  });

  it('keep brackets that hold no time, and a # or @ within a line, among the words', () => {
    expect(heard('[coughs] one\ntwo # three @ four')).toEqual([
      [0, '[coughs] one'],
      [4, 'two # three @ four'],
    ]);
  });

  it('make no talk of an empty file', () => {
    expect(heard('')).toEqual([]);
  });
});

describe('a talk file with a fault', () => {
  it.each([
    ['@start yesterday', 1],
    ['@start 2026-05-03T14:02:00', 1],
    ['@start 2026-02-30T14:02:00Z', 1],
    ['# a\n@start', 2],
    ['@start 2026-05-03T14:02:00Z\n@start 2026-05-03T14:02:00Z', 2],
    ['@zone Nowhere/Such', 1],
    ['@zone', 1],
    ['@speaker Ivo', 1],
    ['@', 1],
    ['one\n@start 2026-05-03T14:02:00Z', 2],
    ['one\n\n[00:75:00] two', 3],
    ['[12:05] two', 1],
    ['[00:12:05 two', 1],
    ['[1] two', 1],
    ['[-00:00:05] two\n[00:00:5] three', 2],
  ])('is refused with its line: %j, line %i', (text, line) => {
    const read = readTalk(text, NOW);
    expect(read).toMatchObject({ kind: 'error', line });
    expect(read.kind === 'error' ? read.why : '').not.toBe('');
  });
});

describe('the bytes of a talk file', () => {
  const bytes = (...parts: readonly (string | number)[]): Uint8Array =>
    Buffer.concat(parts.map((part) => (typeof part === 'string' ? Buffer.from(part) : Buffer.from([part]))));

  it('lose a byte order mark', () => {
    expect(textOfBytes(bytes(0xef, 0xbb, 0xbf, 'one'), UTF8)).toEqual({ kind: 'text', text: 'one' });
  });

  it('may be any UTF-8, and a replacement character that was written stays', () => {
    expect(textOfBytes(bytes('37 °C – naïve �'), UTF8)).toEqual({ kind: 'text', text: '37 °C – naïve �' });
  });

  it.each([
    ['a Latin-1 degree sign on the third line', bytes('one\ntwo\n37 ', 0xb0, 'C\nfour'), 3],
    ['a character cut off at the end', bytes('one\ntwo ', 0xe2, 0x80), 2],
    ['UTF-16', bytes(0xff, 0xfe, 'o', 0), 1],
  ])('that are no UTF-8 are refused with their line: %s', (_title, given, line) => {
    expect(textOfBytes(given, UTF8)).toMatchObject({ kind: 'error', line });
  });
});

describe('a mark before the first line', () => {
  it('is no part of it, in bytes and in text', () => {
    const text = '\uFEFF@start 2026-05-03T14:02:00-06:00\none';
    expect(readTalk(text, NOW)).toMatchObject({ startedAt: START, utterances: [{ text: 'one' }] });
    expect(textOfBytes(new TextEncoder().encode(text), UTF8)).toMatchObject({ kind: 'text' });
  });
});

describe('pasted text', () => {
  it.each(['@start 2031-04-05T10:00:00+02:00\nhello', 'one\n[00:01:10] two'])('%j is a talk file', (text) => {
    expect(isTalkFile(text)).toBe(true);
  });

  it.each(['left knee swelling\nno bleeding', 'mail me @starting time', '[coughs] sorry'])(
    '%j is talk',
    (text) => {
      expect(isTalkFile(text)).toBe(false);
    },
  );
});
