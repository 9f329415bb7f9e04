// Recordings that a person opens: one at a time, with how far it has come.

import { workedOut } from 'virtual:hearing-words';
import { hearRecording, makeEarWorker, type RecordingInHand } from '../../../speech/supervisor/index.ts';
import type { EarParts, Engine } from '../ear.ts';
import { modelParts } from './model.ts';

/** Opens a recording, and ends its hearing. */
export function opening({
  recording,
  recorded,
}: Pick<EarParts, 'recording' | 'recorded'>): Pick<Engine, 'open' | 'enough'> {
  let inHand: RecordingInHand | null = null;
  return {
    open: async (file) => {
      const { name } = file;
      if (inHand !== null) {
        recorded(name, { kind: 'unheard', why: 'must wait: another recording is being heard' });
        return;
      }
      recording.value = { name, seconds: 0, share: 0 };
      const parts = { makeWorker: makeEarWorker, model: modelParts(), worked: workedOut };
      inHand = hearRecording(parts, file, (seconds, share) => {
        recording.value = { name, seconds, share };
      });
      const heard = await inHand.heard;
      inHand = null;
      recording.value = null;
      recorded(name, heard);
    },
    enough: () => inHand?.stop(),
  };
}
