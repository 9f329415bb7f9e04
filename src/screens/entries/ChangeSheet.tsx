// Changing one entry by hand: large controls for side, answer, place, finding and number, then saying it again, and the
// keyboard last; what was changed waits to be confirmed.

import { useState } from 'preact/hooks';
import { type Entry, stands } from '../../record/index.ts';
import { type Changed, confirm } from '../desk/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { AnswerChange, AvpuChange, SideChange } from './AnswerChange.tsx';
import { hasTime, numberToChange } from './changes.ts';
import { EntryLine } from './EntryLine.tsx';
import { FindingChange } from './FindingChange.tsx';
import { NumberChange } from './NumberChange.tsx';
import { originMarks } from './origin.ts';
import { SayAgain } from './SayAgain.tsx';
import { SiteChange } from './SiteChange.tsx';
import { StrikeChange } from './StrikeChange.tsx';
import { TimeChange } from './TimeChange.tsx';
import { WordsChange } from './WordsChange.tsx';

/** The entry itself, or what took its place by now. */
function latestOf(entries: readonly Entry[], id: string): Entry | undefined {
  const entry = entries.find((one) => one.id === id);
  return entry?.replacedBy === undefined ? entry : latestOf(entries, entry.replacedBy);
}

export function ChangeSheet({ id }: { readonly id: string }) {
  const { derived, changing } = useTools();
  const [why, setWhy] = useState<string | null>(null);
  const entry = latestOf(derived.entries.value, id);
  if (entry === undefined) return null;
  const close = () => {
    changing.value = null;
  };
  const tell = (changed: Changed) =>
    setWhy(changed.kind === 'unchanged' ? `Not changed: ${changed.why}.` : null);
  const marks = originMarks(entry);
  return (
    <Sheet title="Is this right?" close={close}>
      <p class="sheet-entry" role="status">
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
        <Controls entry={entry} tell={tell} close={close} />
      ) : (
        <p>This entry no longer stands. It stays in the record as {entry.state}.</p>
      )}
    </Sheet>
  );
}

interface ControlsProps {
  readonly entry: Entry;
  readonly tell: (changed: Changed) => void;
  readonly close: () => void;
}

function Controls({ entry, tell, close }: ControlsProps) {
  const { desk } = useTools();
  const number = numberToChange(entry);
  return (
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
      <AvpuChange entry={entry} tell={tell} />
      {number !== null && <NumberChange key={entry.id} entry={entry} number={number} tell={tell} />}
      {hasTime(entry) && <TimeChange key={`time-${entry.id}`} entry={entry} tell={tell} />}
      <SiteChange entry={entry} tell={tell} />
      <FindingChange entry={entry} tell={tell} />
      <SayAgain entry={entry} tell={tell} />
      <StrikeChange entry={entry} close={close} />
      <WordsChange key={`words-${entry.id}`} entry={entry} tell={tell} />
    </>
  );
}
