// The worker that hears: it loads the recogniser once, then hears a microphone or a recording, and tells the page.

import type { Hearing } from '../hearing/hearing.ts';
import { openHearing } from '../hearing/hearing.ts';
import { workedOutOf } from '../hearing/worked-out-text.ts';
import type { SoundBlock } from '../microphone/tap.ts';
import { createDeafness } from './deaf.ts';
import { hearBlob } from './hear-file.ts';
import { hearLive, type LiveHearing } from './live.ts';
import { loadRecogniser } from './load.ts';
import type { FromEar, ToEar } from './messages.ts';

/** Blocks that were on their way when listening was stopped arrive within this, ms. */
const ON_THE_WAY = 150;

const deafness = createDeafness();
let hearing: Hearing | null = null;
let live: LiveHearing | null = null;
let port: MessagePort | null = null;
/** a microphone that was opened before the recogniser was loaded; its sound waits in the port */
let early: Extract<ToEar, { kind: 'listen' }> | null = null;
/** and was closed again before; what was said until then is heard all the same */
let isEarlyOver = false;

const tell = (news: FromEar): void => {
  self.postMessage(
    news,
    news.kind === 'heard' || news.kind === 'of-file' ? { transfer: [news.sound.buffer] } : {},
  );
};

async function open({ parts, worked }: Extract<ToEar, { kind: 'open' }>): Promise<void> {
  const loaded = await loadRecogniser(parts);
  if (loaded.kind === 'no-model') return tell({ kind: 'no-model' });
  const { module, models } = loaded;
  const opened = openHearing({ module, models, worked: workedOutOf(worked) });
  hearing = opened;
  tell({ kind: 'ready' });
  if (early === null) return;
  listen(opened, early);
  early = null;
  if (isEarlyOver) stop();
}

function listen(ready: Hearing, { port: from, rate }: Extract<ToEar, { kind: 'listen' }>): void {
  hush();
  const mine = hearLive(ready, rate, deafness, tell);
  [live, port] = [mine, from];
  from.onmessage = ({ data }: MessageEvent<SoundBlock>) => mine.block(data);
}

function hush(): void {
  if (port !== null) port.onmessage = null;
  port?.close();
  live?.end();
  [live, port] = [null, null];
}

function stop(): void {
  const ended = live;
  setTimeout(() => {
    // Another microphone may have been opened meanwhile, which ended this one.
    if (live === ended) hush();
    tell({ kind: 'stopped' });
  }, ON_THE_WAY);
}

self.onmessage = ({ data }: MessageEvent<ToEar>) => {
  switch (data.kind) {
    case 'open':
      open(data).catch((error: unknown) => tell({ kind: 'fault', why: whyOf(error) }));
      break;
    case 'listen':
      if (hearing === null) [early, isEarlyOver] = [data, false];
      else listen(hearing, data);
      break;
    case 'deaf':
      deafness.mark(data.from, data.to);
      break;
    case 'stop':
      if (hearing === null) isEarlyOver = true;
      else stop();
      break;
    case 'file':
      if (hearing !== null) hearFile(hearing, data.file);
      break;
  }
};

function hearFile(ready: Hearing, file: Blob): void {
  void hearBlob(ready, file, {
    heard: (utterance, sound) => tell({ kind: 'of-file', utterance, sound }),
    progress: (seconds, share) => tell({ kind: 'progress', seconds, share }),
  })
    .catch(() => ({ kind: 'unheard', why: 'could not be read to its end' }) as const)
    .then((end) => tell({ kind: 'file-end', end }));
}

const whyOf = (error: unknown): string =>
  `The recogniser could not be started: ${error instanceof Error ? error.message : 'no reason was given'}`;
