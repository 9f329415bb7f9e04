// The command line from outside: output, standard error and exit status as the contract states them. Talk is invented.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { BUNDLED, replay, replayCutShort, replayHere } from './command.ts';

// A process of its own takes its time on a busy machine; nothing here is about how long.
vi.setConfig({ testTimeout: 60_000 });

const FOLDER = mkdtempSync(join(tmpdir(), 'talk-'));
afterAll(() => rmSync(FOLDER, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(FOLDER, name);
  writeFileSync(path, content);
  return path;
}

const HEADER = '@start 2026-05-03T14:02:00-06:00\n';
const TALK = `${HEADER}left wrist swollen\n[00:01:00] pulse ninety two\n`;
const good = file('good.talk', TALK);
const second = file('second.talk', `${HEADER}right knee bruised\n`);
const bad = file('bad.talk', '@start 2026-05-03T14:02:00-06:00\nall well\n[00:99:00] too late\n');

describe('one file', () => {
  it('is printed as the timeline and the radio report', async () => {
    const { status, out, err } = await replayHere([good]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toMatch(/14:02.*wrist/i);
    expect(out).toMatch(/\bover\n$/);
  });

  it('is printed as one JSON document', () => {
    const { status, out } = replay(['--json', good]);
    expect(status).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      schema: 'fieldsay-record/1',
      startedAt: '2026-05-03T14:02:00-06:00',
      entries: expect.arrayContaining([
        expect.objectContaining({
          kind: 'finding',
          site: 'wrist',
          side: 'left',
          finding: 'swelling',
          present: true,
        }),
        expect.objectContaining({ vital: 'pulse', value: { rate: 92 }, at: '2026-05-03T14:03:00-06:00' }),
      ]),
    });
  });

  it('gives the same record from standard input, with Windows line ends and a byte order mark', () => {
    const plain = replay(['--json', good]).out;
    expect(replay(['--json', '-'], `\uFEFF${TALK.replaceAll('\n', '\r\n')}`)).toEqual({
      status: 0,
      out: plain,
      err: '',
    });
  });

  it('gives the same record when it is started from the bundle', () => {
    expect(replay(['--json', good], '', BUNDLED)).toEqual(replay(['--json', good]));
  });

  it.each(['--soap', '--mist', '--imist-ambo', '--sbar', '--radio', '--timeline'])(
    'is printed with %s',
    async (option) => {
      const { status, out, err } = await replayHere([option, good]);
      expect({ status, err }).toEqual({ status: 0, err: '' });
      expect(out).toMatch(/wrist/i);
    },
  );

  it('is printed as one FHIR document, the same each time', async () => {
    const { status, out, err } = await replayHere(['--fhir', good]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    const resource = expect.objectContaining({ resourceType: 'Observation', status: 'preliminary' });
    expect(JSON.parse(out)).toMatchObject({
      resourceType: 'Bundle',
      type: 'document',
      entry: expect.arrayContaining([expect.objectContaining({ resource })]),
    });
    expect((await replayHere(['--fhir', good])).out).toBe(out);
  });

  it('that says nothing that is understood still ends well, and the words are kept', async () => {
    const fox = file('fox.talk', `${HEADER}the quick brown fox jumps over the lazy dog\n`);
    const { status, out } = await replayHere(['--json', fox]);
    expect(status).toBe(0);
    expect(JSON.parse(out).entries).toMatchObject([{ kind: 'note' }]);
  });

  it('that is empty gives a record in which nothing was examined', async () => {
    const { status, out } = await replayHere(['--json', file('empty.talk', '')]);
    const record = JSON.parse(out) as { entries: unknown[]; coverage: { state: string }[] };
    expect(status).toBe(0);
    expect(record.entries).toEqual([]);
    expect(new Set(record.coverage.map(({ state }) => state))).toEqual(new Set(['not-examined']));
  });

  it('whose reader stops listening ends without a complaint', async () => {
    expect(await replayCutShort(['--json', '-'], TALK)).toMatchObject({ status: 0, err: '' });
  });
});

describe('several files', () => {
  it('are one JSON document on each line, each with its file', async () => {
    const { status, out } = await replayHere(['--json', good, second]);
    const records = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { file: string });
    expect(status).toBe(0);
    expect(records.map((record) => record.file)).toEqual([good, second]);
  });

  it('are one FHIR document on each line, which share no identifier', async () => {
    const { status, out } = await replayHere(['--fhir', good, second]);
    const ids = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { entry: { fullUrl: string }[] })
      .map(({ entry }) => entry.map(({ fullUrl }) => fullUrl));
    expect(status).toBe(0);
    expect(ids).toHaveLength(2);
    expect(new Set(ids.flat()).size).toBe(ids.flat().length);
  });

  it('are each headed by their name in the other forms', async () => {
    const { out } = await replayHere(['--timeline', good, second]);
    expect(out.split('\n').filter((line) => line.startsWith('=='))).toEqual([
      `== ${good} ==`,
      `== ${second} ==`,
    ]);
  });

  it('are printed but for the one that cannot be read, which is named', async () => {
    const { status, out, err } = await replayHere(['--json', bad, good]);
    expect(status).toBe(1);
    expect(JSON.parse(out)).toMatchObject({ file: good });
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});

describe('input that cannot be read', () => {
  const FAULTS: readonly (readonly [what: string, path: string, says: string])[] = [
    ['a missing file', join(FOLDER, 'none.talk'), 'none.talk: '],
    ['a folder', FOLDER, `${FOLDER}: `],
    ['a bad stamp', bad, 'bad.talk:3: '],
    ['a bad start', file('start.talk', '# a\n@start soon\n'), 'start.talk:2: '],
    ['an unknown directive', file('directive.talk', '@speaker Ivo\n'), 'directive.talk:1: '],
    [
      'bytes that are no UTF-8',
      file('latin.talk', Buffer.from('one\n37 \xb0C\n', 'latin1')),
      'latin.talk:2: ',
    ],
    ['a missing recording', join(FOLDER, 'none.wav'), 'none.wav: '],
    ['a recording that is text', file('text.wav', TALK), 'text.wav: is no WAV recording'],
  ];
  it.each(FAULTS)('ends with 1 and one line that names it: %s', async (_what, path, says) => {
    const { status, out, err } = await replayHere(['--json', path]);
    expect({ status, out }).toEqual({ status: 1, out: '' });
    expect(err).toContain(says);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('names standard input', () => {
    expect(replay(['-'], '@start soon\n')).toMatchObject({
      status: 1,
      err: expect.stringMatching(/^standard input:1: /),
    });
  });
});

describe('a wrong command line', () => {
  it('ends the process with 2', () => {
    expect(replay(['--json'])).toMatchObject({ status: 2, out: '' });
  });

  it.each([
    ['no file', ['--json']],
    ['an unknown option', ['--xml', good]],
    ['two options', ['--json', '--soap', good]],
  ])('ends with 2 and the usage on standard error: %s', async (_what, words) => {
    const { status, out, err } = await replayHere(words);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain('usage: npm run --silent replay --');
  });
});
