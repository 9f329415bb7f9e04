// What of the link is there from the start: whether this page is in an incident, and a code that it was opened with.

import { type Signal, signal } from '@preact/signals';
import type { Tools } from '../frame/tools.ts';
import type { Joined } from './joined/index.ts';

export interface LinkTool {
  /** null until it is used */
  readonly joined: Signal<Joined | null>;
  /** the code that the page was opened with, or null */
  readonly opened: string | null;
  /** fetches the rest; a second time it is there already */
  fetch(tools: Tools): Promise<Joined>;
  /** remembers over a restart that there is something to fetch */
  remember(isMember: boolean): void;
  isMember(): boolean;
}

const MEMBER = 'fieldsay-link';
const CODE = '#join=';

/** Takes a code out of the address at once, so that it stays in no history. */
export function createLink(storage: Storage | null, page: Window): LinkTool {
  const { href, hash, pathname } = page.location;
  const opened = hash.startsWith(CODE) ? href : null;
  if (opened !== null) page.history.replaceState(null, '', pathname);
  const joined = signal<Joined | null>(null);
  let fetching: Promise<Joined> | null = null;
  return {
    joined,
    opened,
    isMember: () => storage?.getItem(MEMBER) === 'member',
    remember: (isMember) => {
      if (isMember) storage?.setItem(MEMBER, 'member');
      else storage?.removeItem(MEMBER);
    },
    fetch: (tools) => {
      fetching ??= import('./joined/index.ts').then(async ({ createJoined }) => {
        joined.value = await createJoined(tools);
        return joined.value;
      });
      fetching.catch(() => {
        fetching = null;
      });
      return fetching;
    },
  };
}

/** Goes on with an incident that the page is in, or asks about the code that it was opened with. */
export function startLink(tools: Tools): void {
  const { link, sheet } = tools;
  if (link.opened !== null) {
    const ask = (): void => {
      sheet.value = 'link';
    };
    // The cautions come first.
    if (sheet.value === null) ask();
    else {
      const stop = sheet.subscribe((now) => {
        if (now !== null) return;
        queueMicrotask(() => {
          stop();
          ask();
        });
      });
    }
  }
  if (link.isMember()) void link.fetch(tools).catch(() => undefined);
}
