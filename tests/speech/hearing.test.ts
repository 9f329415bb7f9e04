// The bundled recogniser on speech that flite makes: what was said enters, what was not does not. Sentences are invented.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Entry } from '../../src/record/index.ts';
import { examine } from '../../src/replay/examine.ts';
import { readRecording } from '../../src/replay/recording.ts';
import { isNotUnderstood } from '../../src/speech/index.ts';
import { resampler } from '../../src/speech/wav/index.ts';
import { realReader } from '../talk-case.ts';
import { makeWav } from './make-wav.ts';

const folder = mkdtempSync(join(tmpdir(), 'fieldsay-hearing-'));
const SLOW = 240_000;

function canSpeak(): boolean {
  try {
    return execFileSync('flite', ['-lv'], { encoding: 'utf8' }).includes('rms');
  } catch {
    return false;
  }
}
const speaks = canSpeak();
const WHY = speaks ? '' : ' (not tested: flite is not installed: apt-get install flite)';

const HEADER = 44;
/** Samples of stillness between two breaths: 0.2 s at flite's 16,000 a second. */
const PAUSE = 3200;

/** One breath after another, in one recording. */
async function heard(...breaths: readonly string[]) {
  const path = join(folder, 'said.wav');
  const spoken = breaths.map((said) => {
    execFileSync('flite', ['-voice', 'rms', '-t', said, '-o', path]);
    return readFileSync(path);
  });
  const still = new Uint8Array(2 * PAUSE);
  const sound = Buffer.concat(spoken.flatMap((file) => [file.subarray(HEADER), still]));
  const header = spoken[0]?.subarray(0, HEADER) ?? Buffer.alloc(HEADER);
  header.writeUInt32LE(HEADER - 8 + sound.length, 4);
  header.writeUInt32LE(sound.length, HEADER - 4);
  return heardIn(Buffer.concat([header, sound]));
}

async function heardIn(wav: Uint8Array) {
  const path = join(folder, 'said.wav');
  writeFileSync(path, wav);
  const recording = await readRecording(path, { startedAt: Date.UTC(2026, 4, 3, 20, 2), zone: '-06:00' });
  if (typeof recording === 'string') throw new Error(recording);
  const { entries } = examine(realReader(), recording.talk).state;
  return { entries, utterances: recording.talk.utterances };
}

function resampled(sound: Float32Array, from: number, to: number): Float32Array {
  const { push, end } = resampler(from, to);
  return Float32Array.from([...push(sound), ...end()]);
}

const statements = (entries: readonly Entry[]): readonly Entry[] =>
  entries.filter(({ kind }) => kind !== 'note' && kind !== 'visit');

describe.skipIf(!speaks)(`the bundled recogniser${WHY}`, () => {
  let mixed: Awaited<ReturnType<typeof heard>>;
  beforeAll(async () => {
    mixed = await heard(
      'feeling your collarbones now.',
      'tenderness over the left clavicle.',
      'pulse is ninety two.',
      'no pain in the neck.',
    );
  }, SLOW);
  afterAll(() => rmSync(folder, { recursive: true }));

  it('enters the findings of a talk, each with its side, polarity and number', () => {
    // Readings stand before findings in the order that the parser gives them.
    const byKind = statements(mixed.entries).toSorted((a, b) => a.kind.localeCompare(b.kind));
    expect(byKind).toMatchObject([
      { kind: 'finding', site: 'clavicle', side: 'left', finding: 'tenderness', present: true },
      { kind: 'finding', site: 'neck', finding: 'pain', present: false },
      { kind: 'vital', vital: 'pulse', value: { rate: 92 } },
    ]);
  });

  it(
    'asks about a "no" that may have been a "now" where nobody paused behind it',
    async () => {
      const { entries } = await heard('feeling your collarbones now. tenderness over the left clavicle.');
      const [tenderness] = statements(entries);
      expect(tenderness).toMatchObject({ site: 'clavicle', side: 'left', finding: 'tenderness' });
      expect(tenderness?.doubt ?? []).not.toEqual([]);
    },
    SLOW,
  );

  it(
    'keeps the part that it did not understand, and doubts what was said right after it',
    async () => {
      const { entries } = await heard(
        'somebody left their gloves in the hut.',
        'the right wrist is swollen.',
      );
      expect(entries).toMatchObject([
        { kind: 'note', heard: expect.stringMatching(/^\[not understood/) },
        { kind: 'finding', site: 'wrist', side: 'right', finding: 'swelling', present: true },
      ]);
      expect(entries[1]?.doubt).toContain('heard next to speech that was not understood');
    },
    SLOW,
  );

  it('gives every word with a confidence, and trusts those of a clear sentence', () => {
    const words = mixed.utterances
      .filter(({ text }) => !isNotUnderstood(text))
      .flatMap((utterance) => utterance.words ?? []);
    // The voice's "now" before the first pause may be a "no", which is no part of these.
    const sure = ['tenderness', 'left', 'clavicle', 'ninety', 'no'].flatMap(
      (asked) => words.findLast(({ word }) => word === asked) ?? [],
    );
    expect(sure).toHaveLength(5);
    for (const { confidence } of sure) {
      expect(confidence).toBeGreaterThan(0.5);
      expect(confidence).toBeLessThanOrEqual(1);
    }
  });

  it(
    'enters nothing of ordinary talk, and keeps that it was said',
    async () => {
      const { entries } = await heard('somebody left their gloves in the hut near the second bridge.');
      expect(entries.map(({ kind }) => kind)).toEqual(['note']);
    },
    SLOW,
  );

  it(
    'hears what a telephone passes as well, whatever the rate of the recording',
    async () => {
      await heard('no pain in the neck.', 'the right wrist is swollen.');
      const bytes = readFileSync(join(folder, 'said.wav'));
      const samples = new Int16Array(bytes.buffer, bytes.byteOffset + HEADER, (bytes.length - HEADER) >> 1);
      const eight = resampled(
        Float32Array.from(samples, (value) => value / 32_768),
        16_000,
        8000,
      );
      for (const [rate, sound] of [
        [8000, eight],
        [48_000, resampled(eight, 8000, 48_000)],
      ] as const) {
        const { entries } = await heardIn(makeWav([sound], { rate }));
        expect(entries.filter(({ kind }) => kind === 'finding')).toMatchObject([
          { site: 'neck', finding: 'pain', present: false },
          { site: 'wrist', side: 'right', finding: 'swelling', present: true },
        ]);
      }
    },
    SLOW,
  );
});
