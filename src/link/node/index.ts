// Promises the line and the stream of a program in Node: TCP to one server or to any of several.

import type { NatsConnection } from '@nats-io/nats-core';
import { connect } from '@nats-io/transport-node';
import { type Credential, createLine, optionsFor } from '../nats/line.ts';
import type { Line } from '../port.ts';

export { createStream } from './stream.ts';

export type NodeLine = Line & { readonly connection: () => NatsConnection | null };

/** A line to whichever of the servers (`host:port`) answers. */
export const dialServers = (servers: readonly string[], credential: Credential): NodeLine =>
  createLine((options) => connect({ ...options, servers: [...servers] }), credential);

/** True once each of the servers lets the credential in; false where one still does not after `within` ms. */
export async function isLetIn(
  servers: readonly string[],
  credential: Credential,
  within: number,
): Promise<boolean> {
  const until = Date.now() + within;
  for (const server of servers)
    for (;;) {
      try {
        const made = await connect({ ...optionsFor(credential), servers: server });
        await made.close();
        break;
      } catch {
        if (Date.now() > until) return false;
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
    }
  return true;
}
