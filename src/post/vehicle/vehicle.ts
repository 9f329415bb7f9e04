// A vehicle's own server: it serves its crew while cut off from the post, which fetches from it what it kept meanwhile.

import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { writeText } from '../json-file.ts';
import type { Ports } from '../post.ts';
import { serverConfig } from '../server/config.ts';
import { runServer, type ServerProcess } from '../server/process.ts';

export interface VehicleOptions {
  readonly folder: string;
  /** as the post knows it */
  readonly name: string;
  /** the post's address for vehicles with its password: `nats://vehicle:…@host:port` */
  readonly post: string;
  /** the post's users.conf, or a copy of it: who may connect */
  readonly users: string;
  readonly command: string;
  readonly ports: Ports;
}

export interface Vehicle {
  readonly server: ServerProcess;
  readonly webPorts: readonly number[];
  /** takes the users over anew: whom the post put out meanwhile is put out here */
  readUsersAgain(): Promise<void>;
  stop(): Promise<void>;
}

const HOST = '127.0.0.1';

/** Starts it, with the post or without. Rejects with a sentence where something is in the way. */
export async function startVehicle(options: VehicleOptions): Promise<Vehicle> {
  const { folder, name, post, command, ports } = options;
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const takeUsers = async (): Promise<void> =>
    writeText(join(folder, 'users.conf'), await readFile(options.users, 'utf8'));
  await takeUsers();
  const config = join(folder, 'server.conf');
  const pidFile = join(folder, 'server.pid');
  const values = {
    name,
    pid: pidFile,
    listen: `${HOST}:${ports.client}`,
    web: `${HOST}:${ports.web}`,
    store: join(folder, 'jetstream'),
    post,
  };
  await writeText(config, await serverConfig('vehicle', values));
  const server = runServer({ command, config, pidFile, host: HOST, port: ports.client, again: true });
  try {
    await server.ready();
  } catch (error) {
    await server.stop();
    throw error;
  }
  return {
    server,
    webPorts: [ports.web],
    readUsersAgain: async () => {
      await takeUsers();
      server.reload();
    },
    stop: () => server.stop(),
  };
}
