// Dictation by the browser: not there, or off until a person who was told where the sound may go turns it on.

import { useEffect } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';

const VENDOR =
  'The browser may send the sound to its maker to be recognised: a patient’s words would leave this device. Nothing is heard until you turn it on.';
const LOCAL = 'The browser recognises on this device; it says that no sound leaves it.';

/** `taken` is called when it was turned on. */
export function Dictation({ taken }: { readonly taken: () => void }) {
  const { dictation } = useTools();
  const { state } = dictation.now.value;
  useEffect(() => {
    if (state !== 'none') void dictation.look();
  }, []);
  if (state === 'none') return null;
  const local = dictation.local.value;
  return (
    <section class="part" aria-labelledby="dictation-title">
      <h3 id="dictation-title">The browser’s own dictation</h3>
      <p class="consent">{local === 'available' ? LOCAL : VENDOR}</p>
      <div class="stacked">
        {local === 'downloadable' && (
          <button type="button" class="button wide" onClick={() => void dictation.install()}>
            Let the browser fetch what it needs to do it on this device
          </button>
        )}
        <button
          type="button"
          class="button wide"
          onClick={() => {
            taken();
            void dictation.turnOn();
          }}
        >
          Turn dictation on
        </button>
      </div>
    </section>
  );
}
