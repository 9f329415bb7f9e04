// A second place that remembers how far each log had come: a log put back to an older whole copy of itself is noticed.

import type { Head } from '../chain/index.ts';

/** The little of a browser's storage that is used: it lies apart from the database, in files of its own. */
export type WitnessStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** It knows a record's name, a count and a hash; nothing that was said. */
export interface Witness {
  /** remembers the end of a log that is on the disk already; never an earlier one than it knows */
  note(record: string, end: Head): void;
  /** how far the log had come at least, or null where it is not known */
  of(record: string): Head | null;
  forget(record: string): void;
  /** the records that it knows */
  records(): readonly string[];
}

const PREFIX = 'fieldsay-end-';

function read(text: string | null): Head | null {
  const [, count, hash] = /^(\d+) ([0-9a-f]{64})$/.exec(text ?? '') ?? [];
  return count === undefined || hash === undefined ? null : { count: Number(count), hash };
}

/** A witness in the browser's small storage; without one it knows nothing, and nothing fails. */
export function createWitness(storage: WitnessStorage | null): Witness {
  const quietly = <T>(act: (storage: WitnessStorage) => T, otherwise: T): T => {
    try {
      return storage === null ? otherwise : act(storage);
    } catch {
      return otherwise;
    }
  };
  const of = (record: string): Head | null => quietly((at) => read(at.getItem(PREFIX + record)), null);
  return {
    of,
    note: (record, { count, hash }) => {
      if (count <= (of(record)?.count ?? 0)) return;
      quietly((at) => at.setItem(PREFIX + record, `${count} ${hash}`), undefined);
    },
    forget: (record) => quietly((at) => at.removeItem(PREFIX + record), undefined),
    records: () =>
      quietly((at) => {
        const names = Array.from({ length: at.length }, (_, index) => at.key(index) ?? '');
        return names.filter((name) => name.startsWith(PREFIX)).map((name) => name.slice(PREFIX.length));
      }, []),
  };
}
