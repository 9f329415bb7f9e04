// What runs in the thread: hears the recording that it was started with, and posts what came of it.

import { createReadStream } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import { type HeardFile, hearSound, type Unheard } from './hear-sound.ts';
import { loadModule } from './load-module.ts';

export interface ThreadTask {
  readonly path: string;
  /** what is listened for, as `textOf` gives it */
  readonly worked: string;
}

/** How far it has come, in seconds of sound, and at last what was heard. */
export type FromThread = { readonly kind: 'come'; readonly seconds: number } | HeardFile | Unheard;

const { path, worked } = workerData as ThreadTask;
const tell = (news: FromThread): void => parentPort?.postMessage(news);
tell(
  await hearSound(createReadStream(path), worked, loadModule, (seconds) => tell({ kind: 'come', seconds })),
);
