// Five seconds that tell how well it can hear here: offered, counted down with what to do, and the result in plain words.

import { calibrationWords } from '../../speech/index.ts';
import { useTools } from '../frame/tools.ts';

const DO = {
  still: 'Be quiet for two seconds: the place is measured',
  speak: 'Now speak as you will speak, until it is done',
} as const;

export function Calibrate() {
  const { ear } = useTools();
  const now = ear.calibration.value;
  const isGoing = now.state === 'still' || now.state === 'speak';
  return (
    <section class="part" aria-labelledby="calibrate-title">
      <h3 id="calibrate-title">How well it can hear here</h3>
      <p role="status">
        {now.state === 'known' && calibrationWords(now.calibrated)}
        {isGoing && DO[now.state]}
      </p>
      {isGoing && (
        <p aria-hidden="true">
          <b>{now.left}</b> …
        </p>
      )}
      <button type="button" class="button wide" disabled={isGoing} onClick={() => void ear.calibrate()}>
        {now.state === 'known' ? 'Measure again' : 'Measure the noise and your voice'} (5 seconds)
      </button>
      <p class="small-print">
        Needed only where you want to know; it hears without it, and goes on hearing meanwhile. What is said
        of noise while you work is then measured against it. It is forgotten with another microphone, and
        after half a day.
      </p>
    </section>
  );
}
