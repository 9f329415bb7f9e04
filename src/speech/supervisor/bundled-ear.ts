// The bundled recogniser as an ear of the page: a worker that hears, a microphone that leads to it, and whoever keeps both
// alive.

import { type MicrophoneParts, openMicrophone, type SoundLevel } from '../microphone/index.ts';
import type { ModelPart } from '../model/index.ts';
import type { FromEar, Heard, ToEar } from '../worker/messages.ts';
import { type KeeperParts, keepHearing, type SourceNews } from './keep-hearing.ts';
import type { EarNow, Gap } from './now.ts';

export interface BundledEarParts {
  readonly makeWorker: () => Worker;
  readonly model: readonly ModelPart[];
  /** what is listened for, as it was worked out where the page was built */
  readonly worked: string;
  readonly microphone: MicrophoneParts;
  /** wall clock, epoch ms */
  readonly clock: () => number;
}

export interface BundledEarNews {
  now(state: EarNow): void;
  heard(heard: Heard): void;
  gap(gap: Gap): void;
  level(level: SoundLevel): void;
  /** this microphone was opened; its name, or nothing where the browser tells none */
  microphone(name: string): void;
  /** somebody is speaking; `behind`: ms of sound that are still to be heard; `words`: what is being said, so far */
  comeTo(speech: boolean, behind: number, words: readonly string[]): void;
  /** the model must be fetched first */
  noModel(): void;
}

export interface BundledEar {
  start(): void;
  /** what is being said is still heard; resolves when it has been */
  stop(): Promise<void>;
  /** what is recorded from `from` to `to` (epoch ms; null until it is known) is not heard */
  deaf(from: number, to: number | null): void;
  hidden(isHidden: boolean): void;
  /** to be called about twice a second, and when something may have changed */
  check(): void;
}

/** Sound may wait for the recogniser as long as this, ms, before it is taken for hung and started anew. */
const HUNG = 60_000;
/** Nobody waits longer than this, ms, for the last words after listening was stopped. */
const LAST_WORDS = 15_000;
/** After so many failures of the recogniser in a row it is given up. */
const FAILURES = 3;

export function createBundledEar(parts: BundledEarParts, told: BundledEarNews): BundledEar {
  let worker: Worker | null = null;
  let news: SourceNews | null = null;
  let failures = 0;
  let whenStopped: (() => void)[] = [];
  let [recorded, heardTo] = [0, 0];
  let openDeaf: Extract<ToEar, { kind: 'deaf' }> | null = null;

  const post = (message: ToEar, transfer: Transferable[] = []): void =>
    worker?.postMessage(message, transfer);

  const allStopped = (): void => {
    const waiting = whenStopped;
    whenStopped = [];
    for (const resolve of waiting) resolve();
  };

  const fail = (): void => {
    allStopped();
    worker?.terminate();
    worker = null;
    failures += 1;
    if (failures >= FAILURES) giveUp('The recogniser failed again and again. Reload the page, or type.');
    else news?.lost('the recogniser failed and is started anew');
  };

  const giveUp = (why: string): void => {
    keeper.stop();
    told.now({ state: 'stopped', why });
  };

  const onNews = (made: Worker, data: FromEar): void => {
    if (made !== worker) return;
    switch (data.kind) {
      case 'heard':
        failures = 0;
        told.heard(data);
        break;
      case 'come-to':
        heardTo = data.at;
        told.comeTo(data.speech, Math.max(0, recorded - data.at), data.words);
        break;
      case 'stopped':
        allStopped();
        break;
      case 'no-model':
        keeper.stop();
        told.noModel();
        break;
      case 'fault':
        giveUp(data.why);
        break;
    }
  };

  const start = (): void => {
    if (worker !== null) return;
    const made = parts.makeWorker();
    worker = made;
    made.onmessage = ({ data }: MessageEvent<FromEar>) => onNews(made, data);
    made.onerror = () => made === worker && fail();
    post({ kind: 'open', parts: parts.model, worked: parts.worked });
    if (openDeaf !== null) post(openDeaf);
  };

  const open: KeeperParts['open'] = async (given) => {
    start();
    news = given;
    heardTo = parts.clock();
    const opened = await openMicrophone(parts.microphone, {
      lost: () => given.lost('the microphone was unplugged or taken away'),
      muted: given.muted,
      paused: given.paused,
      level: (level) => {
        recorded = level.to;
        keeper.sound(level);
        told.level(level);
      },
    });
    if (opened.kind === 'refused') return opened;
    told.microphone(opened.name);
    post({ kind: 'listen', port: opened.port, rate: opened.rate }, [opened.port]);
    const close = (): void => {
      opened.close();
      post({ kind: 'stop' });
    };
    return { kind: 'open', wake: opened.wake, close };
  };

  const keeper = keepHearing({ open, clock: parts.clock, now: told.now, gap: told.gap });

  return {
    start: () => {
      failures = 0;
      keeper.start();
    },
    stop: () =>
      new Promise((resolve) => {
        whenStopped.push(resolve);
        if (keeper.isOpen()) setTimeout(allStopped, LAST_WORDS);
        else allStopped();
        keeper.stop();
      }),
    deaf: (from, to) => {
      const message = { kind: 'deaf', from, to } as const;
      // A worker that is started later must know of a stretch that is still open.
      openDeaf = to === null ? message : null;
      post(message);
    },
    hidden: keeper.hidden,
    check: () => {
      if (worker !== null && recorded - heardTo > HUNG) fail();
      keeper.check();
    },
  };
}
