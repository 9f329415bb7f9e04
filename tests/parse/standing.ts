// What stands in the record after a talk, its utterances parted by "|".

import { type Entry, stands } from '../../src/record/entry.ts';
import { entriesOf, realReader } from '../talk-case.ts';

const reader = realReader();

/** The entries that are neither struck nor replaced. */
export const standing = (talk: string): readonly Entry[] =>
  entriesOf(reader, talk.split(' | ')).filter(stands);

/** Of each finding its site, side, kind, and whether it is there. */
export const found = (talk: string) =>
  standing(talk).flatMap((one) =>
    one.kind === 'finding' ? [[one.site, one.side, one.finding, one.present]] : [],
  );
