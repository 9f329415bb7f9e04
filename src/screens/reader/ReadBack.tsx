// What the other end read back is typed or heard, held against the record value by value, shown, said, and kept.

import { useEffect, useState } from 'preact/hooks';
import { type CriticalValue, compareReadBack, type ReadBackRow } from '../../handoff/index.ts';
import { passOn } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';

interface Props {
  readonly asked: readonly CriticalValue[];
  /** words heard while the radio was in use, oldest first */
  readonly aside: readonly string[];
  readonly again: (rows: readonly ReadBackRow[]) => void;
  readonly leave: () => void;
}

const KIND_WORDS = { matched: '✓ right', differs: '✗ DIFFERS', missing: '? NOT READ BACK' } as const;

/** Worst first: what differs, then what is missing. */
const ORDER = ['differs', 'missing', 'matched'] as const;

export function ReadBack({ asked, aside, again, leave }: Props) {
  const { desk, speaker } = useTools();
  // Only what is heard from here on can be their answer.
  const [from] = useState(aside.length);
  const [typed, setTyped] = useState('');
  const [rows, setRows] = useState<readonly ReadBackRow[] | null>(null);
  const heard = aside.slice(from).join(' ');
  useEffect(() => {
    if (heard !== '') setTyped(heard);
  }, [heard]);
  useEffect(() => () => speaker.hush(), [speaker]);
  if (asked.length === 0)
    return (
      <section aria-label="Read-back">
        <p class="empty">
          The record has no pressure, GCS, pulse, tourniquet or red criterion to be read back.
        </p>
        <button type="button" class="button big wide" onClick={leave}>
          Back
        </button>
      </section>
    );
  const compare = () => {
    const found = [...compareReadBack(asked, typed)].sort(
      (a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind),
    );
    setRows(found);
    passOn(desk, {
      step: 'read-back',
      heard: typed,
      rows: found.map(({ kind, value, sentence }) => ({ kind, value: value.spoken, sentence })),
    });
    const wrong = found.filter(({ kind }) => kind !== 'matched');
    speaker.hush();
    for (const { sentence } of wrong) speaker.speak(sentence);
    if (wrong.length === 0) speaker.speak('All was read back right.');
  };
  const allRight = rows?.every(({ kind }) => kind === 'matched') === true;
  return (
    <section class="read-back" aria-label="Read-back">
      <h3>Asked to be read back</h3>
      <ul class="plain-list asked-values">
        {asked.map((value) => (
          <li key={value.name + value.spoken}>
            {value.spoken}
            {value.trust === 'confirmed' ? '' : ' (unconfirmed)'}
          </li>
        ))}
      </ul>
      <label for="read-back-words">What they said</label>
      <textarea
        id="read-back-words"
        rows={3}
        value={typed}
        placeholder="pressure 90 by palpation, GCS 13, pulse 124 …"
        onInput={(event) => setTyped(event.currentTarget.value)}
      />
      <button type="button" class="button primary wide" disabled={typed.trim() === ''} onClick={compare}>
        Compare
      </button>
      {rows !== null && (
        <>
          <div role="alert">
            <ul class="plain-list read-back-rows">
              {rows.map(({ kind, value, sentence }) => (
                <li key={value.name + value.spoken} class={kind}>
                  <b>{KIND_WORDS[kind]}</b> {sentence}
                </li>
              ))}
            </ul>
          </div>
          <p>
            {allRight
              ? 'All of it came back right. Answer: “That is correct.”'
              : 'Kept with its time. Say again what did not come back right.'}
          </p>
          {!allRight && (
            <button type="button" class="button primary wide" onClick={() => again(rows)}>
              Say it again
            </button>
          )}
        </>
      )}
      <button type="button" class="button big wide" onClick={leave}>
        Back
      </button>
    </section>
  );
}
