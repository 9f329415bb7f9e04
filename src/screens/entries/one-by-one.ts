// Which entries may be confirmed several at a time, remembered for each: a long exam asks of all of them again and again.

import { aloneBecause, type Entry } from '../../record/index.ts';
import { perThing } from '../../timeline/index.ts';

/** True where the entry waits to be confirmed and may be confirmed together with others. */
export const mayGoTogether = perThing(
  (entry: Entry) => entry.state === 'heard' && aloneBecause(entry) === null,
);
