// A new version of the page is taken only when a person agrees, and is not offered during an examination.

import { registerSW } from 'virtual:pwa-register';
import { type Signal, signal } from '@preact/signals';

export interface Update {
  /** a new version waits */
  readonly waits: Signal<boolean>;
  /** everything that the page needs is on the device */
  readonly offline: Signal<boolean>;
  take(): void;
}

/** Registers the service worker. */
export function createUpdate(): Update {
  const waits = signal(false);
  const offline = signal(false);
  const update = registerSW({
    onNeedRefresh: () => {
      waits.value = true;
    },
    onOfflineReady: () => {
      offline.value = true;
    },
  });
  return { waits, offline, take: () => void update(true) };
}
