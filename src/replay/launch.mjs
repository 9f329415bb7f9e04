// Starts the command line from one bundled file, made anew whenever a source is newer; a loader for each file costs more.

import { mkdirSync, readdirSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const FOLDER = join(ROOT, 'node_modules/.cache/fieldsay');
const BUNDLE = join(FOLDER, 'replay.mjs');
const MAIN = new URL('main.ts', import.meta.url).href;

/** Milliseconds since the epoch; 0 for a file that is not there. */
const changed = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

const newestSource = () =>
  readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' }).reduce(
    (latest, path) => Math.max(latest, changed(join(ROOT, 'src', path))),
    changed(join(ROOT, 'package-lock.json')),
  );

async function makeBundle() {
  const { build } = await import('esbuild');
  mkdirSync(FOLDER, { recursive: true });
  // Two runs at once must not read each other's half-written file.
  const fresh = `${BUNDLE}.${process.pid}`;
  await build({
    entryPoints: [fileURLToPath(MAIN)],
    outfile: fresh,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'silent',
    // The grammar is looked for beside the source, wherever the bundle lies.
    define: { 'import.meta.url': JSON.stringify(MAIN) },
  });
  renameSync(fresh, BUNDLE);
}

/** The bundle where it can be made; else the source, read through tsx file by file. */
async function entry() {
  try {
    if (changed(BUNDLE) < newestSource()) await makeBundle();
    return pathToFileURL(BUNDLE).href;
  } catch {
    const { register } = await import('tsx/esm/api');
    register();
    return MAIN;
  }
}

await import(await entry());
