// Keeps the tables of the last run in the results file between its marks; what is written by hand around them stays.

import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';

const FILE = fileURLToPath(new URL('./results.md', import.meta.url));
const mark = (part: string, end: 'begin' | 'end'): string => `<!-- ${part}: ${end} -->`;

/** When, where and on how busy a machine. */
export const machineWords = (server: string): string =>
  `Run on ${new Date().toISOString().slice(0, 10)} with nats-server ${server} and Node ${process.versions.node} on ${cpus().length} processors (${cpus()[0]?.model.trim()}); phones, post and server on that one machine, whose load was ${loadavg()[0]?.toFixed(1)} when it began.`;

/** The text with one part replaced; throws where the marks are not there. */
export function withPart(text: string, part: string, content: string): string {
  const [begin, end] = [mark(part, 'begin'), mark(part, 'end')];
  const [from, to] = [text.indexOf(begin), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`results.md has no marks for ${part}`);
  return `${text.slice(0, from + begin.length)}\n\n${content}\n\n${text.slice(to)}`;
}

/** Writes one part of the results file. */
export const writePart = (part: string, content: string): void =>
  writeFileSync(FILE, withPart(readFileSync(FILE, 'utf8'), part, content));
