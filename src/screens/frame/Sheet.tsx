// A sheet over the page: it takes the keyboard's focus, Escape closes it, and the focus goes back where it was.

import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { LastSaid } from '../talk/LastSaid.tsx';
import { focusNear, placeOf } from './keep-focus.ts';

interface Props {
  readonly title: string;
  readonly close: () => void;
  /** the words of the button that closes it */
  readonly closeWords?: string;
  /** closing it is what is asked for: the button stands out */
  readonly closeFirst?: boolean;
  readonly children: ComponentChildren;
}

export function Sheet({ title, close, closeWords = 'Close', closeFirst = false, children }: Props) {
  const box = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = box.current;
    const before = document.activeElement;
    const place = before instanceof HTMLElement && before !== document.body ? placeOf(before) : null;
    dialog?.showModal();
    return () => {
      dialog?.close();
      // Browsers give the focus back to what had it only where the sheet was closed and not taken away.
      if (place === null) return;
      if (before instanceof HTMLElement && before.isConnected) before.focus();
      else focusNear(place);
    };
  }, []);
  return (
    <dialog ref={box} class="sheet" aria-label={title} onCancel={close}>
      {/* A sheet scrolls, and so must be reachable with the keyboard alone. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrollable region */}
      <div class="sheet-body" tabIndex={0}>
        <h2>{title}</h2>
        {children}
      </div>
      <button type="button" class={`button big wide ${closeFirst ? 'primary' : ''}`} onClick={close}>
        {closeWords}
      </button>
      <LastSaid />
    </dialog>
  );
}
