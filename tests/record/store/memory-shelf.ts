// A shelf in memory that passes the same acceptance suite as the one on the disk; it can be told to fail, and be altered.

import { type Key, type Shelf, storeFailure, type Write } from '../../../src/record/store/index.ts';

export interface MemoryShelf extends Shelf {
  /** what lies there, by the JSON of its key; may be altered by a test as a stranger would */
  readonly lies: Map<string, unknown>;
  /** the next write fails so */
  failNext(kind: Parameters<typeof storeFailure>[0]): void;
}

const nameOf = (key: Key): string => JSON.stringify(key);
const keyOf = (name: string): Key => JSON.parse(name);

/** Keys are compared part by part, numbers before texts (Indexed Database API 3.0, "compare two keys"). */
function compare(a: Key, b: Key): number {
  for (let at = 0; at < Math.min(a.length, b.length); at += 1) {
    const [x = 0, y = 0] = [a[at], b[at]];
    if (typeof x !== typeof y) return typeof x === 'number' ? -1 : 1;
    if (x !== y) return x < y ? -1 : 1;
  }
  return a.length - b.length;
}

const isUnder = (key: Key, prefix: Key): boolean =>
  key.length > prefix.length && prefix.every((part, at) => key[at] === part);

export function memoryShelf(lies: Map<string, unknown> = new Map()): MemoryShelf {
  let failing: Parameters<typeof storeFailure>[0] | null = null;
  const keysUnder = (prefix: Key): Key[] =>
    [...lies.keys()]
      .map(keyOf)
      .filter((key) => isUnder(key, prefix))
      .sort(compare);
  return {
    lies,
    failNext: (kind) => {
      failing = kind;
    },
    get: async (key) => lies.get(nameOf(key)),
    keysUnder: async (prefix) => keysUnder(prefix),
    under: async (prefix, from) =>
      keysUnder(prefix)
        .filter((key) => from === undefined || compare(key, [...prefix, from]) >= 0)
        .map((key) => ({ key, value: lies.get(nameOf(key)) })),
    write: async ({ absent = [], put = [], add = [], change = [], remove = [], removeUnder = [] }: Write) => {
      if (failing !== null) {
        const kind = failing;
        failing = null;
        throw storeFailure(kind, 'a test wants it so');
      }
      const next = new Map(lies);
      if (absent.some((key) => next.has(nameOf(key)))) throw storeFailure('taken', 'ConstraintError');
      for (const key of remove) next.delete(nameOf(key));
      for (const prefix of removeUnder) for (const key of keysUnder(prefix)) next.delete(nameOf(key));
      for (const { key, value } of put) next.set(nameOf(key), value);
      for (const { key, value } of add) {
        if (next.has(nameOf(key))) throw storeFailure('taken', 'ConstraintError');
        next.set(nameOf(key), value);
      }
      for (const { key, to } of change) {
        const value = to(next.get(nameOf(key)));
        if (value !== undefined) next.set(nameOf(key), value);
      }
      lies.clear();
      for (const [name, value] of next) lies.set(name, value);
    },
  };
}
