// How loud it is at the microphone, as a bar; what a person can do where it hears badly is told in full to whoever does not see it.

import { useTools } from '../frame/tools.ts';
import type { AdviceNow } from './ear.ts';

/** Decibels under full scale that the bar begins at. */
const FLOOR = -60;
const ADVICE: Readonly<Record<AdviceNow['advice'], string>> = {
  fine: '',
  'too-loud': 'TOO LOUD: hold the microphone further from the mouth.',
  'too-quiet': 'TOO QUIET: come nearer to the microphone.',
  'too-noisy': 'TOO NOISY: cover the microphone from the wind, or turn your back to it and come nearer.',
};

/** As it is seen, in the line that is there anyway. */
export const ADVICE_SHORT: Readonly<Record<AdviceNow['advice'], string>> = {
  fine: '',
  'too-loud': 'TOO LOUD: hold it away',
  'too-quiet': 'TOO QUIET: come nearer',
  'too-noisy': 'TOO NOISY: shield it',
};

export function Meter() {
  const { decibels, advice } = useTools().ear.loudness.value;
  const share = Math.round(Math.max(0, Math.min(1, 1 - decibels / FLOOR)) * 100);
  return (
    <>
      <meter class="loudness" min={0} max={100} value={share} aria-label="Loudness at the microphone" />
      <p role="status" class="only-heard">
        {ADVICE[advice]}
      </p>
    </>
  );
}
