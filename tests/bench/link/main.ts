// Measures the link: `npm run bench:link` for growth and two minutes of 200 responders, `-- --faults` for faults under load,
// `-- --write` to keep the tables in results.md.

import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { HINDRANCE, SERVER } from '../../post/scene.ts';
import { FAULT_NAMES, FAULTS_HEAD, runFaults } from './faults.ts';
import { LOAD_HEAD, runLoad } from './load.ts';
import { machineWords, writePart } from './results.ts';

const { values } = parseArgs({
  options: {
    faults: { type: 'boolean', default: false },
    /** only these faults, by commas */
    only: { type: 'string', default: FAULT_NAMES.join(',') },
    /** each fault so many times */
    times: { type: 'string', default: '1' },
    responders: { type: 'string' },
    seconds: { type: 'string', default: '120' },
    write: { type: 'boolean', default: false },
  },
});

if (HINDRANCE !== '') {
  console.error(HINDRANCE);
  process.exit(1);
}
const words = machineWords(SERVER.kind === 'found' ? SERVER.version : '');
const rows: string[] = [];
const say = (row: string): void => {
  rows.push(row);
  console.log(row);
};
console.log(
  `${cpus().length} processors, ${cpus()[0]?.model}; phones, post and server on this one machine\n`,
);
const head = values.faults ? FAULTS_HEAD : LOAD_HEAD;
console.log(head);
if (values.faults)
  await runFaults(values.only.split(','), Number(values.responders ?? 50), Number(values.times), say);
else if (values.responders === undefined) {
  for (const count of [10, 50, 100]) say(await runLoad(count, 30));
  say(await runLoad(200, Number(values.seconds)));
} else
  for (const count of values.responders.split(',')) say(await runLoad(Number(count), Number(values.seconds)));
if (values.write) writePart(values.faults ? 'faults' : 'load', `${words}\n\n${head}\n${rows.join('\n')}`);
process.exit(0);
