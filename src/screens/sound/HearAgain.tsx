// A button beside what was said: hears it again, or stops it. It is there only where the sound is.

import { trouble } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';

interface Props {
  readonly utterance: string | null;
  /** what is heard again, for whoever cannot see what it stands beside */
  readonly what: string;
}

export function HearAgain({ utterance, what }: Props) {
  const { desk, derived, heardSounds, playback, speaker } = useTools();
  const record = derived.recordId.value;
  if (utterance === null || record === null || !heardSounds.there.value.has(utterance)) return null;
  const now = playback.playing.value === utterance;
  const press = async () => {
    if (now) return playback.stop();
    speaker.hush();
    if (!(await playback.play(record, utterance)))
      desk.notice.value = trouble('The sound of that could not be played. Its words are kept.');
  };
  return (
    <button
      type="button"
      class="button hear-again"
      data-press={`hear ${utterance}`}
      aria-label={now ? 'Stop the sound' : `Hear again: ${what}`}
      onClick={() => void press()}
    >
      <span aria-hidden="true">{now ? '■' : '▶'}</span>
    </button>
  );
}
