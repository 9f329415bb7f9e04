// The grammar's files as they were bundled, fit for the reader.

const FILES = import.meta.glob<string>('/grammar/*.jsgf', { query: '?raw', eager: true, import: 'default' });

/** Every grammar file with its text, in the order of their names. */
export const grammarFiles = (): readonly { readonly file: string; readonly text: string }[] =>
  Object.entries(FILES)
    .map(([path, text]) => ({ file: path.slice(1), text }))
    .toSorted((a, b) => (a.file < b.file ? -1 : 1));
