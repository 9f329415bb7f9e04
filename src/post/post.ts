// A post on one machine: its folder, its messaging servers, its desk; what is on the disk is enough to begin again.

import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import {
  fromBase64url,
  importKey,
  inboxOf,
  isQuestion,
  type JoinCode,
  joinText,
  type Question,
} from '../link/index.ts';
import { createStream, dialServers, isLetIn, type NodeLine } from '../link/node/index.ts';
import type { Clock } from './clock.ts';
import { openDesk } from './desk.ts';
import type { Desk } from './desk-parts.ts';
import { type Devices, openDevices } from './devices.ts';
import type { OpenDisk } from './disk.ts';
import { type Incident, openIncident } from './incident.ts';
import { readJson, writeJson, writeText } from './json-file.ts';
import { openLog } from './log.ts';
import { leafUsersConfig, serverConfig, usersConfig } from './server/config.ts';
import { runServer, type ServerProcess } from './server/process.ts';
import { ensureMirror, ensureStream } from './server/stream.ts';

export interface Ports {
  readonly client: number;
  readonly web: number;
  readonly leaf: number;
  /** between the servers of a cluster */
  readonly cluster: number;
}

export interface PostOptions {
  /** where everything of the incident lies; made where it is not there */
  readonly folder: string;
  /** where phones open the page, ending in a slash */
  readonly address: string;
  readonly command: string;
  /** the first server's ports; further servers take the next ten */
  readonly ports: Ports;
  readonly servers: 1 | 3;
  /** the host on which vehicles are let in */
  readonly leafHost?: string;
  /** names of vehicles with a server of their own */
  readonly vehicles?: readonly string[];
  readonly clock: Clock;
  readonly disk?: OpenDisk;
  /** where the post's log lies, on a disk of its own where wished; the default is the folder */
  readonly logFolder?: string;
}

export interface Post {
  readonly incident: Incident;
  readonly devices: Devices;
  readonly desk: Desk;
  readonly line: NodeLine;
  readonly servers: readonly ServerProcess[];
  /** the port of a WebSocket to any server that is up */
  readonly webPorts: readonly number[];
  readonly leafPort: number;
  issue(name: string): Promise<JoinCode & { readonly text: string }>;
  putOut(device: string): Promise<boolean>;
  stop(): Promise<void>;
}

const HOST = '127.0.0.1';
/** A server that is down for longer reads its users when it comes back, ms. */
const LET_IN_WITHIN = 3_000;
export const LEAF_USER = 'vehicle';

/** The ports of one of several servers on a machine. */
export const portsOf = (ports: Ports, index: number): Ports => ({
  client: ports.client + index * 10,
  web: ports.web + index * 10,
  leaf: ports.leaf + index * 10,
  cluster: ports.cluster + index * 10,
});

/** Starts servers and desk. Rejects with a sentence where something is in the way. */
export async function startPost(options: PostOptions): Promise<Post> {
  const { folder, clock, command } = options;
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const incident = await openIncident(join(folder, 'incident.json'), () => clock.newName());
  const devices = await openDevices(join(folder, 'devices.json'));
  const raw = fromBase64url(incident.key);
  if (raw === null) throw new Error('the incident has no key');
  const key = await importKey(raw);

  const questionsPath = join(folder, 'questions.json');
  const numbers = Array.from({ length: options.servers }, (_, index) => index);
  const homes = numbers.map((index) => join(folder, `server-${index + 1}`));
  const writeUsers = async (): Promise<void> => {
    const text = usersConfig(incident.id, incident.post.nkey, devices.all());
    for (const home of homes) await writeText(join(home, 'users.conf'), text);
  };
  const servers: ServerProcess[] = [];
  for (const [index, home] of homes.entries()) {
    await mkdir(home, { recursive: true });
    const { client, web, leaf, cluster } = portsOf(options.ports, index);
    const others = numbers.filter((one) => one !== index).map((one) => portsOf(options.ports, one).cluster);
    const values = {
      name: `post-${index + 1}`,
      pid: join(home, 'server.pid'),
      listen: `${HOST}:${client}`,
      web: `${HOST}:${web}`,
      leaf: `${options.leafHost ?? HOST}:${leaf}`,
      cluster: `${HOST}:${cluster}`,
      routes: others.map((port) => `"nats-route://${HOST}:${port}"`).join(', '),
      store: join(home, 'jetstream'),
    };
    await writeText(join(home, 'leaf-users.conf'), leafUsersConfig(LEAF_USER, incident.vehiclePassword));
    await writeText(
      join(home, 'server.conf'),
      await serverConfig(options.servers === 3 ? 'cluster' : 'post', values),
    );
  }
  await writeUsers();
  for (const [index, home] of homes.entries())
    servers.push(
      runServer({
        command,
        config: join(home, 'server.conf'),
        pidFile: join(home, 'server.pid'),
        host: HOST,
        port: portsOf(options.ports, index).client,
        again: true,
      }),
    );
  const ends: (() => unknown)[] = [() => Promise.all(servers.map((server) => server.stop()))];
  const stopAll = async (): Promise<void> => {
    for (const end of ends.splice(0).reverse()) await end();
  };
  try {
    await Promise.all(servers.map((server) => server.ready()));
    const addresses = numbers.map((index) => `${HOST}:${portsOf(options.ports, index).client}`);
    const line = dialServers(addresses, { seed: incident.post.seed, inbox: inboxOf('post') });
    ends.push(() => line.close());
    const connection = await connected(line);
    const desk = await openDesk({
      incident: incident.id,
      key,
      line,
      devices,
      questions: await readQuestions(questionsPath),
      keepQuestions: (questions) => writeJson(questionsPath, questions),
      openLog: (each) =>
        openLog(
          join(options.logFolder ?? folder, 'log.ndjson'),
          each,
          ...(options.disk === undefined ? [] : [options.disk]),
        ),
      clock: clock.now,
      newId: clock.newName,
    });
    ends.push(() => desk.close());
    const { name, made } = await ensureStream(connection, options.servers);
    ends.push(desk.follow(createStream(line.connection, name, made)));
    for (const vehicle of options.vehicles ?? []) ends.push(followVehicle(line, desk, vehicle));
    const readUsersAgain = async (): Promise<void> => {
      await writeUsers();
      for (const server of servers) server.reload();
    };
    return {
      incident,
      devices,
      desk,
      line,
      servers,
      webPorts: numbers.map((index) => portsOf(options.ports, index).web),
      leafPort: options.ports.leaf,
      issue: async (who) => {
        const { device, seed } = await devices.issue(who, new Date(clock.now()).toISOString());
        await readUsersAgain();
        // Servers read their users a moment after they are told; a code that is shown is good at once.
        await isLetIn(addresses, { seed, inbox: inboxOf(device.device) }, LET_IN_WITHIN);
        const code: JoinCode = {
          address: options.address,
          incident: incident.id,
          device: device.device,
          name: device.name,
          seed,
          key: raw,
        };
        return { ...code, text: joinText(code) };
      },
      putOut: async (device) => {
        const done = await devices.putOut(device, new Date(clock.now()).toISOString());
        await readUsersAgain();
        return done;
      },
      stop: stopAll,
    };
  } catch (error) {
    await stopAll();
    throw error;
  }
}

async function readQuestions(path: string): Promise<readonly Question[]> {
  const kept = await readJson(path);
  return Array.isArray(kept) ? kept.filter(isQuestion) : [];
}

const VEHICLE_AGAIN = 2_000;

/** Makes the vehicle's server keep messages, and reads what it kept, as soon as it is reached for the first time. */
function followVehicle(line: NodeLine, desk: Desk, vehicle: string): () => void {
  let end: (() => void) | null = null;
  let over = false;
  const look = async (): Promise<void> => {
    while (!over && end === null) {
      const connection = line.connection();
      try {
        if (connection === null) throw new Error('not connected');
        const { name, made } = await ensureMirror(connection, vehicle);
        if (!over) end = desk.follow(createStream(line.connection, name, made));
      } catch {
        await new Promise((resolve) => setTimeout(resolve, VEHICLE_AGAIN));
      }
    }
  };
  void look();
  return () => {
    over = true;
    end?.();
  };
}

const CONNECT_WITHIN = 20_000;

function connected(line: NodeLine): Promise<NonNullable<ReturnType<NodeLine['connection']>>> {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('the messaging server lets nobody in')), CONNECT_WITHIN);
    let end: (() => void) | null = null;
    end = line.watch(({ state }) => {
      const connection = line.connection();
      if (state !== 'connected' || connection === null) return;
      clearTimeout(late);
      queueMicrotask(() => end?.());
      resolve(connection);
    });
  });
}
