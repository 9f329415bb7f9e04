// Changing one entry by hand: side, answer, number or words by large controls; the changed one then waits to be confirmed.

import { useState } from 'preact/hooks';
import { type Entry, stands } from '../../record/index.ts';
import { type Changed, change, confirm, strike } from '../desk/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { hasAnswer, numberToChange, sidesToChoose } from './changes.ts';
import { EntryLine } from './EntryLine.tsx';
import { NumberChange } from './NumberChange.tsx';
import { originMarks } from './origin.ts';
import { WordsChange } from './WordsChange.tsx';

/** The entry itself, or what took its place by now. */
function latestOf(entries: readonly Entry[], id: string): Entry | undefined {
  const entry = entries.find((one) => one.id === id);
  return entry?.replacedBy === undefined ? entry : latestOf(entries, entry.replacedBy);
}

export function ChangeSheet({ id }: { readonly id: string }) {
  const { desk, derived, changing } = useTools();
  const [why, setWhy] = useState<string | null>(null);
  const [striking, setStriking] = useState(false);
  const close = () => {
    changing.value = null;
  };
  const entry = latestOf(derived.entries.value, id);
  if (entry === undefined) return null;
  const tell = (changed: Changed) =>
    setWhy(changed.kind === 'unchanged' ? `Not changed: ${changed.why}.` : null);
  const marks = originMarks(entry);
  const number = numberToChange(entry);
  return (
    <Sheet title="Is this right?" close={close}>
      <p class="sheet-entry">
        <EntryLine entry={entry} />
      </p>
      <p class="heard-words">
        Heard: “{entry.heard}”{marks.length > 0 && <span class="mark not-spoken">{marks.join(', ')}</span>}
      </p>
      {(entry.doubt ?? []).map((doubt) => (
        <p key={doubt} class="question">
          <span class="question-text">{doubt}</span>
        </p>
      ))}
      {why !== null && (
        <p class="notice trouble" role="alert">
          {why}
        </p>
      )}
      {stands(entry) ? (
        <>
          {entry.state === 'heard' ? (
            <button
              type="button"
              class="button primary wide"
              onClick={() => {
                confirm(desk, [entry.id]);
                close();
              }}
            >
              Confirm as it stands
            </button>
          ) : (
            <p class="state-confirmed">Confirmed.</p>
          )}
          <SideChange entry={entry} tell={tell} />
          <AnswerChange entry={entry} tell={tell} />
          {number !== null && <NumberChange key={entry.id} entry={entry} number={number} tell={tell} />}
          <WordsChange key={`words-${entry.id}`} entry={entry} tell={tell} />
          <fieldset>
            <legend>Take it out</legend>
            {striking ? (
              <div class="choices">
                <button
                  type="button"
                  class="button danger"
                  onClick={() => {
                    strike(desk, [entry.id]);
                    close();
                  }}
                >
                  Yes, strike it
                </button>
                <button type="button" class="button" onClick={() => setStriking(false)}>
                  Keep it
                </button>
              </div>
            ) : (
              <button type="button" class="button danger" onClick={() => setStriking(true)}>
                Strike
              </button>
            )}
          </fieldset>
        </>
      ) : (
        <p>This entry no longer stands. It stays in the record as {entry.state}.</p>
      )}
    </Sheet>
  );
}

interface Part {
  readonly entry: Entry;
  readonly tell: (changed: Changed) => void;
}

function SideChange({ entry, tell }: Part) {
  const { desk } = useTools();
  const sides = sidesToChoose(entry);
  if (sides.length === 0) return null;
  const now = 'side' in entry ? entry.side : null;
  return (
    <fieldset>
      <legend>Side (the patient’s)</legend>
      <div class="choices even">
        {sides.map((side) => (
          <button
            key={side}
            type="button"
            class="button big"
            aria-pressed={now === side}
            onClick={() => tell(change(desk, entry.id, { change: 'side', side }))}
          >
            {side.toUpperCase()}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

function AnswerChange({ entry, tell }: Part) {
  const { desk } = useTools();
  if (!hasAnswer(entry)) return null;
  const now = !('present' in entry) || entry.present !== false;
  const names = entry.kind === 'csm' ? ['INTACT', 'NOT INTACT'] : ['YES', 'NO'];
  return (
    <fieldset>
      <legend>{entry.kind === 'csm' ? 'Intact or not' : 'Yes or no'}</legend>
      <div class="choices even">
        {[true, false].map((present, index) => (
          <button
            key={names[index]}
            type="button"
            class="button big"
            aria-pressed={now === present}
            onClick={() => tell(change(desk, entry.id, { change: 'present', present }))}
          >
            {names[index]}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
