// Dictation by the browser: not there, off, listening, or stopped and why; it is turned on by a person who was told.

import { useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';

const VENDOR =
  'The browser may send the sound to its maker to be recognised: a patient’s words would leave this device. Nothing is heard until you turn it on.';
const LOCAL = 'The browser recognises on this device; it says that no sound leaves it.';

export function Dictation() {
  const { dictation } = useTools();
  const [asked, setAsked] = useState(false);
  const now = dictation.now.value;
  switch (now.state) {
    case 'none':
      return null;
    case 'starting':
    case 'hearing':
    case 'deaf':
      return <Listening />;
    default:
      return (
        <div class="dictation">
          <button
            type="button"
            class="button wide"
            aria-expanded={asked}
            onClick={() => {
              setAsked(!asked);
              void dictation.look();
            }}
          >
            The browser’s own dictation: off
          </button>
          {now.state === 'stopped' && (
            <p role="alert">
              <b>Dictation stopped.</b> {now.why}
            </p>
          )}
          {asked && <Consent taken={() => setAsked(false)} />}
        </div>
      );
  }
}

function Consent({ taken }: { readonly taken: () => void }) {
  const { dictation } = useTools();
  const local = dictation.local.value;
  return (
    <div class="consent">
      <p>{local === 'available' ? LOCAL : VENDOR}</p>
      {local === 'downloadable' && (
        <button type="button" class="button wide" onClick={() => void dictation.install()}>
          Let the browser fetch what it needs to do it on this device
        </button>
      )}
      <button
        type="button"
        class="button primary wide"
        onClick={() => {
          taken();
          void dictation.turnOn();
        }}
      >
        Turn dictation on
      </button>
    </div>
  );
}

function Listening() {
  const { dictation } = useTools();
  const now = dictation.now.value;
  const where =
    dictation.local.value === 'available'
      ? 'The sound stays on this device.'
      : 'The sound goes to the browser’s maker.';
  return (
    <div class={`dictation listening ${now.state === 'deaf' ? 'deaf' : ''}`}>
      <button type="button" class="button primary" onClick={dictation.turnOff}>
        Stop listening
      </button>
      {now.state === 'deaf' ? (
        <p role="alert">
          <b>NOT HEARING:</b> {now.why}. It is tried again by itself; type meanwhile.
        </p>
      ) : (
        <p role="status">
          <b>{now.state === 'starting' ? 'Starting.' : 'Listening.'}</b> {where}
        </p>
      )}
      {dictation.hearing.value !== '' && <p class="hearing">{dictation.hearing.value} …</p>}
    </div>
  );
}
