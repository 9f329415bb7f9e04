// A dial that never answers and a connection that is dead and does not say so both come to an end here.

import type { NatsConnection } from '@nats-io/nats-core';

/**
 * The dial, or a rejection after `ms`; a connection that is through later than that is closed.
 *
 * The library has a limit of its own, but then waits for its socket to say that it is closed: a WebSocket that had not
 * been answered yet says nothing in Node 20, and a dial of nats-core 3.4.0 then hangs for ever.
 */
export function dialWithin(dial: () => Promise<NatsConnection>, ms: number): Promise<NatsConnection> {
  return new Promise((resolve, reject) => {
    let given = false;
    const late = setTimeout(() => {
      given = true;
      reject(new Error('no answer'));
    }, ms);
    dial().then(
      (made) => {
        clearTimeout(late);
        if (given) void made.close().catch(() => undefined);
        else resolve(made);
      },
      (error: unknown) => {
        clearTimeout(late);
        reject(error);
      },
    );
  });
}

/**
 * Resolves with why the connection ended.
 *
 * One that answers no ping is over at once: the library would first wait for what it has yet to send to leave, which out of
 * range of any mast it does not.
 */
export async function endOf(connection: NatsConnection): Promise<Error | undefined> {
  const stale = new Promise<undefined>((resolve) => {
    const listen = async (): Promise<void> => {
      for await (const { type } of connection.status()) if (type === 'staleConnection') resolve(undefined);
    };
    void listen().catch(() => undefined);
  });
  const why = await Promise.race([connection.closed(), stale]);
  if (!connection.isClosed()) void connection.close().catch(() => undefined);
  return why instanceof Error ? why : undefined;
}

/** Closes it; settles after `ms` at the latest, since out of range what is yet to be sent never leaves. */
export async function closeWithin(connection: NatsConnection, ms: number): Promise<void> {
  let late: ReturnType<typeof setTimeout> | undefined;
  const enough = new Promise<void>((resolve) => {
    late = setTimeout(resolve, ms);
  });
  await Promise.race([connection.close().catch(() => undefined), enough]);
  clearTimeout(late);
}
