// Reads the command line of the post: what is asked for, or the sentence that says what is wrong.

import { parseArgs } from 'node:util';

export interface PostArguments {
  readonly folder: string;
  readonly host: string;
  readonly port: number;
  readonly address: string | null;
  readonly cert: string | null;
  readonly key: string | null;
  readonly servers: 1 | 3;
  readonly vehicles: readonly string[];
  readonly leafHost: string;
  /** the first of the messaging server's own ports */
  readonly serverPort: number;
}

export const USAGE = `npm run post -- [options]
  --help            says this
  --folder DIR      where the incident lies (default: ./incident)
  --host HOST       where to listen (default: localhost; 0.0.0.0 lets phones in)
  --port NUMBER     (default: 8420)
  --address URL     how phones reach the post, such as https://post.example:8420/ (default: from host and port)
  --cert FILE --key FILE   certificate and key as PEM, for https
  --cluster         three messaging servers on this machine that stand for each other
  --vehicle NAME    a vehicle with a server of its own; may be given several times
  --leaf-host HOST  where vehicles' servers are let in (default: localhost)
  --server-port N   first of four ports of the messaging server, on this machine only (default: 24222)`;

const VEHICLE = /^[a-z0-9][a-z0-9-]{0,20}$/;

export type ArgumentsRead =
  | { readonly kind: 'arguments'; readonly arguments: PostArguments }
  | { readonly kind: 'help' }
  | { readonly kind: 'wrong'; readonly why: string };

/** Never throws. */
export function readArguments(line: readonly string[]): ArgumentsRead {
  const wrong = (why: string): ArgumentsRead => ({ kind: 'wrong', why });
  try {
    const { values } = parseArgs({
      args: [...line],
      options: {
        help: { type: 'boolean', default: false },
        folder: { type: 'string', default: 'incident' },
        host: { type: 'string', default: 'localhost' },
        port: { type: 'string', default: '8420' },
        address: { type: 'string' },
        cert: { type: 'string' },
        key: { type: 'string' },
        cluster: { type: 'boolean', default: false },
        vehicle: { type: 'string', multiple: true, default: [] },
        'leaf-host': { type: 'string', default: '127.0.0.1' },
        'server-port': { type: 'string', default: '24222' },
      },
    });
    if (values.help) return { kind: 'help' };
    const port = Number(values.port);
    if (!Number.isInteger(port) || port < 0 || port > 65_535)
      return wrong(`--port ${values.port} is no port`);
    const serverPort = Number(values['server-port']);
    if (!Number.isInteger(serverPort) || serverPort < 1 || serverPort > 65_500)
      return wrong(`--server-port ${values['server-port']} is no port`);
    if ((values.cert === undefined) !== (values.key === undefined))
      return wrong('--cert and --key go together');
    const odd = values.vehicle.find((name) => !VEHICLE.test(name));
    if (odd !== undefined)
      return wrong(`--vehicle ${odd}: a name has small letters, figures and hyphens only`);
    if (values.address !== undefined && !/^https?:\/\/[^/]+\/$/.test(values.address))
      return wrong(`--address ${values.address}: it begins with https:// and ends in one slash`);
    return {
      kind: 'arguments',
      arguments: {
        folder: values.folder,
        host: values.host,
        port,
        address: values.address ?? null,
        cert: values.cert ?? null,
        key: values.key ?? null,
        servers: values.cluster ? 3 : 1,
        vehicles: values.vehicle,
        leafHost: values['leaf-host'],
        serverPort,
      },
    };
  } catch (error) {
    return wrong(error instanceof Error ? error.message : 'the options cannot be read');
  }
}
