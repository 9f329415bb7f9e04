// Says at once, before anything is built, where the messaging server is missing or too old; its exit status is then 1.

import { findServer } from './binary.ts';

const found = await findServer();
if (found.kind === 'missing') {
  process.stderr.write(`${found.why}\n`);
  process.exitCode = 1;
}
