// Reads a stream of the server to its end and on, over every cut, and notices where the server has lost what it had.

import { type JetStreamManager, jetstream, jetstreamManager } from '@nats-io/jetstream';
import type { NatsConnection } from '@nats-io/nats-core';
import type { KeptMessage, Reached, Stream } from '../port.ts';

/** How long to wait before a broken reading is begun again, ms. */
const AGAIN = 1_000;
/** Between two looks at whether reading goes on, ms. */
const LOOK = 3_000;

const placeOf = (reached: Reached | null): number => reached?.place ?? 0;

const keptOf = (subject: string, data: Uint8Array, place: number): KeptMessage => ({
  subject,
  bytes: new Uint8Array(data),
  place,
});

/** True where the server still has what was read last; rejects where it does not answer. */
const isWhole = async (
  manager: JetStreamManager,
  name: string,
  { place, subject }: Reached,
): Promise<boolean> => (await manager.streams.getMessage(name, { seq: place }))?.subject === subject;

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
            if (last !== null && !(await isWhole(await jetstreamManager(on), name, last))) last = null;
            // An ordered consumer begins anew by itself where the server or a part of the cluster was lost.
            const consumer = await jetstream(on).consumers.get(name, {
              deliver_policy: 'by_start_sequence',
              opt_start_seq: placeOf(last) + 1,
            });
            // A reading that was given up may go on in the background for a while: it counts no more.
            let isThis = true;
            const messages = await consumer.consume({
              max_messages: 500,
              idle_heartbeat: 2_000,
              expires: 10_000,
              callback: ({ subject, data, seq }) => {
                if (over || !isThis || seq <= placeOf(last)) return;
                last = { place: seq, subject };
                took(keptOf(subject, data, seq));
              },
            });
            stop = () => {
              isThis = false;
              messages.stop();
            };
            await Promise.race([on.closed(), messages.closed(), stands(on)]);
          } catch {
            // Whatever broke it off, it goes on after the last message that was taken.
          }
          stop?.();
          if (!over) await new Promise((resolve) => setTimeout(resolve, AGAIN));
        }
      };
      /** Resolves where the server has more and nothing comes: whatever the reason, reading is begun anew. */
      const stands = async (on: NatsConnection): Promise<void> => {
        const manager = await jetstreamManager(on);
        for (let before = -1; !over && !on.isClosed(); before = placeOf(last)) {
          await new Promise((resolve) => setTimeout(resolve, LOOK));
          const { state } = await manager.streams.info(name);
          if (state.last_seq > placeOf(last) && placeOf(last) === before) return;
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
