// Five seconds that tell how well it can hear here: offered, counted down with what to do, and the result in plain words.

import { ageWords, calibrationWords, stillGood } from '../../speech/index.ts';
import { useTools } from '../frame/tools.ts';

const DO = {
  still: 'Be quiet for two seconds: the place is measured',
  speak: 'Now speak as you will speak, until it is done',
} as const;

export function Calibrate() {
  const { desk, ear } = useTools();
  const now = ear.calibration.value;
  // The page's clock moves in steps, and may be a little behind what was measured just now.
  const time = now.state === 'known' ? Math.max(desk.wall.value, now.calibrated.at) : 0;
  const known = now.state === 'known' ? stillGood(now.calibrated, time) : null;
  const isGoing = now.state === 'still' || now.state === 'speak';
  return (
    <section class="part" aria-labelledby="calibrate-title">
      <h3 id="calibrate-title">How well it can hear here</h3>
      <p role="status">
        {known !== null && calibrationWords(known)}
        {isGoing && DO[now.state]}
      </p>
      {/* Its age goes on by itself, and is no news to whoever only listens. */}
      {known !== null && <p>{ageWords(known, time)}</p>}
      {isGoing && (
        <p aria-hidden="true">
          <b>{now.left}</b> …
        </p>
      )}
      <button type="button" class="button wide" disabled={isGoing} onClick={() => void ear.calibrate()}>
        {known !== null ? 'Measure again' : 'Measure the noise and your voice'} (5 seconds)
      </button>
      <p class="small-print">
        Needed only where you want to know; it hears without it, and goes on hearing meanwhile. What is said
        of noise while you work is then measured against it. It is kept on this device, and forgotten with
        another microphone and after half a day.
      </p>
    </section>
  );
}
