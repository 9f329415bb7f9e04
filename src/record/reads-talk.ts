// What the record needs of the parser, and the promise that a fault in it costs neither words nor the examination.

import type { Reading } from '../parse/frame.ts';
import type { Utterance } from '../parse/utterance.ts';

/** A reader of talk; `Context` is the parser's own. */
export interface ReadsTalk<Context> {
  begin(): Context;
  read(utterance: Utterance, context: Context): Reading<Context>;
}

/** The note's doubt where the reader failed; a reader that never throws makes none. */
export const UNREADABLE = 'these words could not be read; they stand as they were said';

/** A fault in the reader must cost neither the words nor the rest of the examination. */
export function readSafely<Context>(
  reader: ReadsTalk<Context>,
  utterance: Utterance,
  context: Context,
): Reading<Context> {
  try {
    return reader.read(utterance, context);
  } catch {
    const { text } = utterance;
    const note = {
      frame: 'statement',
      statement: { kind: 'note', text },
      heard: text,
      span: [0, text.length],
      known: {},
      doubt: [UNREADABLE],
      group: 0,
    } as const;
    return { frames: [note], context };
  }
}
