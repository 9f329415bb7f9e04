// The sender: an optional passphrase, then the record as QR symbols one after another, or as a file where that is easier.

import { useState } from 'preact/hooks';
import { exportHeld, squeeze } from '../../record/store/transfer/index.ts';
import { passOn } from '../desk/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { summaryOf } from '../records/summary.ts';
import { Frames } from './Frames.tsx';
import { SaveFhir } from './SaveFhir.tsx';
import { SendFile } from './SendFile.tsx';

interface Packed {
  /** the file's text */
  readonly text: string;
  /** the same squeezed, for the symbols */
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly sealed: boolean;
}

export function Show({ close }: { readonly close: () => void }) {
  const { desk } = useTools();
  // What is shown holds still: frames of a record that changes would never make a whole.
  const [record] = useState(() => desk.record.peek());
  const [passphrase, setPassphrase] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const [packed, setPacked] = useState<Packed | null>(null);
  const begin = async () => {
    if (record === null) return;
    setFault(null);
    try {
      const held = { facts: record.facts, summary: { ...summaryOf(record) }, events: record.exam.events };
      const made = await exportHeld(held, passphrase);
      if (made.kind === 'refused') {
        setFault(made.why);
        return;
      }
      const sealed = passphrase.trim() !== '';
      setPacked({ text: made.text, bytes: await squeeze(made.text), sealed });
      passOn(desk, { step: 'copied', by: 'symbols', sealed });
    } catch {
      setFault(
        'This browser cannot pack the record (it needs compression and, for a passphrase, encryption).',
      );
    }
  };
  return (
    <Sheet title="Pass on without a network" close={close}>
      {packed === null ? (
        <>
          <p>
            The whole record is shown as moving QR symbols. The other device opens this page, chooses “Receive
            a record”, and looks at this screen until it has all parts.
          </p>
          <label class="field-name" for="transfer-passphrase">
            Passphrase, if you want one
          </label>
          <input
            id="transfer-passphrase"
            type="text"
            value={passphrase}
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            onInput={(event) => setPassphrase(event.currentTarget.value)}
          />
          <p class="small-print">
            Without one, whoever films the screen has the record. Tell it to the receiver by word of mouth.
          </p>
          {fault !== null && (
            <p class="notice trouble" role="alert">
              {fault}
            </p>
          )}
          <button type="button" class="button primary wide" onClick={() => void begin()}>
            Show the symbols
          </button>
          <SaveFhir />
        </>
      ) : (
        <>
          <Frames bytes={packed.bytes} />
          <SendFile
            text={packed.text}
            name={record?.facts.id ?? 'record'}
            sent={(by) => passOn(desk, { step: 'copied', by, sealed: packed.sealed })}
          />
        </>
      )}
    </Sheet>
  );
}
