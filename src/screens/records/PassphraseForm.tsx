// A form that takes a passphrase, folded until it is asked for; the answer is plain words.

import { useRef, useState } from 'preact/hooks';
import { judgePassphrase } from '../../record/crypt/index.ts';
import type { PassphraseSet } from '../../record/store/index.ts';
import { SecretField } from './SecretField.tsx';

interface Props {
  readonly title: string;
  /** the present passphrase is asked for as well */
  readonly asksOld?: boolean;
  /** nothing but the present passphrase is asked for */
  readonly onlyOld?: boolean;
  readonly submit: (passphrase: string, old: string) => Promise<PassphraseSet>;
}

const inWords = (set: PassphraseSet): string => {
  switch (set.kind) {
    case 'set':
      return 'Done.';
    case 'refused':
      return set.why;
    case 'wrong':
      return 'That is not the present passphrase. Nothing was changed.';
    case 'wait':
      return `Wait ${Math.ceil(set.waitMs / 1000)} s before the next try.`;
  }
};

export function PassphraseForm({ title, asksOld = false, onlyOld = false, submit }: Props) {
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const [shown, setShown] = useState(false);
  const old = useRef<HTMLInputElement>(null);
  const fresh = useRef<HTMLInputElement>(null);
  const again = useRef<HTMLInputElement>(null);
  // Showing what is typed makes another field: what stands in it goes along.
  const show = () => {
    const typed = [old, fresh, again].map((field) => field.current?.value ?? '');
    setShown(!shown);
    requestAnimationFrame(() => {
      for (const [index, { current }] of [old, fresh, again].entries())
        if (current !== null) current.value = typed[index] ?? '';
    });
  };
  const go = async () => {
    const [before = '', words = '', same] = [old, fresh, again].map((field) => field.current?.value ?? '');
    if (busy) return;
    if (!onlyOld) {
      const judged = judgePassphrase(words);
      if (judged.kind === 'refused') return setSaid(judged.why);
      if (words !== same) return setSaid('The two are not the same.');
    }
    setBusy(true);
    setSaid('Working out the key …');
    try {
      const set = await submit(words, before);
      setSaid(inWords(set));
      if (set.kind === 'set')
        for (const { current } of [old, fresh, again]) if (current !== null) current.value = '';
    } catch {
      setSaid('The device’s storage failed. The passphrase is as it was before.');
    }
    setBusy(false);
  };
  return (
    <details class="fold">
      <summary>{title}</summary>
      <form
        class="stacked"
        onSubmit={(event) => {
          event.preventDefault();
          void go();
        }}
      >
        {(asksOld || onlyOld) && (
          <SecretField label="Present passphrase" field={old} shown={shown} autocomplete="current-password" />
        )}
        {!onlyOld && (
          <>
            <p class="small-print">
              Four or five words that do not belong together. A number alone is refused: it can be tried out.
            </p>
            <SecretField label="New passphrase" field={fresh} shown={shown} autocomplete="new-password" />
            <SecretField label="The same again" field={again} shown={shown} autocomplete="new-password" />
          </>
        )}
        <label class="tick">
          <input type="checkbox" checked={shown} onChange={show} /> Show what I type
        </label>
        <button type="submit" class="button wide big" disabled={busy}>
          {title}
        </button>
        <p role="alert">{said}</p>
      </form>
    </details>
  );
}
