// Recordings as sound: every format, in pieces of any length; what is no sound is said. All sound is made here.

import { describe, expect, it } from 'vitest';
import { highPass, openWav, resampler } from '../../src/speech/wav/index.ts';
import { inPieces, type Making, makeWav, tone } from './make-wav.ts';

interface Read {
  readonly rate: number;
  readonly sound: Float32Array;
  readonly end: unknown;
}

async function read(bytes: Uint8Array, size = 1000): Promise<Read> {
  const opened = await openWav(inPieces(bytes, size));
  if (opened.kind === 'wav-fault') throw new Error(opened.why);
  const sound: number[] = [];
  for (;;) {
    const { done, value } = await opened.blocks.next();
    if (done) return { rate: opened.format.rate, sound: Float32Array.from(sound), end: value };
    sound.push(...value);
  }
}

const fault = async (bytes: Uint8Array) => {
  const opened = await openWav(inPieces(bytes, 5));
  return opened.kind === 'wav-fault' ? opened.fault : opened.kind;
};

const furthest = (a: Float32Array, b: Float32Array): number =>
  a.reduce((worst, value, at) => Math.max(worst, Math.abs(value - (b[at] ?? 0))), 0);

const power = (sound: Float32Array): number =>
  Math.sqrt(sound.reduce((sum, value) => sum + value * value, 0) / sound.length);

describe('a recording', () => {
  const sound = tone(440, 0.25, 8000);
  const FORMATS: readonly (readonly [Omit<Making, 'rate'>, number])[] = [
    [{ bits: 8 }, 1 / 128],
    [{ bits: 16 }, 1 / 32_000],
    [{ bits: 24 }, 1 / 8_000_000],
    [{ bits: 32 }, 1e-7],
    [{ bits: 32, float: true }, 1e-7],
    [{ bits: 24, extensible: true }, 1 / 8_000_000],
    [{ bits: 32, float: true, extensible: true }, 1e-7],
  ];
  it.each(FORMATS)('is read as %j', async (making, error) => {
    const got = await read(makeWav([sound], { rate: 8000, ...making }));
    expect(got).toMatchObject({ rate: 8000, end: { kind: 'whole' } });
    expect(got.sound.length).toBe(sound.length);
    expect(furthest(got.sound, sound)).toBeLessThanOrEqual(error);
  });

  it('is the same in pieces of any length', async () => {
    const bytes = makeWav([sound], { rate: 8000, noteBytes: 33 });
    const whole = await read(bytes, bytes.length);
    for (const size of [1, 7, 44, 1001]) expect(await read(bytes, size)).toEqual(whole);
  });

  it('of two channels gives their mean', async () => {
    const other = tone(440, 0.25, 8000).map((value) => -value / 2);
    const got = await read(makeWav([sound, other], { rate: 8000 }));
    expect(
      furthest(
        got.sound,
        sound.map((value) => value / 4),
      ),
    ).toBeLessThan(1e-4);
  });

  it.each([0, 0xffffffff])(
    'whose header leaves its length open (%d) is read to its end',
    async (saidLength) => {
      const got = await read(makeWav([sound], { rate: 8000, saidLength }));
      expect(got.end).toEqual({ kind: 'whole' });
      expect(got.sound.length).toBe(sound.length);
    },
  );

  it('that is cut short gives what is there and says so', async () => {
    const bytes = makeWav([sound], { rate: 8000 });
    const got = await read(bytes.subarray(0, bytes.length - 1001));
    expect(got.sound.length).toBe(sound.length - 501);
    expect(got.end).toMatchObject({ kind: 'cut', why: expect.stringContaining('ends 0.1 s before') });
  });

  it('with numbers that are none in it stays within bounds', async () => {
    const broken = Float32Array.of(0.5, Number.NaN, Number.POSITIVE_INFINITY, 0.25);
    const got = await read(makeWav([broken], { rate: 8000, bits: 32, float: true }));
    expect([...got.sound]).toEqual([0.5, 0, 0, 0.25]);
  });
});

describe('what is no recording that can be read', () => {
  const good = makeWav([tone(440, 0.01, 8000)], { rate: 8000 });
  const changed = (at: number, ...bytes: readonly number[]) => {
    const copy = good.slice();
    copy.set(bytes, at);
    return copy;
  };
  it.each([
    ['nothing', new Uint8Array(0), 'not-a-wave'],
    ['text', new TextEncoder().encode('left wrist swollen, pulse ninety two'), 'not-a-wave'],
    ['a head alone', good.subarray(0, 12), 'no-format'],
    ['a format alone', good.subarray(0, 36), 'no-sound'],
    ['half a format', good.subarray(0, 25), 'no-format'],
    ['another container', changed(0, 0x52, 0x49, 0x46, 0x58), 'unsupported'],
    ['compressed sound', changed(20, 2, 0), 'unsupported'],
    ['no channels', changed(22, 0, 0), 'unsupported'],
    ['no rate', changed(24, 0, 0, 0, 0), 'unsupported'],
  ])('is told apart: %s', async (_what, bytes, expected) => {
    expect(await fault(bytes)).toBe(expected);
  });

  it('is never taken for one at any length of a whole one', async () => {
    for (let length = 0; length <= 44; length++)
      expect(await fault(good.subarray(0, length))).toBe(
        length === 44 ? 'wav' : length < 12 ? 'not-a-wave' : length < 36 ? 'no-format' : 'no-sound',
      );
  });
});

/** The sound at 16 kHz, pushed in blocks of `size`. */
function resampled(sound: Float32Array, from: number, size: number): Float32Array {
  const made = resampler(from, 16_000);
  const parts: number[] = [];
  for (let at = 0; at < sound.length; at += size) parts.push(...made.push(sound.subarray(at, at + size)));
  parts.push(...made.end());
  return Float32Array.from(parts);
}

describe('a change of rate', () => {
  it.each([8000, 11_025, 22_050, 24_000, 32_000, 44_100, 48_000, 96_000])(
    'from %d a second keeps a tone where it was, in time and in strength',
    (rate) => {
      const got = resampled(tone(1000, 0.5, rate), rate, 997);
      expect(Math.abs(got.length - 8000)).toBeLessThanOrEqual(1);
      const middle = [500, got.length - 500] as const;
      const wanted = tone(1000, 0.5, 16_000).slice(...middle);
      expect(furthest(got.slice(...middle), wanted)).toBeLessThan(0.002);
    },
  );

  it.each([44_100, 48_000])('from %d a second keeps out what the lower rate cannot hold', (rate) => {
    for (const hertz of [8500, 10_000, 14_000, 20_000]) {
      const got = resampled(tone(hertz, 0.3, rate), rate, 4096).slice(400, -400);
      expect(20 * Math.log10(power(got) / 0.35)).toBeLessThan(-60);
    }
  });

  it('does not show where one block ends and the next begins', () => {
    const sound = tone(700, 0.3, 44_100);
    const whole = resampled(sound, 44_100, sound.length);
    for (const size of [1, 441, 5000]) expect(resampled(sound, 44_100, size)).toEqual(whole);
  });

  it('is none where the rates are the same', () => {
    const sound = tone(700, 0.1, 16_000);
    expect(resampled(sound, 16_000, 333)).toEqual(sound);
  });
});

describe('the high-pass', () => {
  const loss = (hertz: number): number => {
    const sound = highPass(300, 16_000)(tone(hertz, 0.5, 16_000));
    return 20 * Math.log10(power(sound.slice(3000)) / power(tone(hertz, 0.5, 16_000)));
  };
  it('lets a voice through, is 3 dB down at its corner, and falls 24 dB an octave under it', () => {
    expect(loss(1000)).toBeGreaterThan(-0.1);
    expect(loss(300)).toBeCloseTo(-3.01, 1);
    expect(loss(75)).toBeLessThan(-45);
  });

  it('does not show where blocks end', () => {
    const sound = tone(200, 0.1, 16_000);
    const run = highPass(300, 16_000);
    const parts = [...run(sound.subarray(0, 700)), ...run(sound.subarray(700))];
    expect(Float32Array.from(parts)).toEqual(highPass(300, 16_000)(sound));
  });
});
