// One entry: its sentence, what of it was not spoken, its open questions, and one press to confirm it.

import { type Entry, stands } from '../../record/index.ts';
import { isPaired } from '../../terms/index.ts';
import { clock, dayOf } from '../../timeline/index.ts';
import { change, confirm, restore } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { HearAgain } from '../sound/index.ts';
import { EntryLine } from './EntryLine.tsx';
import { originMarks } from './origin.ts';
import { sentenceText } from './sentence.ts';

const lacksSide = (entry: Entry): boolean =>
  (entry.kind === 'finding' || entry.kind === 'csm' || entry.kind === 'care') &&
  entry.site !== undefined &&
  isPaired(entry.site) &&
  (entry.side ?? null) === null;

const STATE_WORDS = {
  heard: 'to check',
  confirmed: 'confirmed',
  replaced: 'replaced',
  struck: 'struck',
} as const;

export function EntryRow({ entry }: { readonly entry: Entry }) {
  const { desk, derived, changing } = useTools();
  const text = sentenceText(entry);
  const day = dayOf(derived.startedAt.value);
  const open = () => {
    changing.value = entry.id;
  };
  return (
    <li class={`entry ${entry.state} kind-${entry.kind}`} data-entry={entry.id}>
      <div class="entry-main">
        {stands(entry) ? (
          <button type="button" class="entry-text" data-press={`change ${entry.id}`} onClick={open}>
            <span class="only-heard">Change or strike: </span>
            <EntryLine entry={entry} />
            <Marks entry={entry} day={day} />
          </button>
        ) : (
          <div class="entry-text">
            <EntryLine entry={entry} />
            <Marks entry={entry} day={day} />
          </div>
        )}
        <HearAgain utterance={derived.saidIn(entry.id)} what={text} />
        {entry.state === 'heard' && (
          <button
            type="button"
            class="button entry-confirm"
            data-press={`confirm ${entry.id}`}
            onClick={() => confirm(desk, [entry.id])}
            aria-label={`Confirm: ${text}`}
          >
            Confirm
          </button>
        )}
        {entry.state === 'struck' && (
          <button
            type="button"
            class="button"
            data-press={`restore ${entry.id}`}
            onClick={() => restore(desk, [entry.id])}
            aria-label={`Restore: ${text}`}
          >
            Restore
          </button>
        )}
        {/* The place of the button stays, so that nothing moves under the next press. */}
        {entry.state === 'confirmed' && (
          <span class="entry-confirm entry-done" aria-hidden="true">
            ✓
          </span>
        )}
      </div>
      {stands(entry) && (entry.doubt ?? []).map((doubt) => <Question key={doubt}>{doubt}</Question>)}
      {stands(entry) && lacksSide(entry) && (
        <Question>
          Which side is meant?
          <span class="choices">
            {(['left', 'right', 'both'] as const).map((side) => (
              <button
                key={side}
                type="button"
                class="button"
                data-press={`${side} ${entry.id}`}
                onClick={() => change(desk, entry.id, { change: 'side', side })}
              >
                {side.toUpperCase()}
              </button>
            ))}
          </span>
        </Question>
      )}
    </li>
  );
}

function Marks({ entry, day }: { readonly entry: Entry; readonly day: string }) {
  return (
    <span class="marks">
      <span class={`mark state-${entry.state}`}>{STATE_WORDS[entry.state]}</span>
      {originMarks(entry).map((mark) => (
        <span key={mark} class="mark not-spoken">
          {mark}
        </span>
      ))}
      <span class="when">{clock(entry.at, day)}</span>
      {stands(entry) && <span class="entry-hint">change</span>}
    </span>
  );
}

function Question({ children }: { readonly children: preact.ComponentChildren }) {
  return (
    <p class="question">
      <span class="question-mark" aria-hidden="true">
        ?
      </span>
      <span class="question-text">{children}</span>
    </p>
  );
}
