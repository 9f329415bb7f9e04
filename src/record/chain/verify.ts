// Says whether a log is whole: every event in its place, each following the one before, none missing at the end.

import { eachOf } from './at-once.ts';
import { beginChain, type Digest, linkAfter } from './link.ts';

/** What lies at one place of the log. */
export type Stored =
  | { readonly place: number; readonly kind: 'event'; readonly event: unknown; readonly previous: string }
  /** it could not be read: altered bytes, another record's, or no event at all */
  | { readonly place: number; readonly kind: 'damaged'; readonly why: string };

/** What the record says of its own log. */
export interface Head {
  readonly count: number;
  /** the hash of the last event */
  readonly hash: string;
}

export type Fault =
  | { readonly fault: 'damaged'; readonly place: number; readonly why: string }
  /** events that the log must have had, and has not, from this place on */
  | { readonly fault: 'missing'; readonly place: number; readonly count: number }
  /** it is readable and does not follow what stands before it */
  | { readonly fault: 'out-of-chain'; readonly place: number }
  /** the log's last event is not the one that the record names as its last */
  | { readonly fault: 'other-end'; readonly place: number }
  /** what names the last event could not be read, so a cut at the end would go unseen */
  | { readonly fault: 'no-head'; readonly place: number }
  /** the log had come to event `was` before, with another content or further than it goes now */
  | { readonly fault: 'put-back'; readonly place: number; readonly was: number };

export interface Verdict {
  readonly faults: readonly Fault[];
  /** the last place before the first fault; 0 where there is none (places count from 1) */
  readonly lastWhole: number;
  /** the place and hash that the next event follows */
  readonly end: Head;
  /** the hash of each event that can be read, by its place */
  readonly hashes: ReadonlyMap<number, string>;
}

/**
 * Verifies a log, given in the order of its places; `head` is null where it could not be read. `witness` is where the log
 * had come to at least, from elsewhere; null where nobody knows.
 */
export async function verifyLog(
  record: string,
  log: readonly Stored[],
  head: Head | null,
  digest: Digest,
  witness: Head | null = null,
): Promise<Verdict> {
  const faults: Fault[] = [];
  let hash: string | null = await beginChain(record, digest);
  let place = 0;
  // Many hashes at once: each needs only what stands beside its own event.
  const hashes = await eachOf(log, async (one) =>
    one.kind === 'event' ? linkAfter(one.previous, one.event, digest) : null,
  );
  for (const [index, one] of log.entries()) {
    if (one.place > place + 1) {
      faults.push({ fault: 'missing', place: place + 1, count: one.place - place - 1 });
      hash = null;
    }
    if (one.kind === 'damaged') faults.push({ fault: 'damaged', place: one.place, why: one.why });
    // After a gap nothing is known of what stood before; the chain goes on from what is there.
    else if (hash !== null && one.previous !== hash) faults.push({ fault: 'out-of-chain', place: one.place });
    hash = hashes[index] ?? null;
    place = one.place;
  }
  if (head === null) {
    if (log.length > 0) faults.push({ fault: 'no-head', place: place + 1 });
  } else if (head.count > place) {
    faults.push({ fault: 'missing', place: place + 1, count: head.count - place });
  } else if (head.count < place || (hash !== null && head.hash !== hash)) {
    faults.push({ fault: 'other-end', place });
  }
  const byPlace = new Map(
    log.flatMap((one, index) => {
      const own = hashes[index] ?? null;
      return own === null ? [] : [[one.place, own] as const];
    }),
  );
  if (witness !== null) {
    const own = byPlace.get(witness.count);
    if (witness.count > Math.max(place, head?.count ?? 0))
      faults.push({ fault: 'put-back', place: place + 1, was: witness.count });
    else if (own !== undefined && own !== witness.hash)
      faults.push({ fault: 'put-back', place: witness.count, was: witness.count });
  }
  const lastWhole = Math.min(place, ...faults.map((one) => one.place - 1));
  const end = {
    count: Math.max(place, head?.count ?? 0),
    hash: hash ?? head?.hash ?? (await beginChain(record, digest)),
  };
  return { faults, lastWhole, end, hashes: byPlace };
}
