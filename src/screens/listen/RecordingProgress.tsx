// How far the hearing of a recording has come, and an end to it.

import { useTools } from '../frame/tools.ts';

const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');

export function RecordingProgress() {
  const { ear } = useTools();
  const now = ear.recording.value;
  if (now === null) return null;
  const { name, seconds, share } = now;
  return (
    <div class="fetching">
      <label for="recording">
        Hearing {name}: {two(seconds / 60)}:{two(seconds % 60)} heard, {Math.round(share * 100)} %
      </label>
      <progress id="recording" max={1} value={share} />
      <button type="button" class="button" onClick={ear.enough}>
        Stop; keep what was heard
      </button>
    </div>
  );
}
