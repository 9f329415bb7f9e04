// Measures the link: `npm run bench:link` for growth and two minutes of 200 responders, `-- --faults` for faults under load.

import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { HINDRANCE } from '../../post/scene.ts';
import { runFaults } from './faults.ts';
import { LOAD_HEAD, runLoad } from './load.ts';

const { values } = parseArgs({
  options: {
    faults: { type: 'boolean', default: false },
    responders: { type: 'string' },
    seconds: { type: 'string', default: '120' },
  },
});

if (HINDRANCE !== '') {
  console.error(HINDRANCE);
  process.exit(1);
}
console.log(`${cpus().length} processors, ${cpus()[0]?.model}; phones, post and server on this one machine`);
if (values.faults) await runFaults(Number(values.responders ?? 50));
else {
  console.log(`\n${LOAD_HEAD}`);
  if (values.responders === undefined) {
    for (const count of [10, 50, 100]) await runLoad(count, 30);
    await runLoad(200, Number(values.seconds));
  } else
    for (const count of values.responders.split(',')) await runLoad(Number(count), Number(values.seconds));
}
process.exit(0);
