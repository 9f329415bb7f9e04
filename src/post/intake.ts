// Writes what comes to the post's log, in batches and in order; what the disk refuses waits, and nothing is written twice.

import { type KeptMessage, readRecordSubject } from '../link/index.ts';
import type { Kept, Logged, PostLog } from './log.ts';

export interface IntakeParts {
  readonly log: PostLog;
  /** the subjects that the log has */
  readonly written: Set<string>;
  readonly incident: string;
  /** epoch ms */
  readonly clock: () => number;
  readonly counts: { again: number; foreign: number; batches: number };
  /** is called with what is on the disk now; the next batch waits for it */
  readonly wrote: (kept: readonly Kept[]) => Promise<void>;
}

export interface Intake {
  /** `made` names the stream that it was read from */
  take(message: KeptMessage, made: string): void;
  /** in plain words, empty where all is well */
  troubles(): readonly string[];
  /** settles when all that came so far is written */
  settled(): Promise<void>;
  /** settles when nothing more is written; what waits is on the server and on the phones */
  close(): Promise<void>;
}

/** After a write that failed, ms. */
const AGAIN = 2_000;
const BATCH = 1_000;

export function createIntake({ log, written, incident, clock, counts, wrote }: IntakeParts): Intake {
  let queue: { readonly message: KeptMessage; readonly made: string }[] = [];
  let trouble: string | null = null;
  let writing: Promise<void> | null = null;
  let over = false;

  /** The same message may come twice, from the server and from a vehicle: only one is written. */
  const freshOf = (batch: typeof queue): typeof queue => {
    const seen = new Set<string>();
    return batch.filter(({ message: { subject } }) => {
      if (readRecordSubject(subject)?.incident !== incident) {
        counts.foreign += 1;
        return false;
      }
      if (written.has(subject) || seen.has(subject)) {
        counts.again += 1;
        return false;
      }
      seen.add(subject);
      return true;
    });
  };

  const writeOne = async (): Promise<void> => {
    const batch = queue.slice(0, BATCH);
    const [before, at] = [{ ...counts }, clock()];
    const logged = freshOf(batch).map(({ message, made }): Logged => ({ ...message, made, at }));
    const added = logged.length === 0 ? { kind: 'added' as const, spots: [] } : await log.add(logged);
    if (added.kind !== 'added') {
      // They are counted when they are through.
      Object.assign(counts, { again: before.again, foreign: before.foreign });
      trouble = `NOT WRITTEN at the post: ${added.why}. Phones keep everything and are told of nothing that is not written; it is tried again.`;
      await new Promise((resolve) => setTimeout(resolve, AGAIN));
      return;
    }
    trouble = null;
    queue = queue.slice(batch.length);
    counts.batches += 1;
    for (const { subject } of logged) written.add(subject);
    await wrote(
      logged.flatMap((one, index) => {
        const spot = added.spots[index];
        return spot === undefined ? [] : [{ logged: one, spot }];
      }),
    );
  };

  const write = async (): Promise<void> => {
    try {
      while (queue.length > 0 && !over) await writeOne();
    } finally {
      // In the same breath as the last look at the queue: what comes after it begins another writing.
      writing = null;
    }
  };

  return {
    take: (message, made) => {
      if (over) return;
      queue.push({ message, made });
      writing ??= write();
    },
    troubles: () => (trouble === null ? [] : [trouble]),
    settled: async () => {
      while (writing !== null) await writing;
    },
    close: async () => {
      over = true;
      await writing?.catch(() => undefined);
    },
  };
}
