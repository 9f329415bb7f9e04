// How loud it is at the microphone, as a bar and in words.

import { useTools } from '../frame/tools.ts';

/** Decibels under full scale that the bar begins at. */
const FLOOR = -60;

export function Meter() {
  const level = useTools().ear.level.value;
  const decibels = level === null || level.rms === 0 ? FLOOR : 20 * Math.log10(level.rms);
  const share = Math.round(Math.max(0, Math.min(1, 1 - decibels / FLOOR)) * 100);
  return <meter class="level" min={0} max={100} value={share} aria-label="Loudness at the microphone" />;
}
