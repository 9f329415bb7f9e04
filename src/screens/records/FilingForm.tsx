// What the open patient is called and where, and closing the record when the patient is handed over.

import { useEffect, useRef, useState } from 'preact/hooks';
import { type Sound, soundOf } from '../../record/store/index.ts';
import type { OpenRecord } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { closeOpen, fileOpen } from './close.ts';
import { size } from './storage.ts';
import { summaryOf } from './summary.ts';
import { whoIs } from './who.ts';

interface Props {
  readonly record: OpenRecord;
  readonly changed: () => void;
  readonly close: () => void;
}

export function FilingForm({ record, changed, close }: Props) {
  const { desk, player, playback, heardSounds, soundChoice } = useTools();
  const [said, setSaid] = useState('');
  const [keepSound, setKeepSound] = useState(soundChoice.value === 'kept');
  const [sound, setSound] = useState<Sound | null>(null);
  useEffect(() => {
    heardSounds
      .settled()
      .then(() => soundOf(desk.shelf, record.facts.id))
      .then(setSound, () => undefined);
  }, [record.facts.id]);
  const fields = {
    label: useRef<HTMLInputElement>(null),
    tag: useRef<HTMLInputElement>(null),
    place: useRef<HTMLInputElement>(null),
  };
  const { filing } = record.exam.state;
  const value = (name: keyof typeof fields): string => fields[name].current?.value.trim() ?? filing[name];
  return (
    <details id="close-record" class="fold" tabIndex={-1}>
      <summary>{whoIs(summaryOf(record))}: label, tag, place; close</summary>
      <form
        class="stacked"
        onSubmit={(event) => {
          event.preventDefault();
          fileOpen(desk, { label: value('label'), tag: value('tag'), place: value('place') });
          setSaid('Filed.');
          changed();
        }}
      >
        {FIELDS.map(([name, words]) => (
          <div key={name} class="field">
            <label for={`filing-${name}`}>{words}</label>
            <input
              id={`filing-${name}`}
              ref={fields[name]}
              type="text"
              autocomplete="off"
              maxLength={60}
              defaultValue={filing[name]}
            />
          </div>
        ))}
        <div class="choices">
          <button type="submit" class="button">
            File it so
          </button>
          <button
            type="button"
            class="button"
            onClick={() => {
              player.stop();
              playback.stop();
              void closeOpen(desk, heardSounds, keepSound).then(close);
            }}
          >
            Close this record
          </button>
        </div>
        {sound !== null && sound.utterances.length > 0 && (
          <label class="tick">
            <input type="checkbox" checked={keepSound} onChange={() => setKeepSound(!keepSound)} /> Keep the
            sound of {sound.utterances.length} utterances ({size(sound.size)}) when it is closed
          </label>
        )}
        <p role="status">{said}</p>
      </form>
    </details>
  );
}

const FIELDS = [
  ['label', 'Label, until a name is known'],
  ['tag', 'Tag: words that tell this patient apart without a colour'],
  ['place', 'Place'],
] as const;
