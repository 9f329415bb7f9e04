// The receiver: the camera looks at the other screen until every part is there, or a file is chosen; then it is checked.

import { useState } from 'preact/hooks';
import type { Collection } from '../../handoff/index.ts';
import { wholeOf } from '../../handoff/index.ts';
import { unsqueeze } from '../../record/store/transfer/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { type Received, receive, type Way } from './receive.ts';
import { Scan } from './Scan.tsx';

type Now =
  | { readonly step: 'scan' }
  | { readonly step: 'sealed'; readonly text: string; readonly by: Way; readonly why: string | null }
  | { readonly step: 'done'; readonly result: Exclude<Received, { kind: 'sealed' }> };

export function Receive({ close }: { readonly close: () => void }) {
  const { desk } = useTools();
  const [now, setNow] = useState<Now>({ step: 'scan' });
  const [passphrase, setPassphrase] = useState('');
  const refuse = (why: string) => setNow({ step: 'done', result: { kind: 'refused', why } });

  const take = async (text: string, by: Way, words: string) => {
    const reader = desk.reader.peek();
    if (reader === null) return refuse('The page is not ready yet; try again in a moment.');
    if (desk.door.keys() === null) return refuse('The page is locked: open it, then receive.');
    try {
      const result = await receive(desk, reader, { text, passphrase: words, by });
      if (result.kind === 'sealed') setNow({ step: 'sealed', text, by, why: result.why });
      else setNow({ step: 'done', result });
    } catch {
      refuse('The record was read and could not be kept on this device; nothing was changed.');
    }
  };
  const whole = async (collection: Collection) => {
    const made = wholeOf(collection);
    if (made.kind === 'missing') return;
    const text = made.kind === 'whole' ? await unsqueeze(made.bytes) : null;
    if (text === null)
      refuse(
        `It cannot be put together${made.kind === 'damaged' ? `: ${made.why}` : ''}. Scan it once more.`,
      );
    else await take(text, 'symbols', '');
  };
  return (
    <Sheet title="Receive a record" close={close}>
      {now.step === 'scan' && (
        <Scan whole={(collection) => void whole(collection)} file={(text) => void take(text, 'file', '')} />
      )}
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
            onClick={() => void take(now.text, now.by, passphrase)}
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
