// The command line's way in: the only place that reads the clock, the arguments and the streams.

import { run } from './run.ts';

// A reader that has seen enough ("| head") closes the pipe; that is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await run(process.argv.slice(2), {
  otherwise: { startedAt: Date.now(), zone: Intl.DateTimeFormat().resolvedOptions().timeZone },
  print: (text) => process.stdout.write(`${text}\n`),
  complain: (text) => process.stderr.write(`${text}\n`),
});
