// The records that are kept on this device: found, opened, begun, filed, closed, taken out and in, and wiped.

import { useEffect, useState } from 'preact/hooks';
import { Sheet } from '../frame/Sheet.tsx';
import { sendTo } from '../frame/send-to.ts';
import { useTools } from '../frame/tools.ts';
import { Demos } from '../play/Demos.tsx';
import { SoundChoiceForm } from '../sound/index.ts';
import { OpenTalk } from '../talk/OpenTalk.tsx';
import { FilingForm } from './FilingForm.tsx';
import { HashCheck } from './HashCheck.tsx';
import { RecordList } from './RecordList.tsx';
import { Safety } from './Safety.tsx';
import { type Shown, shownOf } from './summary.ts';
import { newRecord } from './switch.ts';
import { Transfer } from './Transfer.tsx';
import { TOLD_AT, useWanted } from './use-wanted.ts';
import { WipeAll } from './WipeAll.tsx';
import { whyNot } from './words.ts';

/** What the sheet lists; null until it is read. */
export interface Listing {
  readonly records: readonly Shown[];
  readonly unnamed: readonly string[];
  readonly gone: readonly string[];
}

export function RecordsSheet({ close }: { readonly close: () => void }) {
  const { desk, player, sheet, recordsAt } = useTools();
  const [listing, setListing] = useState<Listing | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const read = () =>
    desk.keeper
      .settled()
      .then(() => desk.keeper.list())
      .then(({ records, ...others }) => setListing({ records: records.map(shownOf), ...others }))
      .catch((error) => setFault(`The kept records could not be read: ${whyNot(error)}`));
  useEffect(() => void read(), []);
  const at = recordsAt.value;
  // What is folded opens; what is listed is drawn by now.
  useEffect(() => {
    if (listing === null || at === null) return;
    const part = document.getElementById(at);
    if (part instanceof HTMLDetailsElement) part.open = true;
    sendTo(at);
    recordsAt.value = null;
  }, [listing, at]);
  const record = desk.record.value;
  const leave = (go: () => void) => {
    player.stop();
    go();
    close();
  };
  const told = useWanted(listing?.records ?? null, leave);
  return (
    <Sheet title="Records on this device" close={close}>
      {told !== null && told.record === null && (
        <p class="notice" role="status" id={TOLD_AT} tabIndex={-1}>
          {told.text}
        </p>
      )}
      {record !== null && (
        <>
          <button
            type="button"
            class="button primary wide"
            onClick={() =>
              leave(() => {
                desk.turning.value = 'new';
              })
            }
          >
            New patient, same incident
          </button>
          <button type="button" class="button big wide" onClick={() => leave(() => newRecord(desk))}>
            New incident
          </button>
          <FilingForm record={record} changed={() => void read()} close={close} />
          <HashCheck record={record.facts.id} />
        </>
      )}
      {record === null && <p class="small-print">A new record begins with the first words that are said.</p>}
      {fault !== null && <p class="notice trouble">{fault}</p>}
      {listing !== null && (
        <RecordList listing={listing} told={told} leave={leave} changed={() => void read()} />
      )}
      {listing !== null && <Transfer records={listing.records} changed={() => void read()} />}
      <button
        type="button"
        class="button big wide"
        onClick={() => {
          sheet.value = 'link';
        }}
      >
        One incident with others: the team link
      </button>
      <Safety />
      <SoundChoiceForm />
      <WipeAll />
      <OpenTalk opened={close} />
      <Demos chosen={close} />
    </Sheet>
  );
}
