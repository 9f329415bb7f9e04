// The post's account of one device: which messages it has, which are missing, and where the chain was broken.

import { type Run, runsOf } from './word.ts';

/** A message as the account sees it; `spoiled` could not be opened or read. */
export type Came =
  | { readonly kind: 'message'; readonly seq: number; readonly before: string; readonly hash: string }
  | { readonly kind: 'spoiled'; readonly seq: number; readonly why: string };

export type Taken =
  /** new */
  | 'taken'
  /** it is here already */
  | 'again'
  /** another message with this number is here already, and stays */
  | 'contrary';

export interface Broken {
  /** the first message that does not follow the one before it */
  readonly seq: number;
}

export interface Standing {
  /** the last number up to which nothing is missing */
  readonly upTo: number;
  /** the hash after it */
  readonly hash: string;
  readonly beyond: readonly Run[];
  readonly missing: readonly Run[];
  readonly spoiled: readonly { readonly seq: number; readonly why: string }[];
  /** from here on messages are kept aside: they follow something else than what is here */
  readonly broken: Broken | null;
}

export interface Account {
  take(came: Came): Taken;
  standing(): Standing;
  /** true where the message is here and stands in the chain, as far as its neighbours are here */
  admits(seq: number): boolean;
  readonly count: () => number;
}

/** An account with nothing in it; `begin` is the hash before the first message. */
export function createAccount(begin: string): Account {
  const all = new Map<number, Came>();
  /** those beyond what is whole, so that a long account is not looked through for each word to its phone */
  const later = new Set<number>();
  const spoiled: Extract<Came, { kind: 'spoiled' }>[] = [];
  // What is whole from the first message on; the rest is looked at anew when it changes.
  let upTo = 0;
  let hash = begin;
  let broken: number | null = null;

  const follows = (came: Came): boolean => {
    if (came.kind === 'spoiled') return true;
    const last = all.get(came.seq - 1);
    // After a spoiled message nothing is known of what its hash was.
    if (last?.kind === 'spoiled') return true;
    return came.before === hash;
  };
  const advance = (): void => {
    while (broken === null) {
      const next = all.get(upTo + 1);
      if (next === undefined) return;
      if (!follows(next)) {
        broken = next.seq;
        return;
      }
      upTo = next.seq;
      later.delete(upTo);
      if (next.kind === 'message') hash = next.hash;
    }
  };

  return {
    take: (came) => {
      const here = all.get(came.seq);
      if (here !== undefined) {
        const same =
          here.kind === came.kind &&
          (came.kind === 'spoiled' || (here.kind === 'message' && here.hash === came.hash));
        return same ? 'again' : 'contrary';
      }
      all.set(came.seq, came);
      later.add(came.seq);
      if (came.kind === 'spoiled') spoiled.push(came);
      advance();
      return 'taken';
    },
    standing: () => {
      const last = Math.max(upTo, ...later);
      const runs = runsOf(later);
      const missing: number[] = [];
      for (let seq = upTo + 1; seq < last && missing.length < 10_000; seq += 1)
        if (!all.has(seq)) missing.push(seq);
      return {
        upTo,
        hash,
        beyond: broken === null ? runs : [],
        missing: runsOf(missing),
        spoiled: [...spoiled],
        broken: broken === null ? null : { seq: broken },
      };
    },
    admits: (seq) => all.get(seq)?.kind === 'message' && (broken === null || seq < broken),
    count: () => all.size,
  };
}
