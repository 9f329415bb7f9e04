// Holds a printed or handed-over fingerprint against the record: a witness that no one who has only this device can alter.

import { useRef, useState } from 'preact/hooks';
import type { Verdict } from '../../record/store/index.ts';
import { useTools } from '../frame/tools.ts';

/** Fewer digits fit by chance. */
const LEAST = 8;

/** What is to be said of a fingerprint, as far as it was typed. */
export function hashInWords(typed: string, hashes: Verdict['hashes']): string {
  const digits = typed.toLowerCase().replace(/[^0-9a-f]/g, '');
  if (digits.length < LEAST) return `Type at least ${LEAST} of its digits (0 to 9, a to f).`;
  const found = [...hashes].findLast(([, hash]) => hash.startsWith(digits));
  const last = Math.max(0, ...hashes.keys());
  if (found === undefined)
    return 'No event of this record has this fingerprint. What it was printed from is not in this log, or was altered since.';
  const after = last - found[0];
  return `Event ${found[0]} has this fingerprint: all up to it is as it was then. ${
    after === 0 ? 'Nothing came after it.' : `${after} ${after === 1 ? 'event' : 'events'} came after it.`
  }`;
}

export function HashCheck({ record }: { readonly record: string }) {
  const { keeper } = useTools().desk;
  const field = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState('');
  const check = async () => {
    await keeper.settled();
    const { verdict } = await keeper.read(record);
    setSaid(hashInWords(field.current?.value ?? '', verdict.hashes));
  };
  return (
    <details class="fold">
      <summary>Hold a printed fingerprint against this record</summary>
      <form
        class="stacked"
        onSubmit={(event) => {
          event.preventDefault();
          check().catch(() => setSaid('The record could not be read.'));
        }}
      >
        <div class="field">
          <label for="fingerprint">SHA-256 at the foot of a printed page, or its first digits</label>
          <input id="fingerprint" ref={field} type="text" autocomplete="off" spellcheck={false} />
        </div>
        <button type="submit" class="button">
          Check it
        </button>
        <p role="status">{said}</p>
      </form>
    </details>
  );
}
