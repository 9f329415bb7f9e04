// Makes the server keep one message of each subject for ever, and finds that stream again.

import { jetstreamManager, type StreamConfig } from '@nats-io/jetstream';
import type { NatsConnection } from '@nats-io/nats-core';
import { STREAM, STREAM_SUBJECTS } from '../../link/index.ts';

/** One message on each subject: sending again does no harm. Nothing is ever deleted by a client. */
const KEEPING = {
  max_msgs_per_subject: 1,
  discard: 'new',
  discard_new_per_subject: true,
  deny_delete: true,
  deny_purge: true,
  storage: 'file',
} as const satisfies Partial<StreamConfig>;

export interface MadeStream {
  readonly name: string;
  /** tells this stream from another one of that name */
  readonly made: string;
}

const TRIES = 40;
const AGAIN = 500;

async function streamIn(connection: NatsConnection, replicas: 1 | 3, domain?: string): Promise<MadeStream> {
  const manager = await jetstreamManager(connection, domain === undefined ? {} : { domain });
  const found = await manager.streams.info(STREAM).catch(() =>
    manager.streams.add({
      name: STREAM,
      subjects: [STREAM_SUBJECTS],
      num_replicas: replicas,
      ...KEEPING,
    }),
  );
  return { name: STREAM, made: `${domain ?? 'post'} ${found.created}` };
}

/** The stream of the records, made where it is not there; `replicas` is 3 in a cluster of three. Rejects after 20 s. */
export async function ensureStream(connection: NatsConnection, replicas: 1 | 3): Promise<MadeStream> {
  let why: unknown = null;
  for (let tries = 0; tries < TRIES; tries += 1) {
    try {
      return await streamIn(connection, replicas);
    } catch (error) {
      why = error;
      await new Promise((resolve) => setTimeout(resolve, AGAIN));
    }
  }
  throw new Error(`the messaging server does not keep messages: ${String(why)}`);
}

/** A vehicle's messages, copied to the post as the engine's own mirror: it goes on by itself after a cut. Rejects while it is out of reach. */
export async function ensureMirror(connection: NatsConnection, vehicle: string): Promise<MadeStream> {
  await streamIn(connection, 1, vehicle);
  const name = `VEHICLE_${vehicle}`;
  const manager = await jetstreamManager(connection);
  const found = await manager.streams.info(name).catch(() =>
    manager.streams.add({
      name,
      storage: 'file',
      mirror: { name: STREAM, external: { api: `$JS.${vehicle}.API`, deliver: '' } },
    } as StreamConfig & { readonly name: string }),
  );
  return { name, made: `${vehicle} ${found.created}` };
}
