// Promises the ear that is fetched when it is first needed: model, worker and microphone, watched over while it is wanted.

import { workedOut } from 'virtual:hearing-words';
import { adviceOf, decibels, recent } from '../../../speech/index.ts';
import type { SoundLevel } from '../../../speech/microphone/index.ts';
import {
  type BundledEar,
  createBundledEar,
  makeEarWorker,
  tapAddress,
} from '../../../speech/supervisor/index.ts';
import type { EarParts, Engine } from '../ear.ts';
import { calibrating } from './calibrate.ts';
import { modelParts } from './model.ts';
import { opening } from './opening.ts';
import { preparing } from './prepare.ts';

/** Advice rests on speech that is no older than this, ms. */
const SPOKE = 3000;
/** How often the ear is looked after, ms. */
const CHECK = 500;

/** The engine of this browser. */
export function createEngine(parts: EarParts): Engine {
  const { now, loudness, progress, calibration } = parts;
  const measuring = calibrating(calibration, () => Date.now(), parts.storage);
  let levels: readonly SoundLevel[] = [];
  let spokeAt = 0;
  const stored = preparing(parts);
  let ear: BundledEar | null = null;
  let timer: ReturnType<typeof setInterval> | null = null;

  const rest = (): void => {
    if (timer !== null) clearInterval(timer);
    timer = null;
    levels = [];
    measuring.giveUp();
    loudness.value = { decibels: -100, advice: 'fine' };
    progress.value = { speech: false, behind: 0, words: '' };
  };

  const make = (): BundledEar => {
    const made = createBundledEar(
      {
        makeWorker: makeEarWorker,
        model: modelParts(),
        worked: workedOut,
        microphone: {
          devices: navigator.mediaDevices,
          makeContext: () => new AudioContext(),
          tap: tapAddress,
        },
        clock: () => Date.now(),
      },
      {
        heard: parts.heard,
        gap: parts.gap,
        now: (state) => {
          now.value = state;
          if (state.state === 'off' || state.state === 'stopped') rest();
        },
        level: (one) => {
          levels = recent(levels, one);
          measuring.level(one);
          const advice = adviceOf(levels, one.to - spokeAt < SPOKE, measuring.known());
          loudness.value = { decibels: decibels(one.rms), advice };
        },
        comeTo: (speech, behind, words) => {
          if (speech) spokeAt = Date.now();
          progress.value = { speech, behind, words: words.join(' ') };
        },
        microphone: measuring.microphone,
        noModel: () => void stored.look(),
      },
    );
    document.addEventListener('visibilitychange', () => made.hidden(document.hidden));
    navigator.mediaDevices?.addEventListener('devicechange', made.check);
    return made;
  };

  const start = (): void => {
    ear ??= make();
    timer ??= setInterval(ear.check, CHECK);
    ear.start();
  };

  return {
    ...stored,
    ...opening(parts),
    start: async () => start(),
    calibrate: async () => {
      start();
      measuring.begin();
    },
    stop: async () => ear?.stop(),
    deaf: (from, to) => {
      ear ??= make();
      ear.deaf(from, to);
    },
  };
}
