// What the post knows of a device while it runs, and what is not as it should be with it, in plain words.

import { type Account, runsInWords } from '../link/index.ts';

export interface Known {
  readonly account: Account;
  /** epoch ms, the post's clock; null before it was heard of since the post began */
  heardAt: number | null;
  /** how far its clock is ahead of the post's, ms; null where it is not known */
  ahead: number | null;
  /** how many messages it says that it made */
  made: number | null;
  /** how many messages came under a number that another one has */
  contrary: number;
}

/** Nothing is known of it yet. */
export const unknown = (account: Account): Known => ({
  account,
  heardAt: null,
  ahead: null,
  made: null,
  contrary: 0,
});

/** Whole sentences; empty where all is well. */
export function troublesOf({ account, made, ahead, contrary }: Known): readonly string[] {
  const { missing, spoiled, broken, upTo } = account.standing();
  const minutes = Math.round(Math.abs(ahead ?? 0) / 60_000);
  return [
    ...(missing.length === 0
      ? []
      : [
          `Missing: message ${runsInWords(missing)}. What came after it is shown and may be corrected by it.`,
        ]),
    ...spoiled.map(({ seq, why }) => `Message ${seq} cannot be read: ${why}. It is kept and not shown.`),
    ...(broken === null
      ? []
      : [
          `Message ${broken.seq} does not follow message ${upTo}: forged, or two phones use one code. From there on nothing is taken in; give the phone a fresh code.`,
        ]),
    ...(contrary === 0
      ? []
      : [`${contrary} messages came under a number that was taken: what came first stays.`]),
    ...(minutes < 2
      ? []
      : [`Its clock is ${minutes} min ${(ahead ?? 0) > 0 ? 'ahead of' : 'behind'} the post’s.`]),
    ...(made === null || made <= account.count()
      ? []
      : [`${made - account.count()} messages are still on the phone or on their way.`]),
  ];
}
