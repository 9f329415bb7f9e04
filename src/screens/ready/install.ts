// Installing the page where the browser offers it: the offer is kept until a person takes it.

import { type ReadonlySignal, signal } from '@preact/signals';

/** The browser's offer (`beforeinstallprompt`: Chromium; other browsers have it in their menu only). */
interface Offer extends Event {
  prompt(): Promise<unknown>;
}

export interface Install {
  /** the browser offers to install the page now */
  readonly isOffered: ReadonlySignal<boolean>;
  /** takes the offer; the browser asks the person once more */
  take(): Promise<void>;
}

/** Keeps the offer that `target` is told of. */
export function keepOffer(target: Window): Install {
  const offer = signal<Offer | null>(null);
  const isOffered = signal(false);
  const set = (now: Offer | null): void => {
    offer.value = now;
    isOffered.value = now !== null;
  };
  target.addEventListener('beforeinstallprompt', (event) => {
    // Not by a bar of the browser in the middle of an examination, but where it is looked for.
    event.preventDefault();
    set(event as Offer);
  });
  target.addEventListener('appinstalled', () => set(null));
  return {
    isOffered,
    take: async () => {
      const now = offer.peek();
      set(null);
      await now?.prompt();
    },
  };
}
