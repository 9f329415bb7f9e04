// A new version of the page is taken only when a person agrees, and is not offered during an examination.

import { registerSW } from 'virtual:pwa-register';
import { type Signal, signal } from '@preact/signals';

export interface Update {
  /** a new version waits */
  readonly waits: Signal<boolean>;
  /** a person wants to take it later: it is offered again under "More" and when the page is next opened */
  readonly putOff: Signal<boolean>;
  /** everything that the page needs is on the device */
  readonly offline: Signal<boolean>;
  /** registers the service worker, which then fetches all that the page needs: not before the page can be used */
  start(): void;
  take(): void;
}

/** Nothing is fetched or registered before `start`. */
export function createUpdate(): Update {
  const waits = signal(false);
  const putOff = signal(false);
  const offline = signal(false);
  let update: ReturnType<typeof registerSW> | null = null;
  const start = (): void => {
    update ??= registerSW({
      immediate: true,
      onNeedRefresh: () => {
        waits.value = true;
      },
      onOfflineReady: () => {
        offline.value = true;
      },
    });
  };
  return { waits, putOff, offline, start, take: () => void update?.(true) };
}
