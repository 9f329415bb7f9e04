// A line over a NATS connection, whichever way it is carried; JetStream keeps each message of a record.

import { JetStreamApiError, jetstream } from '@nats-io/jetstream';
import {
  AuthorizationError,
  type ConnectionOptions,
  type NatsConnection,
  NoRespondersError,
  nkeyAuthenticator,
  PermissionViolationError,
  RequestError,
} from '@nats-io/nats-core';
import type { Bytes } from '../bytes.ts';
import type { Asked, Line, LineState, Stored } from '../port.ts';
import { POST_DOMAIN } from '../subjects.ts';
import { closeWithin, dialWithin, endOf } from './endings.ts';

export interface Credential {
  /** of an nkey */
  readonly seed: string;
  /** where answers come to; the server lets it hear no other */
  readonly inbox: string;
}

export type Dial = (options: ConnectionOptions) => Promise<NatsConnection>;

/** How long a server may take to say that it has a message, ms. */
const STORE_WITHIN = 8_000;
/** Longer than the library's own limit, which is `timeout` below. */
const DIAL_WITHIN = 8_000;
const CLOSE_WITHIN = 1_000;
const REDIAL = 1_000;
/**
 * A server that is just reading its users refuses those who dial in that moment, and at a busy post that happens several
 * times in a row: only who is refused for so long is called put out, ms.
 */
const REFUSED_FOR = 5_000;
const REDIAL_REFUSED = 250;
/** Who was put out by mistake is let in again without doing anything. */
const REDIAL_OUT = 15_000;
/** A message of a subject that has its one message: `JSStreamStoreFailedF`, measured with nats-server 2.9.10. */
const STORE_FAILED = 10077;
const SAME_SUBJECT = /maximum messages per subject/;

const ownBytes = (bytes: Uint8Array): Bytes => new Uint8Array(bytes);

/**
 * Options that every connection of ours has. A cut one is not mended by the library but dialled anew by us: under load its
 * own reconnecting was seen to hang for half a minute and more (3.4.0, a server killed while messages were being read).
 */
export const optionsFor = ({ seed, inbox }: Credential): ConnectionOptions => ({
  authenticator: nkeyAuthenticator(new TextEncoder().encode(seed)),
  inboxPrefix: inbox,
  reconnect: false,
  pingInterval: 10_000,
  maxPingOut: 2,
  timeout: 5_000,
});

const isAuthorization = (thrown: unknown): boolean => thrown instanceof AuthorizationError;

/** Dials until it is through, and again whenever it was cut, until it is closed. */
export function createLine(
  dial: Dial,
  credential: Credential,
): Line & { readonly connection: () => NatsConnection | null } {
  let state: LineState = { state: 'connecting' };
  let connection: NatsConnection | null = null;
  let over = false;
  /** the first and the last of the refusals in a row, by the clock of `performance`; null where there is none */
  let refused: { readonly from: number; readonly to: number } | null = null;
  const watchers = new Set<(state: LineState) => void>();
  const hearers = new Map<symbol, (on: NatsConnection) => () => void>();
  const hearing = new Map<symbol, () => void>();

  const become = (next: LineState): void => {
    if (state.state === 'closed') return;
    state = next;
    for (const watcher of watchers) watcher(next);
  };

  /** Refused or not reached: what to say of it, and how long to rest. */
  const failed = (error: unknown): number => {
    if (!isAuthorization(error)) {
      become({ state: 'cut' });
      return REDIAL;
    }
    const now = performance.now();
    const goesOn = refused !== null && now - refused.to < 2 * REDIAL_OUT;
    refused = { from: goesOn && refused !== null ? refused.from : now, to: now };
    const isOut = now - refused.from >= REFUSED_FOR;
    become({ state: isOut ? 'put-out' : 'cut' });
    return isOut ? REDIAL_OUT : REDIAL_REFUSED;
  };

  const run = async (): Promise<void> => {
    while (!over) {
      let rest: number;
      try {
        const made = await dialWithin(() => dial(optionsFor(credential)), DIAL_WITHIN);
        if (over) return void made.close();
        connection = made;
        refused = null;
        for (const [mark, start] of hearers) hearing.set(mark, start(made));
        become({ state: 'connected' });
        const why = await endOf(made);
        connection = null;
        hearing.clear();
        if (over) return;
        rest = failed(why);
      } catch (error) {
        rest = failed(error);
      }
      await new Promise((resolve) => setTimeout(resolve, rest));
    }
  };
  void run();

  return {
    connection: () => connection,
    store: async (subject, bytes): Promise<Stored> => {
      if (connection === null || state.state !== 'connected') return { kind: 'not-reached' };
      try {
        const { domain } = await jetstream(connection).publish(subject, bytes, {
          timeout: STORE_WITHIN,
          retries: 1,
        });
        return { kind: 'stored', by: domain === undefined || domain === POST_DOMAIN ? null : domain };
      } catch (error) {
        return whyNotStored(error);
      }
    },
    tell: (subject, bytes) => {
      if (state.state !== 'connected') return;
      try {
        connection?.publish(subject, bytes);
      } catch {
        // It was for whoever listens now; on a connection that is just closing that is nobody.
      }
    },
    ask: async (subject, bytes, timeout): Promise<Asked> => {
      if (connection === null || state.state !== 'connected') return { kind: 'not-reached' };
      try {
        const answer = await connection.request(subject, bytes, { timeout });
        return { kind: 'answer', bytes: ownBytes(answer.data), subject: answer.subject };
      } catch (error) {
        return { kind: isNobody(error) ? 'nobody' : 'not-reached' };
      }
    },
    hear: (subject, heard) => {
      const mark = Symbol(subject);
      const start = (on: NatsConnection): (() => void) => {
        const subscription = on.subscribe(subject, {
          callback: (error, message) => {
            if (error === null)
              heard({
                subject: message.subject,
                bytes: ownBytes(message.data),
                reply: message.reply ?? null,
              });
          },
        });
        return () => subscription.unsubscribe();
      };
      hearers.set(mark, start);
      if (connection !== null) hearing.set(mark, start(connection));
      return () => {
        hearers.delete(mark);
        hearing.get(mark)?.();
        hearing.delete(mark);
      };
    },
    watch: (changed) => {
      watchers.add(changed);
      changed(state);
      return () => watchers.delete(changed);
    },
    close: async () => {
      over = true;
      become({ state: 'closed' });
      if (connection !== null) await closeWithin(connection, CLOSE_WITHIN);
    },
  };
}

const isNobody = (error: unknown): boolean =>
  error instanceof NoRespondersError || (error instanceof RequestError && error.isNoResponders());

function whyNotStored(error: unknown): Stored {
  if (error instanceof JetStreamApiError) {
    const { code, message } = error as JetStreamApiError & { readonly code: number };
    if (code === STORE_FAILED && SAME_SUBJECT.test(message)) return { kind: 'there-already' };
    return { kind: 'refused', why: message };
  }
  const cause = error instanceof Error ? error.cause : undefined;
  if (error instanceof PermissionViolationError || cause instanceof PermissionViolationError)
    return { kind: 'refused', why: 'this device may not publish there' };
  return { kind: 'not-reached' };
}
