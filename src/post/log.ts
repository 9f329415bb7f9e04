// The post's own log: what is added is on the disk itself before it counts, a torn end is cut off, and no line is ever changed.

import type { KeptMessage } from '../link/index.ts';
import { type OpenDisk, type OpenFile, openOnDisk } from './disk.ts';

/** A message as it came, sealed, with its place in the server's stream and when it came (epoch ms, the post's clock). */
export interface Logged extends KeptMessage {
  readonly made: string;
  readonly at: number;
}

/** Where a line stands in the file. */
export interface Spot {
  readonly at: number;
  readonly length: number;
}

export interface Kept {
  readonly logged: Logged;
  readonly spot: Spot;
}

export type Added =
  | { readonly kind: 'added'; readonly spots: readonly Spot[] }
  /** nothing was added; it may be tried again */
  | { readonly kind: 'full' | 'failed'; readonly why: string };

export interface PostLog {
  /** bytes of a torn last line that were cut off when it was opened: nothing of it had counted */
  readonly torn: number;
  /** lines in the middle that cannot be read */
  readonly unreadable: number;
  add(messages: readonly Logged[]): Promise<Added>;
  read(spot: Spot): Promise<Logged | null>;
  readonly size: () => number;
  close(): Promise<void>;
}

const NEW_LINE = 10;
const PIECE = 4 * 1024 * 1024;

const lineOf = ({ made, place, subject, at, bytes }: Logged): Buffer =>
  Buffer.from(
    `${JSON.stringify({ m: made, p: place, s: subject, t: at, d: Buffer.from(bytes).toString('base64') })}\n`,
  );

function readLine(line: Buffer): Logged | null {
  try {
    const { m, p, s, t, d } = JSON.parse(line.toString('utf8')) as Record<string, unknown>;
    if (typeof m !== 'string' || typeof s !== 'string' || typeof d !== 'string') return null;
    if (typeof p !== 'number' || typeof t !== 'number') return null;
    return { made: m, place: p, subject: s, at: t, bytes: new Uint8Array(Buffer.from(d, 'base64')) };
  } catch {
    return null;
  }
}

/** Opens the log and hands over each line of it, oldest first; rejects with the system's error where it cannot be read. */
export async function openLog(
  path: string,
  each: (kept: Kept) => Promise<void>,
  disk: OpenDisk = openOnDisk,
): Promise<PostLog> {
  const file = await disk(path);
  const { whole, unreadable } = await readAll(file, each);
  const torn = file.size - whole;
  if (torn > 0) {
    await file.cut(whole);
    await file.sync();
  }
  let size = whole;
  /** true where a failed write may have left bytes beyond the end */
  let dirty = false;

  return {
    torn,
    unreadable,
    size: () => size,
    add: async (messages) => {
      const lines = messages.map(lineOf);
      try {
        if (dirty) await file.cut(size);
        dirty = true;
        await file.write(Buffer.concat(lines), size);
        await file.sync();
      } catch (error) {
        await file.cut(size).catch(() => undefined);
        return whyNot(error);
      }
      dirty = false;
      const spots = lines.map((line) => {
        const spot = { at: size, length: line.length };
        size += line.length;
        return spot;
      });
      return { kind: 'added', spots };
    },
    read: async ({ at, length }) => readLine(await file.read(at, length)),
    close: () => file.close(),
  };
}

function whyNot(error: unknown): Exclude<Added, { kind: 'added' }> {
  const { code = '', message } = error as NodeJS.ErrnoException;
  const full = ['ENOSPC', 'EDQUOT', 'EFBIG'].includes(code);
  return { kind: full ? 'full' : 'failed', why: full ? 'the disk of the post is full' : message };
}

async function readAll(
  file: OpenFile,
  each: (kept: Kept) => Promise<void>,
): Promise<{ readonly whole: number; readonly unreadable: number }> {
  let whole = 0;
  let unreadable = 0;
  let rest = Buffer.alloc(0);
  for (let from = 0; from < file.size; from += PIECE) {
    rest = Buffer.concat([rest, await file.read(from, Math.min(PIECE, file.size - from))]);
    let begin = 0;
    for (let end = rest.indexOf(NEW_LINE); end >= 0; end = rest.indexOf(NEW_LINE, begin)) {
      const logged = readLine(rest.subarray(begin, end));
      const length = end + 1 - begin;
      if (logged === null) unreadable += 1;
      else await each({ logged, spot: { at: whole, length } });
      whole += length;
      begin = end + 1;
    }
    rest = rest.subarray(begin);
  }
  return { whole, unreadable };
}
