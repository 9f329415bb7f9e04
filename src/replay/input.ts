// The talk in a file or on standard input, or one sentence on why it cannot be read.

import { readFile } from 'node:fs/promises';
import { type Default, readTalk, type Talk } from './talk.ts';
import { textOfBytes } from './text-of-bytes.ts';

export type Input = Talk | { readonly kind: 'unreadable'; readonly why: string };

const unreadable = (why: string): Input => ({ kind: 'unreadable', why });

/** Reads one FILE of the command line; `-` is standard input. `why` begins with the file's name. */
export async function readInput(file: string, otherwise: Default): Promise<Input> {
  const name = file === '-' ? 'standard input' : file;
  if (/\.wav$/i.test(file)) return unreadable(`${name}: recordings cannot be heard yet, only .talk files`);
  const bytes = await readBytes(file);
  if (typeof bytes === 'string') return unreadable(`${name}: ${bytes}`);
  const text = textOfBytes(bytes);
  const talk = text.kind === 'text' ? readTalk(text.text, otherwise) : text;
  return talk.kind === 'talk' ? talk : unreadable(`${name}:${talk.line}: ${talk.why}`);
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'is a folder, not a file',
  EACCES: 'may not be read',
};

async function readBytes(file: string): Promise<Uint8Array | string> {
  try {
    return file === '-' ? await standardInput() : await readFile(file);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    return REASONS[code] ?? `cannot be read (${code === '' ? 'unknown fault' : code})`;
  }
}

// Read as it comes: a synchronous read fails on a pipe whose writer is slower than the reader.
async function standardInput(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk);
  return Buffer.concat(chunks);
}
