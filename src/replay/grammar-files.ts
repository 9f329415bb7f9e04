// The grammar's files as they lie beside the program, in the order of their names.

import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('../../grammar/', import.meta.url);

/** Every .jsgf file of the grammar folder with its text. */
export function grammarFiles(): readonly { readonly file: string; readonly text: string }[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.jsgf'))
    .toSorted()
    .map((name) => ({ file: `grammar/${name}`, text: readFileSync(new URL(name, FOLDER), 'utf8') }));
}
