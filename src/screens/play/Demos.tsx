// Choosing an invented examination and how fast it is played.

import { useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { DEMOS } from './demos.ts';
import { playDemo } from './open-talk.ts';
import { PACE_NAMES, PACES, type Pace } from './pace.ts';

export function Demos({ chosen }: { readonly chosen?: () => void }) {
  const { desk, player } = useTools();
  const [pace, setPace] = useState<Pace>(60);
  const ready = desk.reader.value !== null;
  return (
    <section class="demos" aria-labelledby="demos-title">
      <h3 id="demos-title">See it work: invented examinations</h3>
      <fieldset class="paces">
        <legend>How fast</legend>
        <div class="choices even">
          {PACES.map((one) => (
            <button
              key={one}
              type="button"
              class="button"
              aria-pressed={one === pace}
              onClick={() => setPace(one)}
            >
              {PACE_NAMES[one]}
            </button>
          ))}
        </div>
      </fieldset>
      <ul class="plain-list spaced">
        {DEMOS.map((demo) => (
          <li key={demo.id} class="demo">
            <p>
              <b>{demo.title}.</b> {demo.about}
            </p>
            <button
              type="button"
              class="button primary wide"
              disabled={!ready}
              onClick={() => {
                chosen?.();
                void playDemo(desk, player, demo, pace);
              }}
            >
              Play “{demo.title}”
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
