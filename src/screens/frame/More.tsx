// How the page looks, is held and speaks, and the ways to the cautions and to the words that can be said.

import { isUnderWay } from '../desk/index.ts';
import { ECHO_NAMES, ECHOES } from '../voice/echo.ts';
import { PACE_NAMES, PACES, REMINDER_NAMES, REMINDERS } from '../voice/reminding.ts';
import { HAND_NAMES, HANDS } from './hand.ts';
import { LOOK_NAMES, LOOKS } from './look.ts';
import { Sheet } from './Sheet.tsx';
import { useTools } from './tools.ts';

export const SOUNDS = ['off', 'on'] as const;
const SOUND_NAMES = { off: 'Off', on: 'On' } as const;

const VOICES = {
  none: 'This browser cannot read aloud; everything is shown.',
  'not-local': 'No voice is on this device, and none that sends words away is used; everything is shown.',
  local: 'Read aloud by a voice on this device.',
} as const;

export function More({ close }: { readonly close: () => void }) {
  const { desk, update, look, hand, sheet, echo, sounds, speaker, reminder, vitalsPace } = useTools();
  const canUpdate = update.waits.value && !isUnderWay(desk.record.value, desk.wall.value);
  return (
    <Sheet title="More" close={close}>
      <div class="choices pairs">
        <Way name="What can I say?" go={() => (sheet.value = 'words')} />
        <Way name="Ready for the mountain?" go={() => (sheet.value = 'ready')} />
        <Way name="Hearing" go={() => (sheet.value = 'hearing')} />
        <Way name="Cautions" go={() => (sheet.value = 'cautions')} />
      </div>
      {canUpdate && (
        <button type="button" class="button wide" onClick={update.take}>
          Take the new version of this page
        </button>
      )}
      <Choice legend="How the page looks" names={LOOK_NAMES} all={LOOKS} chosen={look} />
      <Choice legend="Held in the" names={HAND_NAMES} all={HANDS} chosen={hand} />
      <Choice legend="Say back what was entered" names={ECHO_NAMES} all={ECHOES} chosen={echo} />
      <p class="small-print">{VOICES[speaker.voice.value]}</p>
      <Choice
        legend="Short sounds: heard, not understood, question"
        names={SOUND_NAMES}
        all={SOUNDS}
        chosen={sounds}
      />
      <Choice
        legend="Say aloud when vitals are due"
        names={REMINDER_NAMES}
        all={REMINDERS}
        chosen={reminder}
      />
      <Choice legend="Vitals every (unstable or stable)" names={PACE_NAMES} all={PACES} chosen={vitalsPace} />
    </Sheet>
  );
}

const Way = ({ name, go }: { readonly name: string; readonly go: () => void }) => (
  <button type="button" class="button" onClick={go}>
    {name}
  </button>
);

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly names: Readonly<Record<T, string>>;
  readonly all: readonly T[];
  readonly chosen: { value: T };
}

/** One of a few, each as a large button. */
export function Choice<T extends string>({ legend, names, all, chosen }: ChoiceProps<T>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div class="choices even">
        {all.map((one) => (
          <button
            key={one}
            type="button"
            class="button"
            aria-pressed={chosen.value === one}
            onClick={() => {
              chosen.value = one;
            }}
          >
            {names[one]}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
