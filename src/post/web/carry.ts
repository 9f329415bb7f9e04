// Carries a phone's WebSocket from the page's own address to the messaging server, byte for byte and unread.

import type { IncomingMessage } from 'node:http';
import { connect, type Socket } from 'node:net';
import type { Duplex } from 'node:stream';

const refuse = (socket: Duplex, status: string): void => {
  socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`);
};

/** True where a browser's page of another origin asks; a program that names no origin shows a credential all the same. */
export function isForeign({ headers: { origin, host } }: IncomingMessage): boolean {
  if (origin === undefined) return false;
  try {
    return new URL(origin).host !== host;
  } catch {
    return true;
  }
}

const dial = (port: number): Promise<Socket | null> =>
  new Promise((resolve) => {
    const socket = connect({ host: '127.0.0.1', port }, () => resolve(socket));
    socket.once('error', () => resolve(null));
  });

/** Joins the two; of several servers the first that answers is taken. */
export async function carry(
  request: IncomingMessage,
  phone: Duplex,
  head: Buffer,
  ports: readonly number[],
): Promise<void> {
  phone.on('error', () => phone.destroy());
  if (request.url !== '/link') return refuse(phone, '404 Not Found');
  if (isForeign(request)) return refuse(phone, '403 Forbidden');
  for (const port of ports) {
    const server = await dial(port);
    if (server === null) continue;
    const headers = Array.from({ length: request.rawHeaders.length / 2 }, (_, index) => {
      const [name = '', value = ''] = request.rawHeaders.slice(index * 2, index * 2 + 2);
      return `${name}: ${value}`;
    });
    server.write(`GET / HTTP/1.1\r\n${headers.join('\r\n')}\r\n\r\n`);
    if (head.length > 0) server.write(head);
    server.on('error', () => phone.destroy());
    server.on('close', () => phone.destroy());
    phone.on('close', () => server.destroy());
    phone.pipe(server);
    server.pipe(phone);
    return;
  }
  refuse(phone, '503 Service Unavailable');
}
