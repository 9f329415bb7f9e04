// The talk in a file, a recording or on standard input, or one sentence on why it cannot be read.

import { readFile } from 'node:fs/promises';
import { type Default, readTalk, type Talk, textOfBytes } from '../record/talk/index.ts';
import { type Recording, readRecording } from './recording.ts';

const UTF8 = new TextDecoder('utf-8', { fatal: true });

export type Input =
  /** `remark` names what of the file could not be read, where the rest could */
  (Talk & { readonly remark?: string }) | { readonly kind: 'unreadable'; readonly why: string };

const unreadable = (why: string): Input => ({ kind: 'unreadable', why });

/** Reads one FILE of the command line; `-` is standard input. `why` begins with the file's name. */
export async function readInput(file: string, otherwise: Default): Promise<Input> {
  const name = file === '-' ? 'standard input' : file;
  if (/\.wav$/i.test(file)) {
    const recording = await attempt<Recording>(() => readRecording(file, otherwise));
    if (typeof recording === 'string') return unreadable(`${name}: ${recording}`);
    const { talk, cut } = recording;
    return cut === null ? talk : { ...talk, remark: `${name}: ${cut}` };
  }
  const bytes = await attempt<Uint8Array>(() => (file === '-' ? standardInput() : readFile(file)));
  if (typeof bytes === 'string') return unreadable(`${name}: ${bytes}`);
  const text = textOfBytes(bytes, UTF8);
  const talk = text.kind === 'text' ? readTalk(text.text, otherwise) : text;
  return talk.kind === 'talk' ? talk : unreadable(`${name}:${talk.line}: ${talk.why}`);
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'is a folder, not a file',
  EACCES: 'may not be read',
};

/** What is read, or why it cannot be: a fault of the file that the system named. */
async function attempt<T>(read: () => Promise<T | string>): Promise<T | string> {
  try {
    return await read();
  } catch (error) {
    if (!(error instanceof Error && 'syscall' in error && 'code' in error)) throw error;
    return REASONS[String(error.code)] ?? `cannot be read (${error.code})`;
  }
}

// Read as it comes: a synchronous read fails on a pipe whose writer is slower than the reader.
async function standardInput(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk);
  return Buffer.concat(chunks);
}
