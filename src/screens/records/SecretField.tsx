// A field for a passphrase, hidden unless it is asked to be shown.

import type { RefObject } from 'preact';
import { useId } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly field: RefObject<HTMLInputElement | null>;
  readonly shown: boolean;
  readonly autocomplete: 'current-password' | 'new-password' | 'off';
}

export function SecretField({ label, field, shown, autocomplete }: Props) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {shown ? (
        <input id={id} ref={field} type="text" autocomplete="off" autocapitalize="off" spellcheck={false} />
      ) : (
        <input id={id} ref={field} type="password" autocomplete={autocomplete} />
      )}
    </div>
  );
}
