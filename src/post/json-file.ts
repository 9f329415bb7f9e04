// A small JSON file that is written whole or not at all, for the owner's eyes only.

import { open, readFile, rename } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Null where there is no such file; rejects where it cannot be read or is no JSON. */
export async function readJson(path: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(path, 'utf8'));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

/** Written beside, synced, and put in place. */
export async function writeJson(path: string, value: unknown): Promise<void> {
  await writeText(path, `${JSON.stringify(value, null, 1)}\n`);
}

export async function writeText(path: string, text: string): Promise<void> {
  const fresh = `${path}.new`;
  const file = await open(fresh, 'w', 0o600);
  await file.writeFile(text);
  await file.sync();
  await file.close();
  await rename(fresh, path);
  const folder = await open(dirname(path), 'r');
  await folder.sync();
  await folder.close();
}
