// One page writes and the others follow: Web Locks (W3C) say which, a BroadcastChannel (HTML) tells what was written.

export type Role = 'asking' | 'writes' | 'follows';

/** What pages tell each other; never a patient's words. */
export type Told =
  | { readonly told: 'kept'; readonly record: string }
  | { readonly told: 'locked' }
  /** a passphrase was set: there is something to lock now */
  | { readonly told: 'guarded' }
  | { readonly told: 'wiped' };

export interface Pages {
  /** takes the writing over from the page that has it */
  takeOver(): void;
  tell(told: Told): void;
}

const NAME = 'fieldsay-writer';

/** Asks to write; `changed` hears every change of role, `hear` what the other pages tell. */
export function joinPages(changed: (role: Role) => void, hear: (told: Told) => void): Pages {
  const channel = new BroadcastChannel('fieldsay');
  channel.onmessage = ({ data }: MessageEvent<Told>) => hear(data);
  const { locks } = navigator as { locks?: LockManager };
  const hold = (): Promise<never> => {
    changed('writes');
    return new Promise(() => undefined);
  };
  // The lock is given back only when the page goes; it is lost before that only to a page that takes it over.
  const wait = (): void => void locks?.request(NAME, hold).catch(lost);
  const lost = (): void => {
    changed('follows');
    wait();
  };
  if (locks === undefined) changed('writes');
  else
    locks
      .request(NAME, { ifAvailable: true }, (lock) => {
        if (lock !== null) return hold();
        changed('follows');
        wait();
        return undefined;
      })
      .catch(lost);
  return {
    takeOver: () => void locks?.request(NAME, { steal: true }, hold).catch(lost),
    tell: (told) => channel.postMessage(told),
  };
}
