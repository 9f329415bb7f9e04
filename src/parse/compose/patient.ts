// Composes a turn to another patient; what is said after it in the same breath is that patient's, and is no entry here.

import type { Clause } from '../clauses/clause.ts';
import { NOTHING_SAID } from '../context.ts';
import type { PatientMeant } from '../frame.ts';
import { marked, type Piece, tagIn } from '../pieces/piece.ts';
import { place, spanOf, state, type Talk, textOf } from './talk.ts';

/** The doubt of a note that holds what was said after the turn. */
export const ANOTHERS = 'said after turning to another patient: it belongs to that patient';

const meantIn = (piece: Piece): string | null =>
  tagIn(piece, 'patients.switch', 'switch') ?? tagIn(piece, 'patients.alone', 'switch');

const isPatient = (value: string): value is Exclude<PatientMeant, number> =>
  value === 'next' || value === 'previous' || value === 'new';

/** The command, with the words after it; those are kept here as a note too, marked as another's. */
export function patient(talk: Talk, clause: Clause): void {
  const at = clause.pieces.findIndex((piece) => meantIn(piece) !== null);
  const piece = clause.pieces[at];
  const said = piece === undefined ? null : meantIn(piece);
  if (piece === undefined || said === null) return;
  const end = talk.tokens.length;
  const after = talk.clauses.slice(talk.clauses.indexOf(clause) + 1).flatMap(({ pieces }) => pieces);
  const rest = [...clause.pieces.slice(at + 1), ...after].some((one) => !isPlain(one))
    ? textOf(talk, piece.to, end)
    : '';
  talk.frames.push({
    frame: 'command',
    command: 'patient',
    patient: isPatient(said) ? said : Number(said),
    ...(rest === '' ? {} : { rest }),
    heard: textOf(talk, piece.from, piece.to),
    span: spanOf(talk, piece.from, piece.to),
  });
  place(talk, { from: piece.from, to: end });
  talk.times = [];
  if (rest !== '') {
    const text = textOf(talk, piece.from, end);
    state(talk, [{ statement: { kind: 'note', text }, from: piece.from, to: end, doubt: [ANOTHERS] }]);
  }
  // The site in mind and an open question are the one patient's.
  talk.context = NOTHING_SAID;
}

const isPlain = (piece: Piece): boolean =>
  piece.role === 'talk' || piece.role === 'small' || marked(piece, 'opening');
