// Listening: what is needed first, off, getting ready, listening, or not hearing and why; a person starts and stops it.

import { useTools } from '../frame/tools.ts';
import { Dictation } from './Dictation.tsx';
import { Meter } from './Meter.tsx';
import { Prepare } from './Prepare.tsx';
import { RecordingProgress } from './RecordingProgress.tsx';

export function Listen() {
  const { ear, dictation } = useTools();
  const now = ear.now.value;
  const isDictating = !['none', 'off', 'stopped'].includes(dictation.now.value.state);
  if (now.state === 'off' || now.state === 'stopped')
    return (
      <div class="listen">
        {ear.model.value.state === 'stored' && !isDictating && (
          <button type="button" class="button primary wide" onClick={() => void ear.start()}>
            Listen
          </button>
        )}
        <Prepare />
        <RecordingProgress />
        <Dictation />
        {now.state === 'stopped' && (
          <p role="alert">
            <b>Listening stopped.</b> {now.why}
          </p>
        )}
      </div>
    );
  return (
    <div class={`listen listening ${now.state === 'deaf' ? 'deaf' : ''}`}>
      <button type="button" class="button primary" onClick={() => void ear.stop()}>
        Stop listening
      </button>
      <Standing />
      {now.state === 'hearing' && <Meter />}
    </div>
  );
}

function Standing() {
  const { ear, speaker } = useTools();
  const now = ear.now.value;
  const { speech, behind } = ear.progress.value;
  if (now.state === 'deaf')
    return (
      <p role="alert">
        <b>NOT HEARING:</b> {now.why}. It is tried again by itself; what is said now must be typed or said
        again.
      </p>
    );
  if (now.state === 'starting') return <p role="status">Getting ready; what you say already counts.</p>;
  if (speaker.speaking.value) return <p role="status">The page speaks; it does not listen meanwhile.</p>;
  const doing = speech ? 'Somebody is speaking …' : behind > LATE ? 'Working out what was said …' : '';
  return (
    <p role="status">
      <b>Listening.</b> The sound stays on this device. <span aria-hidden="true">{doing}</span>
    </p>
  );
}

/** The ear is always a little behind; from here on, ms, it is worth saying. */
const LATE = 700;
