// Speech that the recogniser did not understand: kept as a note with its times, and nothing before it is carried past it.

import { isNotUnderstood } from '../speech/index.ts';
import type { ReadsTalk } from './reads-talk.ts';

/**
 * A reader that keeps remarks of the hearing as they are. What was not understood may have named another site or asked
 * a question, so the site in mind and the open question end there: a "no" or a "swollen" after it must find its own.
 */
export const keepingRefusals = <Context>(reader: ReadsTalk<Context>): ReadsTalk<Context> => ({
  begin: () => reader.begin(),
  read: (utterance, context) => {
    const { text } = utterance;
    if (!isNotUnderstood(text)) return reader.read(utterance, context);
    const note = {
      frame: 'statement',
      statement: { kind: 'note', text },
      heard: text,
      span: [0, text.length],
      known: {},
      doubt: [],
      group: 0,
    } as const;
    return { frames: [note], context: reader.begin() };
  },
});
