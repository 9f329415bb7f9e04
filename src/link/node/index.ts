// Promises the line and the stream of a program in Node: TCP to one server or to any of several.

import { jetstream, jetstreamManager } from '@nats-io/jetstream';
import type { NatsConnection } from '@nats-io/nats-core';
import { connect } from '@nats-io/transport-node';
import { type Credential, createLine, optionsFor } from '../nats/line.ts';
import type { KeptMessage, Line, Stream } from '../port.ts';

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

/** How long to wait before a broken reading is begun again, ms. */
const AGAIN = 1_000;
/** Between two looks at whether reading goes on, ms. */
const LOOK = 3_000;

const keptOf = (subject: string, data: Uint8Array, place: number): KeptMessage => ({
  subject,
  bytes: new Uint8Array(data),
  place,
});

/** A stream of the server by its name; the connection is asked for anew whenever it is needed. */
export function createStream(connection: () => NatsConnection | null, name: string, made: string): Stream {
  return {
    made,
    follow: (after, took) => {
      let over = false;
      let last = after;
      let stop: (() => void) | null = null;
      const read = async (): Promise<void> => {
        while (!over) {
          try {
            const on = connection();
            if (on === null || on.isClosed()) throw new Error('not connected');
            // An ordered consumer begins anew by itself where the server or a part of the cluster was lost.
            const consumer = await jetstream(on).consumers.get(name, {
              deliver_policy: 'by_start_sequence',
              opt_start_seq: last + 1,
            });
            const messages = await consumer.consume({
              max_messages: 500,
              idle_heartbeat: 2_000,
              expires: 10_000,
              callback: ({ subject, data, seq }) => {
                if (over || seq <= last) return;
                last = seq;
                took(keptOf(subject, data, seq));
              },
            });
            stop = () => messages.stop();
            await Promise.race([on.closed(), messages.closed(), stands(on)]);
            messages.stop();
          } catch {
            // Whatever broke it off, it goes on after the last message that was taken.
          }
          if (!over) await new Promise((resolve) => setTimeout(resolve, AGAIN));
        }
      };
      /** Resolves where the server has more and nothing comes: whatever the reason, reading is begun anew. */
      const stands = async (on: NatsConnection): Promise<void> => {
        const manager = await jetstreamManager(on);
        for (let before = -1; !over && !on.isClosed(); before = last) {
          await new Promise((resolve) => setTimeout(resolve, LOOK));
          const { state } = await manager.streams.info(name);
          if (state.last_seq > last && last === before) return;
        }
      };
      void read();
      return () => {
        over = true;
        stop?.();
      };
    },
    find: async (subject) => {
      const on = connection();
      if (on === null) return null;
      try {
        const found = await (await jetstreamManager(on)).streams.getMessage(name, { last_by_subj: subject });
        return found === null ? null : keptOf(found.subject, found.data, found.seq);
      } catch {
        return null;
      }
    },
  };
}
