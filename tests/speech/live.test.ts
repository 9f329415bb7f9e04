// Sound with wall-clock times is heard with true times, over holes and deafness. The recogniser is a fake that "hears" loud
// blocks.

import { describe, expect, it } from 'vitest';
import type { Hearing } from '../../src/speech/index.ts';
import { createDeafness } from '../../src/speech/worker/deaf.ts';
import { hearLive } from '../../src/speech/worker/live.ts';
import type { Heard } from '../../src/speech/worker/messages.ts';

const RATE = 1000;
const START = 5_000_000;

/** Each loud block is an utterance of its own, that ends with the block; what is held back comes at the flush. */
function fakeHearing(): { hearing: Hearing; streams: () => number } {
  let streams = 0;
  const hearing: Hearing = {
    kind: 'hearing',
    begin: () => {
      streams += 1;
      let seconds = 0;
      const heard = (start: number, end: number) => ({
        utterance: {
          text: 'left arm',
          understood: true,
          start,
          end,
          engine: 'bundled' as const,
          alternatives: [],
          confidence: 1,
          words: [],
          doubt: [],
        },
        sound: new Float32Array(1),
      });
      return {
        push: (samples) => {
          const start = seconds;
          seconds += samples.length / RATE;
          return samples.some((sample) => sample !== 0) ? [heard(start, seconds)] : [];
        },
        flush: () => [],
        isSpeech: () => false,
        soFar: () => [],
      };
    },
    close: () => undefined,
  };
  return { hearing, streams: () => streams };
}

function arranged() {
  const { hearing, streams } = fakeHearing();
  const deafness = createDeafness();
  const heard: Heard[] = [];
  const live = hearLive(hearing, RATE, deafness, (news) => {
    if (news.kind === 'heard') heard.push(news);
  });
  /** a block of 100 ms that began `ms` after the start */
  const block = (ms: number, value: number) =>
    live.block({ samples: new Float32Array(100).fill(value), at: START + ms + 100 });
  return {
    heard,
    block,
    streams,
    deafness,
    times: () => heard.map(({ from, to }) => [from - START, to - START]),
  };
}

describe('live sound', () => {
  it('has the times of the wall clock', () => {
    const { block, times } = arranged();
    for (const ms of [0, 100, 200]) block(ms, ms === 100 ? 0.5 : 0);
    expect(times().flat().map(Math.round)).toEqual([100, 200]);
  });

  it('keeps them true over a hole', () => {
    const { block, times, streams } = arranged();
    block(0, 0);
    block(60_000, 0.5);
    expect(times().flat().map(Math.round)).toEqual([60_000, 60_100]);
    expect(streams()).toBe(2);
  });

  it('is one stream over the little irregularities of a sound card', () => {
    const { block, streams } = arranged();
    for (const ms of [0, 130, 190, 310, 400]) block(ms, 0);
    expect(streams()).toBe(1);
  });

  it('goes on where the clock was set back', () => {
    const { block, heard } = arranged();
    block(0, 0);
    block(-3_600_000, 0.5);
    expect(heard).toHaveLength(1);
  });

  it('is not heard while the ear is deaf, however late it comes', () => {
    const { block, times, deafness } = arranged();
    deafness.mark(START + 100, null);
    block(0, 0.5);
    block(150, 0.5);
    deafness.mark(START + 100, START + 300);
    block(250, 0.5);
    block(300, 0.5);
    expect(times().flat().map(Math.round)).toEqual([0, 100, 300, 400]);
  });
});
