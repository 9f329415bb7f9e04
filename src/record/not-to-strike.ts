// Words that deny or ask after a strike strike nothing: "don't delete that" and "did you scratch that" are kept as said.

import type { Frame } from '../parse/frame.ts';
import { asNote } from './unsure.ts';

const DENIED_OR_ASKED =
  /(?:\b(?:not|never|cannot)|n['’]t|\b(?:did|do|should|shall|would) (?:you|we|i|they))\s+(?:\w+\s+)?$/i;

const isStrike = (frame: Frame): boolean => frame.frame === 'correction' && frame.change.change === 'strike';

/** The frames of these words, with a note in the place of each strike that was not meant. */
export const withoutDeniedStrikes = (frames: readonly Frame[], text: string): readonly Frame[] =>
  frames.map((frame, index) =>
    isStrike(frame) && DENIED_OR_ASKED.test(text.slice(0, frame.span[0]))
      ? asNote({ ...frame, heard: text }, ['was anything to be struck?'], index)
      : frame,
  );
