// Setting up what hears: the recogniser that stays on this device, and the browser's own dictation beside it.

import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { canMeasure } from './any-ear.ts';
import { Calibrate } from './Calibrate.tsx';
import { Dictation } from './Dictation.tsx';
import { Prepare } from './Prepare.tsx';

export function HearingSheet({ close }: { readonly close: () => void }) {
  const { ear, dictation } = useTools();
  const isOn = !['off', 'stopped'].includes(ear.now.value.state);
  const isStored = ear.model.value.state === 'stored';
  return (
    <Sheet title="Hearing" close={close}>
      <section class="spaced" aria-labelledby="recogniser-title">
        <h3 id="recogniser-title">The recogniser on this device</h3>
        <Prepare />
        {isStored && (
          <>
            <p>It is stored: this device hears without a network, and no sound leaves it.</p>
            {isOn ? (
              <p>It is listening.</p>
            ) : (
              <button
                type="button"
                class="button primary wide"
                onClick={() => {
                  close();
                  void ear.start();
                }}
              >
                Start listening
              </button>
            )}
          </>
        )}
        <p class="small-print">
          It mishears at times: each entry is checked on the screen. The microphone is asked for when
          listening starts.
        </p>
      </section>
      {canMeasure({ ear, dictation }) && <Calibrate />}
      <Dictation taken={close} />
    </Sheet>
  );
}
