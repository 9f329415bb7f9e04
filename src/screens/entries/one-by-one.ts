// Which entries may be confirmed several at a time, remembered for each: a long exam asks of all of them again and again.

import { aloneBecause } from '../../record/index.ts';
import { perEntry } from '../../timeline/index.ts';

/** True where the entry waits to be confirmed and may be confirmed together with others. */
export const mayGoTogether = perEntry((entry) => entry.state === 'heard' && aloneBecause(entry) === null);
