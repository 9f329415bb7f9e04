// A line that opens to the entries it tells; they are drawn only once it is open.

import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { EntryWays } from './EntryWays.tsx';

interface Props {
  readonly of: string;
  readonly text: string;
  readonly ids: readonly string[];
  /** below the entries */
  readonly children?: ComponentChildren;
}

export function EntryFold({ of, text, ids, children }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details class={of} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{text}</summary>
      {isOpen && <EntryWays ids={ids} />}
      {children}
    </details>
  );
}
