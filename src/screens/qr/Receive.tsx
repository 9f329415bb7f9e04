// The receiver: the camera looks at the other screen until every part is there, or a file is chosen; then it is checked.

import { useState } from 'preact/hooks';
import type { Collection } from '../../handoff/index.ts';
import { wholeOf } from '../../handoff/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { unpack } from './pack.ts';
import { type Received, receive } from './receive.ts';
import { Scan } from './Scan.tsx';

type Now =
  | { readonly step: 'scan' }
  | { readonly step: 'sealed'; readonly bytes: Uint8Array<ArrayBuffer>; readonly why: string | null }
  | { readonly step: 'done'; readonly result: Received };

export function Receive({ close }: { readonly close: () => void }) {
  const { desk } = useTools();
  const [now, setNow] = useState<Now>({ step: 'scan' });
  const [passphrase, setPassphrase] = useState('');
  const refuse = (why: string) => setNow({ step: 'done', result: { kind: 'refused', why } });

  const take = async (bytes: Uint8Array<ArrayBuffer>, words: string) => {
    const reader = desk.reader.peek();
    if (reader === null) return refuse('The page is not ready yet; try again in a moment.');
    const read = await unpack(bytes, words);
    if (read.kind === 'sealed') return setNow({ step: 'sealed', bytes, why: null });
    if (read.kind === 'unreadable') {
      if (words === '') return refuse(`What was received cannot be read: ${read.why}.`);
      return setNow({ step: 'sealed', bytes, why: `It did not open: ${read.why}.` });
    }
    try {
      setNow({ step: 'done', result: await receive(desk, reader, read) });
    } catch {
      refuse('The record was read and could not be kept on this device; nothing was changed.');
    }
  };
  const whole = (collection: Collection) => {
    const made = wholeOf(collection);
    if (made.kind === 'whole') void take(made.bytes, '');
    else if (made.kind === 'damaged') refuse(`It cannot be put together: ${made.why}. Scan it once more.`);
  };
  return (
    <Sheet title="Receive a record" close={close}>
      {now.step === 'scan' && <Scan whole={whole} file={(bytes) => void take(bytes, '')} />}
      {now.step === 'sealed' && (
        <>
          <p>All of it is here, and sealed by a passphrase. Ask the sender for it.</p>
          <label class="field-name" for="received-passphrase">
            Passphrase
          </label>
          <input
            id="received-passphrase"
            type="text"
            value={passphrase}
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            onInput={(event) => setPassphrase(event.currentTarget.value)}
          />
          {now.why !== null && (
            <p class="notice trouble" role="alert">
              {now.why}
            </p>
          )}
          <button
            type="button"
            class="button primary wide"
            disabled={passphrase.trim() === ''}
            onClick={() => void take(now.bytes, passphrase)}
          >
            Open it
          </button>
        </>
      )}
      {now.step === 'done' && (
        <>
          <p
            role={now.result.kind === 'refused' ? 'alert' : 'status'}
            class={now.result.kind === 'refused' ? 'notice trouble' : 'notice'}
          >
            {now.result.kind === 'received' ? now.result.words : now.result.why}
          </p>
          {now.result.kind === 'refused' && (
            <button type="button" class="button primary wide" onClick={() => setNow({ step: 'scan' })}>
              Begin again
            </button>
          )}
        </>
      )}
    </Sheet>
  );
}
