// Composes the wish to open a kept record; the words after "open the record of" are what it is known by, whatever they are.

import type { RecordMeant } from '../frame.ts';
import { numberOf } from '../islands/island.ts';
import { type Piece, readingOf } from '../pieces/piece.ts';
import { place, spanOf, type Talk, textOf } from './talk.ts';

/** Nothing more is read of such an utterance: a name may sound like anything ("Mark", "Ankle Joe"). */
export function openRecord(talk: Talk, piece: Piece): void {
  const end = talk.tokens.length;
  const record = meantBy(talk, piece);
  talk.frames.push({
    frame: 'command',
    command: 'open-record',
    ...(record === null ? {} : { record }),
    heard: textOf(talk, piece.from, end),
    span: spanOf(talk, piece.from, end),
  });
  place(talk, { from: piece.from, to: end });
}

function meantBy(talk: Talk, piece: Piece): RecordMeant | null {
  const island = readingOf(piece, 'commands.command');
  if (island === null) return null;
  const [inList, patient] = [numberOf(island, 'place'), numberOf(island, 'patient')];
  if (inList !== null) return { place: inList };
  if (patient !== null) return { patient };
  const words = textOf(talk, piece.to, talk.tokens.length);
  return words === '' ? null : { words };
}
