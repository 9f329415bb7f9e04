// Listening: not hearing and why, getting ready, or hearing what and how loud; a person starts and stops it.

import { useTools } from '../frame/tools.ts';
import { EarStrip } from './EarStrip.tsx';
import { ADVICE_SHORT, Meter } from './Meter.tsx';
import { megabytes } from './Prepare.tsx';
import { RecordingProgress } from './RecordingProgress.tsx';

export function Listen() {
  const { ear, dictation } = useTools();
  const isDictating = !['none', 'off', 'stopped'].includes(dictation.now.value.state);
  const isOff = ear.now.value.state === 'off' || ear.now.value.state === 'stopped';
  return (
    <div class="listen">
      {isDictating ? <Dictating /> : isOff ? <Off /> : <On />}
      <RecordingProgress />
    </div>
  );
}

/** The strip while nothing listens: why, and the one thing to press. */
function Off() {
  const { ear, dictation, sheet } = useTools();
  const [now, model, other] = [ear.now.value, ear.model.value, dictation.now.value];
  const setUp = (words: string) => (
    <button
      type="button"
      class="button"
      onClick={() => {
        sheet.value = 'hearing';
      }}
    >
      {words}
    </button>
  );
  const listen = (
    <button type="button" class="button primary" onClick={() => void ear.start()}>
      Listen
    </button>
  );
  const off = { sign: 'off', state: 'NOT HEARING' } as const;
  if (now.state === 'stopped')
    return <EarStrip sign="deaf" urgent state="Listening stopped." words={now.why} button={listen} />;
  if (other.state === 'stopped')
    return (
      <EarStrip sign="deaf" urgent state="Dictation stopped." words={other.why} button={setUp('Set up')} />
    );
  switch (model.state) {
    case 'stored':
      return <EarStrip {...off} words="Listening is off." button={listen} />;
    case 'unknown':
      return <EarStrip {...off} words="Looking for the recogniser …" button={setUp('Set up')} />;
    case 'missing':
      return <EarStrip {...off} words="No recogniser: type." button={setUp('Set up')} />;
    case 'fetching':
      return (
        <EarStrip
          {...off}
          words={`Fetching the recogniser: ${megabytes(model.done)} of ${megabytes(model.of)}`}
          button={setUp('Show')}
        />
      );
    case 'impossible':
      return <EarStrip {...off} words={model.why} button={setUp('Why')} />;
  }
}

/** The bundled recogniser at work. */
function On() {
  const { ear, speaker } = useTools();
  const now = ear.now.value;
  const stop = (
    <button type="button" class="button primary" onClick={() => void ear.stop()}>
      Stop listening
    </button>
  );
  if (now.state === 'deaf')
    return (
      <EarStrip
        sign="deaf"
        urgent
        state="NOT HEARING:"
        words={`${now.why}. It is tried again by itself; type, or say it again then.`}
        button={stop}
      />
    );
  if (now.state === 'starting')
    return <EarStrip sign="off" state="Getting ready;" words="what you say already counts." button={stop} />;
  if (speaker.speaking.value)
    return (
      <EarStrip sign="off" state="The page speaks;" words="it does not listen meanwhile." button={stop} />
    );
  return (
    <EarStrip
      sign="hearing"
      state="Listening."
      words="On this device."
      button={stop}
      more={
        <>
          <Meter />
          <Coming />
        </>
      }
    />
  );
}

/** The ear is always a little behind; from here on, ms, it is worth saying. */
const LATE = 700;

function Coming() {
  const { ear } = useTools();
  const { speech, behind, words } = ear.progress.value;
  const advice = ADVICE_SHORT[ear.loudness.value.advice];
  const waiting = behind > LATE ? 'Working out what was said …' : '';
  // What is being said is shown while it is said; it enters nothing before its end.
  const doing = words !== '' ? `“${words} …”` : speech ? 'Somebody is speaking …' : waiting;
  return (
    <p class="hearing" aria-hidden="true">
      {words === '' && advice !== '' ? <b class="advice">{advice}</b> : doing}
    </p>
  );
}

/** The browser's own recognition at work. */
function Dictating() {
  const { dictation } = useTools();
  const now = dictation.now.value;
  const stop = (
    <button type="button" class="button primary" onClick={dictation.turnOff}>
      Stop listening
    </button>
  );
  if (now.state === 'deaf')
    return (
      <EarStrip
        sign="deaf"
        urgent
        state="NOT HEARING:"
        words={`${now.why}. It is tried again by itself; type meanwhile.`}
        button={stop}
      />
    );
  const where =
    dictation.local.value === 'available'
      ? 'The sound stays on this device.'
      : 'The sound goes to the browser’s maker.';
  const words = dictation.hearing.value;
  return (
    <EarStrip
      sign={now.state === 'starting' ? 'off' : 'hearing'}
      state={now.state === 'starting' ? 'Starting.' : 'Listening.'}
      words={where}
      button={stop}
      more={<p class="hearing">{words === '' ? '' : `${words} …`}</p>}
    />
  );
}
