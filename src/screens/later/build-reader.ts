// The reader of talk, built when the page is already there; a faulty grammar costs understanding, never words.

import { createReader } from '../../parse/index.ts';
import { keepingRefusals } from '../../record/index.ts';
import type { TalkReader } from '../desk/index.ts';
import { grammarFiles } from './grammar.ts';

export interface BuiltReader {
  readonly reader: TalkReader;
  /** what is wrong with the grammar, or null */
  readonly fault: string | null;
}

/** The reader. With a fault in the grammar every utterance is kept as a note, and `fault` says where it lies. */
export function buildReader(): BuiltReader {
  const made = createReader(grammarFiles());
  if (made.kind === 'reader') return { reader: keepingRefusals(made.reader), fault: null };
  const [first] = made.errors;
  const where = first === undefined ? '' : ` (${first.file}:${first.line} ${first.message})`;
  // A grammar without rules understands nothing, and so keeps everything.
  const bare = createReader([]);
  if (bare.kind === 'errors') throw new Error('an empty grammar has no faults');
  return {
    reader: bare.reader,
    fault: `Talk cannot be understood: the grammar has a fault${where}. Every word is kept as said.`,
  };
}
