// Starts a vehicle's server beside its crew: the page and the link, with or without the post.

import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { findServer } from '../server/binary.ts';
import { serve } from '../web/serve.ts';
import { pageHandle } from '../web/web.ts';
import { startVehicle } from './vehicle.ts';

const PAGE = fileURLToPath(new URL('../../../dist', import.meta.url));
const PORTS = { client: 24_322, web: 24_323, leaf: 24_324, cluster: 24_325 } as const;
const USAGE = `npm run vehicle -- --name NAME --post URL --users FILE [options]
  --name NAME     as the post was told with --vehicle
  --post URL      what the post printed for this vehicle
  --users FILE    the post's users.conf, or a copy of it; it is read again every minute
  --folder DIR    (default: ./vehicle)   --host HOST (default: localhost)   --port NUMBER (default: 8430)
  --cert FILE --key FILE   certificate and key as PEM; the same name as the post's, so that a phone finds its records`;
const USERS_AGAIN = 60_000;

const fail = (text: string, status: number): never => {
  process.stderr.write(`${text}\n`);
  process.exit(status);
};

try {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({
    options: {
      name: text,
      post: text,
      users: text,
      folder: text,
      host: text,
      port: text,
      cert: text,
      key: text,
    },
  });
  const { name, post, users, folder = 'vehicle', host = 'localhost', port = '8430', cert, key } = values;
  if (name === undefined || post === undefined || users === undefined) fail(USAGE, 2);
  else {
    const found = await findServer();
    if (found.kind === 'missing') fail(found.why, 1);
    else {
      const { command } = found;
      const vehicle = await startVehicle({
        folder: resolve(folder),
        name,
        post,
        users,
        command,
        ports: PORTS,
      });
      const secure =
        cert === undefined || key === undefined
          ? {}
          : { secure: { cert: await readFile(cert, 'utf8'), key: await readFile(key, 'utf8') } };
      const web = await serve(pageHandle(PAGE), vehicle.webPorts, { host, port: Number(port), ...secure });
      process.stdout.write(`Vehicle ${name} serves its crew on port ${web.port}. Ctrl-C ends it.\n`);
      setInterval(() => void vehicle.readUsersAgain().catch(() => undefined), USERS_AGAIN);
      const end = (): void => {
        void web
          .close()
          .then(() => vehicle.stop())
          .then(() => process.exit(0));
      };
      process.once('SIGINT', end);
      process.once('SIGTERM', end);
    }
  }
} catch (error) {
  fail(
    `The vehicle's server could not start: ${error instanceof Error ? error.message : String(error)}\n\n${USAGE}`,
    1,
  );
}
