// The post's web server: the page for phones, the board, and the phones' link, all under one origin.

import { timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import type { Post } from '../post.ts';
import { createRows } from '../rows.ts';
import { answer } from './answer.ts';
import { feedBoard, feedRecord } from './feed.ts';
import { sendFile } from './files.ts';
import { type Handle, type ServeOptions, serve, type Web } from './serve.ts';

export interface WebOptions extends ServeOptions {
  /** the built page */
  readonly folder: string;
  readonly clock: () => number;
}

const LONGEST = 10_000;

const same = (one: string, other: string): boolean => {
  const [a, b] = [Buffer.from(one), Buffer.from(other)];
  return a.length === b.length && timingSafeEqual(a, b);
};
const tokenOf = ({ headers }: IncomingMessage): string =>
  headers.authorization?.replace(/^Bearer /, '') ?? '';
export const pathOf = ({ url }: IncomingMessage): string =>
  new URL(url ?? '/', 'http://post.invalid').pathname;

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

/** The page's files, to whoever asks. */
export const pageHandle =
  (folder: string): Handle =>
  async (request, response) => {
    if (request.method === 'GET' || request.method === 'HEAD')
      return sendFile(folder, pathOf(request), response, request.method === 'HEAD');
    return answer(response, 405, { why: 'Only reading is possible here.' });
  };

/** Starts it; rejects where the port is taken. */
export function openWeb(post: Post, options: WebOptions): Promise<Web> {
  const { desk, incident } = post;
  const rows = createRows(desk, options.clock);
  const page = pageHandle(options.folder);
  const handle: Handle = async (request, response) => {
    const pathname = pathOf(request);
    const way = `${request.method} ${pathname}`;
    if (!pathname.startsWith('/board/') && !pathname.startsWith('/crew/')) return page(request, response);
    const isCrew = same(tokenOf(request), incident.crewToken);
    if (!isCrew && !same(tokenOf(request), incident.boardToken))
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
  return serve(handle, post.webPorts, options);
}
