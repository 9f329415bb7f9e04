// What is listened for, worked out once on this machine and kept beside the installed packages until its files or this code change.

import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { dictionaryPath } from '../speech/file/index.ts';
import { type HearingFiles, textOf, workOut } from '../speech/index.ts';

// From this folder: bundled, the program takes every file for one of it.
const folderOf = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const KEPT = folderOf('../../node_modules/.cache/fieldsay/');
/** Where the code lies that works it out. */
const CODE = ['../jsgf/', '../speech/engine/', '../speech/hearing/', '../speech/network/'].map(folderOf);
const NAME = /^listens-for-[0-9a-f]+\.json$/;

/** As `textOf` gives it; throws where a grammar has a fault, or the recogniser's package is not installed. Takes ten seconds the first time. */
export function workedOutOnce(files: HearingFiles): string {
  const dictionary = readFileSync(dictionaryPath(), 'utf8');
  const name = `listens-for-${sumOf([JSON.stringify(files), dictionary, ...CODE.flatMap(textsIn)])}.json`;
  return kept(name) ?? keep(name, worked(files, dictionary));
}

function worked(files: HearingFiles, dictionary: string): string {
  const made = workOut(files, dictionary);
  if (made.kind === 'worked-out') return textOf(made);
  const [first] = made.errors;
  throw new Error(`The hearing grammar has a fault: ${first?.file}:${first?.line}: ${first?.message}`);
}

function sumOf(texts: readonly string[]): string {
  const sum = createHash('sha256');
  for (const text of texts) sum.update(`${text.length} `).update(text);
  return sum.digest('hex').slice(0, 16);
}

const textsIn = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.ts'))
    .toSorted()
    .map((file) => readFileSync(join(folder, file), 'utf8'));

function kept(name: string): string | null {
  try {
    return readFileSync(join(KEPT, name), 'utf8');
  } catch {
    return null;
  }
}

/** Where it cannot be kept, it is worked out anew the next time. Another program may keep the same at the same time. */
function keep(name: string, text: string): string {
  try {
    mkdirSync(KEPT, { recursive: true });
    const own = join(KEPT, `${process.pid}.part`);
    writeFileSync(own, text);
    renameSync(own, join(KEPT, name));
    for (const other of readdirSync(KEPT))
      if (NAME.test(other) && other !== name) rmSync(join(KEPT, other), { force: true });
  } catch {
    return text;
  }
  return text;
}
