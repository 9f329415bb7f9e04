// A web server under one origin: what is asked of it, and the phones' link carried on to the messaging server.

import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { AddressInfo, Socket } from 'node:net';
import { answer } from './answer.ts';
import { carry } from './carry.ts';

export interface ServeOptions {
  readonly host: string;
  /** 0 for any that is free */
  readonly port: number;
  /** PEM; without it only this very machine has a microphone and works offline, since browsers ask for a secure context */
  readonly secure?: { readonly cert: string; readonly key: string };
}

export interface Web {
  readonly port: number;
  close(): Promise<void>;
}

export type Handle = (request: IncomingMessage, response: ServerResponse) => Promise<void>;

/** Starts it; rejects where the port is taken. `webPorts` are those of messaging servers on this machine. */
export async function serve(
  handle: Handle,
  webPorts: readonly number[],
  options: ServeOptions,
): Promise<Web> {
  const listen = (request: IncomingMessage, response: ServerResponse): void => {
    handle(request, response).catch(() => {
      if (!response.headersSent)
        answer(response, 500, { why: 'This could not be done; the log is not touched by it.' });
      else response.destroy();
    });
  };
  const server =
    options.secure === undefined ? createServer(listen) : createSecureServer(options.secure, listen);
  const open = new Set<Socket>();
  server.on('connection', (socket: Socket) => {
    open.add(socket);
    socket.on('close', () => open.delete(socket));
  });
  server.on('upgrade', (request, socket, head) => void carry(request, socket, head, webPorts));
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port, options.host, resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        for (const socket of open) socket.destroy();
      }),
  };
}
