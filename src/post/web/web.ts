// The post's web server: the page for phones, the board, and the phones' link, all under one origin.

import { timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type RequestListener, type ServerResponse } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { AddressInfo, Socket } from 'node:net';
import type { Post } from '../post.ts';
import { createRows } from '../rows.ts';
import { carry } from './carry.ts';
import { feedBoard, feedRecord } from './feed.ts';
import { HEADERS, sendFile } from './files.ts';

export interface WebOptions {
  /** the built page */
  readonly folder: string;
  readonly host: string;
  /** 0 for any that is free */
  readonly port: number;
  /** PEM; without it only this very machine has a microphone and works offline, since browsers ask for a secure context */
  readonly secure?: { readonly cert: string; readonly key: string };
  readonly clock: () => number;
}

export interface Web {
  readonly port: number;
  close(): Promise<void>;
}

const LONGEST = 10_000;

const answer = (response: ServerResponse, status: number, value: unknown): void => {
  response.writeHead(status, { ...HEADERS, 'content-type': 'application/json', 'cache-control': 'no-store' });
  response.end(JSON.stringify(value));
};

const same = (one: string, other: string): boolean => {
  const [a, b] = [Buffer.from(one), Buffer.from(other)];
  return a.length === b.length && timingSafeEqual(a, b);
};
const tokenOf = ({ headers }: IncomingMessage): string =>
  headers.authorization?.replace(/^Bearer /, '') ?? '';

async function bodyOf(request: IncomingMessage): Promise<Readonly<Record<string, unknown>>> {
  let text = '';
  for await (const piece of request) {
    text += piece;
    if (text.length > LONGEST) return {};
  }
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
  } catch {
    return {};
  }
}

/** Starts it; rejects where the port is taken. */
export async function openWeb(post: Post, options: WebOptions): Promise<Web> {
  const { desk, incident } = post;
  const rows = createRows(desk, options.clock);
  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const { pathname } = new URL(request.url ?? '/', 'http://post.invalid');
    const way = `${request.method} ${pathname}`;
    const isCrew = same(tokenOf(request), incident.crewToken);
    const isBoard = isCrew || same(tokenOf(request), incident.boardToken);
    if (!pathname.startsWith('/board/') && !pathname.startsWith('/crew/')) {
      if (request.method === 'GET' || request.method === 'HEAD')
        return sendFile(options.folder, pathname, response, request.method === 'HEAD');
      return answer(response, 405, { why: 'Only reading is possible here.' });
    }
    if (!isBoard)
      return answer(response, 401, {
        why: 'This board was not let in: open it by the address that the post printed.',
      });
    if (way === 'GET /board/feed') return feedBoard(response, desk, rows, incident.id, options.clock);
    const [, record] = /^GET \/board\/record\/([\w.-]{1,100})$/.exec(way) ?? [];
    if (record !== undefined) return feedRecord(response, desk, record);
    if (way === 'POST /board/question') {
      const { record: about, text } = await bodyOf(request);
      const asked = typeof about === 'string' && typeof text === 'string' && text.trim() !== '';
      if (!asked || !(await desk.question(about, text.trim().slice(0, 500))))
        return answer(response, 400, { why: 'There is no such record, or nothing was asked.' });
      return answer(response, 200, {});
    }
    if (!isCrew)
      return answer(response, 403, {
        why: 'A board can only ask. Phones are let in and put out with the crew’s address.',
      });
    if (way === 'POST /crew/issue') {
      const { name } = await bodyOf(request);
      const code = await post.issue(typeof name === 'string' ? name : '');
      return answer(response, 200, { device: code.device, name: code.name, text: code.text });
    }
    if (way === 'POST /crew/out') {
      const { device } = await bodyOf(request);
      return answer(response, 200, { out: typeof device === 'string' && (await post.putOut(device)) });
    }
    return answer(response, 404, { why: 'There is nothing here.' });
  };
  const listen: RequestListener = (request, response) => {
    handle(request, response).catch(() => {
      if (!response.headersSent)
        answer(response, 500, { why: 'The post could not do this; its log is not touched by it.' });
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
  server.on('upgrade', (request, socket, head) => void carry(request, socket, head, post.webPorts));
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
