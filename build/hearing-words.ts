// Works out what the page listens for where the page is built: on a phone it would take a minute of each start.

import type { Plugin } from 'vite';
import { hearingFiles } from '../src/replay/hearing-setup.ts';
import { workedOutOnce } from '../src/replay/worked-out-once.ts';

/** The page imports it under this name. */
const NAME = 'virtual:hearing-words';
const RESOLVED = `\0${NAME}`;

/** The plugin. */
export const hearingWords = (): Plugin => ({
  name: 'hearing-words',
  resolveId: (id) => (id === NAME ? RESOLVED : null),
  load: (id) =>
    id === RESOLVED ? `export const workedOut = ${JSON.stringify(workedOutOnce(hearingFiles()))};` : null,
});
