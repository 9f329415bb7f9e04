// Names what can go wrong with the device's own database, so that a screen can say it in words.

export type FailureKind =
  /** the browser gives no database at all, such as in a locked-down private window */
  | 'unavailable'
  /** another page holds an older version of the database open */
  | 'blocked'
  /** the database was made by a later version of this program */
  | 'newer'
  /** the device, or what the browser allots to the page, is full */
  | 'full'
  /** the transaction was given up by the browser */
  | 'aborted'
  /** one request of the transaction failed */
  | 'request'
  /** the place in the log is taken already: another page wrote there */
  | 'taken';

/** Thrown inside the store and turned into words where the store meets the page. */
export interface StoreFailure extends Error {
  readonly failure: FailureKind;
}

export const storeFailure = (failure: FailureKind, detail: string): StoreFailure =>
  Object.assign(new Error(`${failure}: ${detail}`), { failure });

export const isStoreFailure = (thrown: unknown): thrown is StoreFailure =>
  thrown instanceof Error && 'failure' in thrown;

// Names of DOMException, Indexed Database API 3.0 (W3C), section 3, and Storage (WHATWG) for the quota.
const KINDS: Readonly<Record<string, FailureKind>> = {
  QuotaExceededError: 'full',
  ConstraintError: 'taken',
  AbortError: 'aborted',
  VersionError: 'newer',
  SecurityError: 'unavailable',
  InvalidStateError: 'aborted',
};

/** The failure that a browser's error means; `otherwise` where its name says nothing of use. */
export function failureOf(error: unknown, otherwise: FailureKind): StoreFailure {
  if (isStoreFailure(error)) return error;
  const name = error instanceof Error ? error.name : '';
  return storeFailure(KINDS[name] ?? otherwise, name);
}
