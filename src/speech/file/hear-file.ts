// Hears a recording in a thread of its own, with no network, so that the caller stays free meanwhile.

import { Worker } from 'node:worker_threads';
import type { FromThread, ThreadTask } from './hear-in-thread.ts';
import type { HeardFile, Unheard } from './hear-sound.ts';

/** What is listened for, as `textOf` gives it, and `thread`, the address of thread.mjs: a bundled program does not know where it lies. */
export interface HearingSetup {
  readonly worked: string;
  readonly thread: URL;
  /** told now and then how many seconds of sound were heard */
  readonly come?: (seconds: number) => void;
}

/**
 * The utterances of a WAV recording: any rate, mono or stereo. The file must be there and readable; a fault of the
 * program in the thread, or a package that is not installed, rejects.
 */
export function hearFile(path: string, { worked, thread, come }: HearingSetup): Promise<HeardFile | Unheard> {
  return new Promise((resolve, reject) => {
    const task: ThreadTask = { path, worked };
    // The program's own loaders are not handed on: the thread brings what it needs.
    const worker = new Worker(thread, { workerData: task, execArgv: [] });
    worker.on('message', (news: FromThread) => {
      if (news.kind === 'come') come?.(news.seconds);
      else resolve(news);
    });
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`The hearing thread ended with ${code}.`)));
  });
}
