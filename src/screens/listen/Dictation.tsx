// Dictation by the browser: not there, off, listening, or stopped and why; it is turned on by a person who was told.

import { useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';

const VENDOR =
  'Your browser may send the sound to its maker to be recognised, unless it can do so on this device. Nothing is heard until you turn it on.';

export function Dictation() {
  const { dictation: ear } = useTools();
  const [asked, setAsked] = useState(false);
  const now = ear.now.value;
  if (now.state === 'listening')
    return (
      <div class="dictation listening">
        <button type="button" class="button primary" onClick={ear.turnOff}>
          Stop listening
        </button>
        <p role="status">
          <b>Listening.</b>{' '}
          {now.onDevice ? 'The sound stays on this device.' : 'The sound may go to the browser’s maker.'}
        </p>
        {ear.hearing.value !== '' && <p class="hearing">{ear.hearing.value} …</p>}
      </div>
    );
  return (
    <div class="dictation">
      <div class="choices even">
        {now.state === 'none' ? (
          <p class="small-print">This browser has no dictation: type or paste.</p>
        ) : (
          <button type="button" class="button" aria-expanded={asked} onClick={() => setAsked(!asked)}>
            Dictation: off
          </button>
        )}
      </div>
      {now.state === 'stopped' && (
        <p role="alert">
          <b>Dictation stopped.</b> {now.why}
        </p>
      )}
      {asked && (
        <div class="consent">
          <p>{VENDOR}</p>
          <button
            type="button"
            class="button primary wide"
            onClick={() => {
              setAsked(false);
              void ear.turnOn();
            }}
          >
            Turn dictation on
          </button>
        </div>
      )}
    </div>
  );
}
