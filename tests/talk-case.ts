// Runs the talk of a test through the real grammar, parser and record.

import { createReader, type Reader } from '../src/parse/index.ts';
import type { Entry } from '../src/record/index.ts';
import { readTalk } from '../src/record/talk/index.ts';
import { examine } from '../src/replay/examine.ts';
import { grammarFiles } from '../src/replay/grammar-files.ts';

/** When a case begins that does not say it: an invented afternoon in a fixed zone. */
const BEGINNING = { startedAt: Date.UTC(2026, 4, 3, 20, 2, 0), zone: '-06:00' };

/** The reader of the project's own grammar; a fault in the grammar is a fault of the test. */
export function realReader(): Reader {
  const made = createReader(grammarFiles());
  if (made.kind === 'reader') return made.reader;
  const [first] = made.errors;
  throw new Error(`${first?.file}:${first?.line}: ${first?.message} (${made.errors.length} in all)`);
}

/** Every entry that the lines give in a new examination, those that no longer stand included. */
export function entriesOf(reader: Reader, lines: readonly string[]): readonly Entry[] {
  const talk = readTalk(lines.join('\n'), BEGINNING);
  if (talk.kind === 'error') throw new Error(`line ${talk.line} of the talk ${talk.why}`);
  return examine(reader, talk).state.entries;
}
