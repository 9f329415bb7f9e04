// Sound is heard while it comes: in pauses it is decided whether what was said is whole. The detector of speech and the sounds
// are fakes; the words are invented.

import { describe, expect, it } from 'vitest';
import { withFloor } from '../../src/speech/hearing/floor.ts';
import { PAUSES, type Piece, segmenter } from '../../src/speech/hearing/segments.ts';
import { isWhole } from '../../src/speech/hearing/whole.ts';
import { fakeDetector } from './fake-detector.ts';

const RATE = 16_000;
const sound = (seconds: number, value: number) => new Float32Array(Math.round(seconds * RATE)).fill(value);

/** Each piece with the time of the stream when it came, in blocks of a twentieth of a second. */
function hear(isWholeNow: boolean, ...stretches: readonly (readonly [seconds: number, value: number])[]) {
  const segments = segmenter(fakeDetector(), () => isWholeNow);
  const came: { readonly piece: Piece; readonly at: number }[] = [];
  let time = 0;
  for (const [seconds, value] of stretches)
    for (let left = seconds; left > 1e-6; left -= 0.05) {
      time += 0.05;
      for (const piece of segments.push(sound(0.05, value))) came.push({ piece, at: time });
    }
  return came;
}

const ends = (came: ReturnType<typeof hear>) => came.filter(({ piece }) => piece.kind === 'ended');

describe('a stretch of speech', () => {
  it('is handed on while it is spoken, so that little is left to do at its end', () => {
    const came = hear(false, [1, 0], [2, 0.5], [2, 0]);
    const early = came.filter(({ piece, at }) => piece.kind === 'sound' && at < 3);
    const handed = early.reduce(
      (sum, { piece }) => sum + (piece.kind === 'sound' ? piece.sound.length : 0),
      0,
    );
    expect(handed / RATE).toBeGreaterThan(1.9);
    expect(ends(came)).toMatchObject([{ piece: { isAll: true } }]);
  });

  it('ends soon where what was said is whole, and late where it may go on', () => {
    // Speech ends at 2; the detector tells of it 0.3 s later.
    const [soon] = ends(hear(true, [1, 0], [1, 0.5], [2, 0]));
    const [late] = ends(hear(false, [1, 0], [1, 0.5], [2, 0]));
    expect(soon?.at).toBeCloseTo(2 + 0.3, 1);
    expect(late?.at).toBeCloseTo(2 + PAUSES.long, 1);
  });

  it('is waited for longer in noise, in which the detector may not have noticed yet that somebody speaks again', () => {
    const [soon] = ends(hear(true, [1, 0.05], [1, 0.5], [2, 0.05]));
    const [late] = ends(hear(false, [1, 0.05], [1, 0.5], [2, 0.05]));
    expect(soon?.at).toBeCloseTo(2 + PAUSES.short + 0.3, 1);
    expect(late?.at).toBeCloseTo(2 + PAUSES.long + 0.3, 1);
  });

  it('goes on over a short pause where it may go on', () => {
    expect(ends(hear(false, [1, 0], [1, 0.5], [0.7, 0], [1, 0.5], [2, 0]))).toHaveLength(1);
    expect(ends(hear(true, [1, 0], [1, 0.5], [0.7, 0], [1, 0.5], [2, 0]))).toHaveLength(2);
  });

  it('that never ends is cut, and heard anew where it was cut', () => {
    const cut = ends(hear(false, [1, 0], [45, 0.5], [2, 0]));
    expect(cut).toMatchObject([{ piece: { isAll: false } }, { piece: { isAll: true } }]);
  });
});

describe('what was said up to a pause', () => {
  it.each([
    'left forearm is swollen',
    'tenderness over the right clavicle',
    'mark that',
    'skin is warm and dry',
    'no deformity of the left ankle', // the place ends the list
    'pulse is ninety two',
    'resps sixteen',
    'blood pressure one thirty over eighty four',
    'temp is thirty six point five',
  ])('is whole: %s', (said) => expect(isWhole(said.split(' '))).toBe(true));

  it.each([
    'no deformity', // … swelling or tenderness
    'pulse one hundred', // … and twelve
    'pulse is ninety', // … two
    'blood pressure one forty two', // … over eighty
    'temp is thirty six', // … point five
    'temp is thirty six point',
    'pressure one twenty over eighty', // … four
    'no swelling of the',
    'blood pressure one twenty over',
    'tenderness over the left',
    'swelling and',
    'pain', // … seven out of ten
    'not swollen',
    '… left knee swollen',
    '',
  ])('may go on: %s', (said) => expect(isWhole(said.split(' ').filter((word) => word !== ''))).toBe(false));
});

describe('the noise under every sound', () => {
  it('takes the place of perfect stillness, and is the same on every run', () => {
    const [one, other] = [withFloor()(sound(1, 0)), withFloor()(sound(1, 0))];
    const power = one.reduce((sum, value) => sum + value * value, 0) / one.length;
    expect(10 * Math.log10(power)).toBeCloseTo(-80, 0);
    expect(one).toEqual(other);
  });
});
