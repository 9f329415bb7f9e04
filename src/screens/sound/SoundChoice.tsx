// How long the sound of what is said is kept, how much room it takes, and that it never leaves unasked.

import { useTools } from '../frame/tools.ts';
import { SOUND_CHOICE_WORDS, SOUND_CHOICES, SOUND_SIZE } from './choice.ts';

export function SoundChoiceForm() {
  const { heardSounds, soundChoice } = useTools();
  return (
    <section aria-labelledby="sound-kept" class="part">
      <h3 id="sound-kept">Sound of what is said</h3>
      <p>
        <label>
          Kept on this device{' '}
          <select
            value={soundChoice.value}
            onChange={({ currentTarget: { value } }) => {
              soundChoice.value = SOUND_CHOICES.find((one) => one === value) ?? soundChoice.value;
            }}
          >
            {SOUND_CHOICES.map((one) => (
              <option key={one} value={one}>
                {SOUND_CHOICE_WORDS[one]}
              </option>
            ))}
          </select>
        </label>
      </p>
      <p class="small-print">
        So that words can be heard again beside their entry. Encrypted like the record; {SOUND_SIZE}. It is in
        no export, print or report. Only what this page’s own recogniser hears has sound; typed words and the
        browser’s dictation have none. When room runs short, sound goes before words.
      </p>
      {heardSounds.fault.value !== null && <p class="notice trouble">{heardSounds.fault.value}</p>}
    </section>
  );
}
