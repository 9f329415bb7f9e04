// The records that are kept on this device: open one, begin another, or remove one for good.

import { useEffect, useState } from 'preact/hooks';
import type { RecordFacts } from '../desk/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { Demos } from '../play/Demos.tsx';
import { OpenTalk } from '../talk/OpenTalk.tsx';
import { openKept } from './restore.ts';
import { Safety } from './Safety.tsx';
import { newRecord } from './switch.ts';

const KIND = { live: 'Record', invented: 'Invented', opened: 'From a file' } as const;

/** `2026-05-03, 14:02`, by the clock of the place where it began. */
const began = (iso: string): string => `${iso.slice(0, 10)}, ${iso.slice(11, 16)}`;

export function Records({ close }: { readonly close: () => void }) {
  const { desk, player } = useTools();
  const [kept, setKept] = useState<readonly RecordFacts[] | null>(null);
  const [fault, setFault] = useState(false);
  const read = () =>
    desk.keeper
      .settled()
      .then(() => desk.keeper.list())
      .then(({ records }) => setKept(records.map(({ facts }) => facts)))
      .catch(() => setFault(true));
  useEffect(() => void read(), []);
  const here = desk.record.value?.facts.id ?? null;
  const leave = (go: () => void) => {
    player.stop();
    go();
    close();
  };
  return (
    <Sheet title="Records on this device" close={close}>
      <button
        type="button"
        class="button primary wide"
        disabled={here === null}
        onClick={() => leave(() => newRecord(desk))}
      >
        New record
      </button>
      {here === null && <p class="small-print">A new record begins with the first words that are said.</p>}
      {fault && <p class="notice trouble">The kept records could not be read.</p>}
      {kept !== null && kept.length === 0 && <p class="empty">No record is kept yet.</p>}
      <ul class="plain-list spaced">
        {(kept ?? []).map((facts) => (
          <li key={facts.id} class="record">
            <p>
              <b>{KIND[facts.kind]}</b> {facts.title} <span class="when">{began(facts.startedAt)}</span>
              {facts.id === here && <span class="mark">open now</span>}
            </p>
            <div class="choices">
              {facts.id !== here && (
                <button
                  type="button"
                  class="button"
                  onClick={() => {
                    const reader = desk.reader.value;
                    if (reader !== null) leave(() => void openKept(desk, reader, facts.id));
                  }}
                >
                  Open
                </button>
              )}
              <Remove
                remove={() => {
                  if (facts.id === here) {
                    player.stop();
                    newRecord(desk);
                  }
                  void desk.keeper
                    .remove(facts.id)
                    .then(read)
                    .catch(() => setFault(true));
                }}
              />
            </div>
          </li>
        ))}
      </ul>
      <OpenTalk opened={close} />
      <Safety />
      <Demos chosen={close} />
    </Sheet>
  );
}

function Remove({ remove }: { readonly remove: () => void }) {
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <button type="button" class="button" onClick={() => setAsked(true)}>
        Remove
      </button>
    );
  return (
    <>
      <button type="button" class="button danger" onClick={remove}>
        Remove for good
      </button>
      <button type="button" class="button" onClick={() => setAsked(false)}>
        Keep
      </button>
    </>
  );
}
