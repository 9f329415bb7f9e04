// "Correction, tourniquets on the left thigh and the right one": several statements of one correction stand beside each other.

import type { CorrectionFrame } from '../parse/frame.ts';
import type { Said } from './effect.ts';
import { type Entry, stands } from './entry.ts';
import type { RecordState } from './state.ts';

/** What the very words of this correction entered already. Parts of a coma scale are one reading, and are none of these. */
export function listedBefore(
  state: RecordState,
  { heard }: Pick<CorrectionFrame, 'heard'>,
  { utterance }: Pick<Said, 'utterance'>,
): readonly Entry[] {
  const own = new Set(
    state.groups
      .filter((group) => group.utterance === utterance && group.id.startsWith(`${utterance}.c`))
      .flatMap(({ entries }) => entries),
  );
  return state.entries.filter(
    (entry) =>
      own.has(entry.id) &&
      stands(entry) &&
      entry.heard === heard &&
      !(entry.kind === 'vital' && entry.vital === 'gcs'),
  );
}
