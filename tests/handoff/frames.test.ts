// Frames of a transfer: any bytes come back, in any order and with any repeats; what is misread or missing is always known.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Collection,
  FRAME_BYTES,
  framesOf,
  missingParts,
  partsInWords,
  readParts,
  takeFrame,
  wholeOf,
} from '../../src/handoff/index.ts';

const bytes = fc.uint8Array({ minLength: 0, maxLength: 3000 });

const collected = (texts: readonly string[]): Collection | null =>
  texts.reduce<Collection | null>((before, text) => {
    const taken = takeFrame(before, text);
    return taken.kind === 'new' ? taken.collection : before;
  }, null);

describe('a transfer', () => {
  it('gives the same bytes back, in whatever order and however often its frames are seen', () => {
    fc.assert(
      fc.property(
        bytes,
        fc.integer({ min: 20, max: 400 }),
        fc.infiniteStream(fc.nat()),
        (given, size, order) => {
          const frames = framesOf(given, size);
          const shuffled = frames
            .flatMap((text) => [text, text])
            .map((text) => ({ text, at: order.next().value ?? 0 }))
            .sort((a, b) => a.at - b.at)
            .map(({ text }) => text);
          const whole = wholeOf(collected(shuffled) as Collection);
          expect(whole.kind === 'whole' ? [...whole.bytes] : whole).toEqual([...given]);
        },
      ),
      { seed: 20260503, numRuns: 200 },
    );
  });

  it('is written in the signs of a QR symbol’s alphanumeric mode alone', () => {
    fc.assert(
      fc.property(bytes, (given) => {
        expect(framesOf(given).every((text) => /^[0-9A-Z $%*+\-./:]+$/.test(text))).toBe(true);
      }),
      { seed: 20260503, numRuns: 50 },
    );
  });

  it('names what is missing, and is never whole without it', () => {
    const frames = framesOf(Uint8Array.from({ length: 10 * FRAME_BYTES }, (_, at) => at % 251));
    const some = collected(frames.filter((_, index) => ![2, 6, 7, 8].includes(index))) as Collection;
    expect(missingParts(some)).toEqual([3, 7, 8, 9]);
    expect(partsInWords(missingParts(some))).toBe('3, 7-9');
    expect(wholeOf(some)).toEqual({ kind: 'missing', parts: [3, 7, 8, 9] });
  });

  it('takes no frame in which one sign was misread', () => {
    const [, second = ''] = framesOf(
      Uint8Array.from({ length: 100 }, (_, at) => at),
      50,
    );
    const body = second.lastIndexOf('/') + 1;
    for (let at = body; at < second.length; at += 1) {
      const wrong = second[at] === 'A' ? 'B' : 'A';
      const read = takeFrame(null, second.slice(0, at) + wrong + second.slice(at + 1));
      // A misread stroke makes the frame longer or shorter of a field; it is not taken either.
      expect(read.kind).toBe('damaged');
    }
  });

  it('does not mix with the frames of another', () => {
    const one = framesOf(Uint8Array.of(1, 2, 3, 4), 2);
    const other = framesOf(Uint8Array.of(5, 6, 7, 8), 2);
    const begun = collected([one[0] ?? '']);
    expect(takeFrame(begun, other[1] ?? '').kind).toBe('other');
    expect(takeFrame(begun, 'https://example.org/').kind).toBe('foreign');
    expect(takeFrame(begun, 'FIELDSAY2/0/1/1/0/0').kind).toBe('damaged');
  });
});

describe('the numbers of parts', () => {
  it.each([
    ['3, 7-9', [3, 7, 8, 9]],
    ['9-7', null],
    ['12', [12]],
    ['13', null],
    ['three', null],
    ['', null],
    ['2 4,4', [2, 4]],
    ['1-9999', [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]],
  ] as const)('are read from %j', (text, parts) => {
    expect(readParts(text, 12)).toEqual(parts);
  });
});
