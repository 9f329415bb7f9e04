// What runs in the thread: hears the recording that it was started with, and posts what came of it.

import { createReadStream } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import type { HearingFiles } from '../hearing/hearing-files.ts';
import { hearSound } from './hear-sound.ts';
import { loadModule } from './load-module.ts';

export interface ThreadTask {
  readonly path: string;
  readonly files: HearingFiles;
}

const { path, files } = workerData as ThreadTask;
parentPort?.postMessage(await hearSound(createReadStream(path), files, loadModule));
