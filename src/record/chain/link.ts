// What is hashed for each event: the hash of the one before it and the event's canonical bytes, so that none can be altered alone.

import { canonical } from './canonical.ts';

/** SHA-256 (FIPS 180-4) of a text's UTF-8 bytes, in hexadecimal; handed in, since this stage touches no browser. */
export type Digest = (text: string) => Promise<string>;

/** The hash before a record's first event: it binds the chain to its record. */
export const beginChain = (record: string, digest: Digest): Promise<string> =>
  digest(`fieldsay-log/1 ${record}`);

/** The hash of an event (as it is stored) that follows one with the hash `previous`. */
export const linkAfter = (previous: string, event: unknown, digest: Digest): Promise<string> =>
  digest(`${previous}\n${canonical(event)}`);
