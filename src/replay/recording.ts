// A recording as talk: each utterance at the time it was said after the start of the run's clock.

import { stat } from 'node:fs/promises';
import type { Default, Talk } from '../record/talk/index.ts';
import { hearFile } from '../speech/file/index.ts';
import { hearingOf } from '../speech/index.ts';
import { hearingSetup } from './hearing-setup.ts';

export interface Recording {
  readonly talk: Talk;
  /** what was missing at the recording's end, as a clause after its name; null where it was whole */
  readonly cut: string | null;
}

// A person who waits sees how far it has come; what is written to a file or another program is not disturbed.
const { stderr } = process;

function showProgress(seconds: number): void {
  const whole = Math.floor(seconds);
  if (stderr.isTTY)
    stderr.write(`\rheard ${Math.floor(whole / 60)} min ${String(whole % 60).padStart(2, '0')} s`);
}

function clearProgress(): void {
  if (stderr.isTTY) stderr.write('\r\u001b[K');
}

/** Hears a WAV file; a string says why it cannot be heard, as a clause after its name. Throws what reading a file throws. */
export async function readRecording(path: string, { startedAt, zone }: Default): Promise<Recording | string> {
  if ((await stat(path)).isDirectory()) return 'is a folder, not a file';
  const heard = await hearFile(path, { ...hearingSetup(), come: showProgress });
  clearProgress();
  if (heard.kind === 'unheard') return heard.why;
  const utterances = heard.utterances.map(({ text, start, ...how }) => ({
    text,
    ...hearingOf(how),
    heardAt: startedAt + Math.round(start * 1000),
    zone,
  }));
  const { end } = heard;
  return {
    talk: { kind: 'talk', startedAt, zone, utterances },
    cut: end.kind === 'cut' ? end.why : null,
  };
}
