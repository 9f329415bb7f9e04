// The page reads a talk file exactly as the command line does.

import { readdirSync, readFileSync } from 'node:fs';
import { array, assert, constantFrom, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTalk } from '../../src/replay/talk.ts';
import { isTalkFile, readTalkFile } from '../../src/screens/talk/talk-file.ts';

const OTHERWISE = { startedAt: 1_930_000_000_000, zone: 'Europe/Zurich' };
const DEMOS = new URL('../../public/demo/', import.meta.url);

const LINES = [
  '# a comment',
  '',
  '@start 2031-04-05T10:00:00+02:00',
  '@start yesterday',
  '@zone Europe/London',
  '@zone Nowhere/AtAll',
  '@pace slow',
  '[00:01:10] left knee swelling',
  '[00:00:05]',
  '[1:2] broken',
  '[coughs] sorry',
  'no bleeding there',
  '  pulse ninety two  ',
];

/** Both readers' answers in one shape; the line of a fault counts, its wording does not. */
function both(text: string): readonly [unknown, unknown] {
  const ours = readTalkFile(text, OTHERWISE);
  const theirs = readTalk(text, OTHERWISE);
  return [
    ours.kind === 'talk' ? ours : `line ${/\d+/.exec(ours.why)}`,
    theirs.kind === 'talk' ? theirs : `line ${theirs.line}`,
  ];
}

describe('a talk file', () => {
  it.each(readdirSync(DEMOS).filter((name) => name.endsWith('.talk')))(
    '%s is read as the command line reads it',
    (name) => {
      const [ours, theirs] = both(readFileSync(new URL(name, DEMOS), 'utf8'));
      expect(ours).toEqual(theirs);
      expect(theirs).toMatchObject({ kind: 'talk' });
    },
  );

  it('of any lines is read, or refused at the same line, as the command line does', () => {
    assert(
      property(array(constantFrom(...LINES), { maxLength: 8 }), (lines) => {
        const [ours, theirs] = both(lines.join('\n'));
        expect(ours).toEqual(theirs);
      }),
    );
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
