// The few things that the store asks of a database: read one, read what lies under a prefix, write all or nothing.

/** A key is a list: its first part says what lies there, a number in it keeps an order. */
export type Key = readonly (string | number)[];

export interface Placed {
  readonly key: Key;
  readonly value: unknown;
}

/** What is done in one transaction. */
export interface Write {
  /** written whether or not something lies there */
  readonly put?: readonly Placed[];
  /** written only where nothing lies there; else the whole write fails as `taken` */
  readonly add?: readonly Placed[];
  /** nothing may lie there, or the whole write fails as `taken`; nothing lies there afterwards */
  readonly absent?: readonly Key[];
  /** what lies there is replaced by what `to` makes of it, with nobody writing in between; undefined leaves it as it is */
  readonly change?: readonly { readonly key: Key; readonly to: (lies: unknown) => unknown }[];
  readonly remove?: readonly Key[];
  /** everything under these prefixes */
  readonly removeUnder?: readonly Key[];
}

/** Everything rejects with a `StoreFailure` and nothing else. */
export interface Shelf {
  /** undefined where nothing lies there */
  get(key: Key): Promise<unknown>;
  /** what lies under the prefix, in the order of the keys; `from` is the least next part of a key */
  under(prefix: Key, from?: number): Promise<readonly Placed[]>;
  keysUnder(prefix: Key): Promise<readonly Key[]>;
  /** all or nothing; resolves when it is on the disk */
  write(write: Write): Promise<void>;
}
