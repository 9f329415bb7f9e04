// "Last meal at ten this morning. Correction, eleven": behind a time that was told, a bare number is of that time and of nothing said before it.

import type { Statement } from '../../../terms/index.ts';
import { readNumbers } from '../../numbers/index.ts';
import { figureIn, type Piece } from '../../pieces/piece.ts';
import { readTimes, resolveTime, type SpokenTime, tellsTime } from '../../times/index.ts';
import { saidIn } from '../../token.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { isTimed } from './late-time.ts';
import { sameTarget } from './target.ts';
import { retimed } from './told-anew.ts';

const LAST_HOUR = 24;

/** The change of the time told last; null where none was, or where the number can be none of its kind. */
export function hourAnew(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const { said, isSaidLast } = talk.context;
  const figures = pieces.filter(({ role }) => role === 'figure');
  const [figure] = figures;
  const value = figure === undefined ? null : figureIn(figure);
  if (figure === undefined || value === null || figures.length > 1 || !isSaidLast) return null;
  if (!pieces.every(({ role }) => role === 'figure' || role === 'small' || role === 'talk')) return null;
  const changed = said.map((statement) => timeOf(talk, statement, figure, value, pieces));
  return changed.length === 0 || changed.includes(null) ? null : changed.filter((one) => one !== null);
}

function timeOf(
  talk: Talk,
  statement: Statement,
  figure: Piece,
  value: number,
  pieces: readonly Piece[],
): Changed | null {
  if (statement.kind !== 'history' || !isTimed(statement) || !tellsTime(statement.text)) return null;
  const words = saidIn(talk.tokens, figure.from, figure.to).split(' ');
  const told = toldIn(statement.text.toLowerCase().split(/[\s-]+/));
  const anew = told?.time.kind === 'ago' ? readWhole([...words, ...told.rest]) : null;
  const isHour = Number.isInteger(value) && value > 0 && value <= LAST_HOUR;
  const time = anew ?? (isHour && told?.time.kind === 'clock' ? readWhole([...words, "o'clock"]) : null);
  if (anew === null && !isHour) return null;
  const { heardAt, zone } = talk.utterance;
  const basis = { statement, known: {}, doubt: ['Is that the time that was put right?'] };
  return {
    change: { change: 'statement', statement: retimed(talk, statement, pieces) },
    target: sameTarget(statement),
    basis,
    ...(time === null ? {} : { at: resolveTime(time, heardAt, zone) }),
  };
}

interface Told {
  readonly time: SpokenTime;
  /** what stands behind its first number: "hours ago" */
  readonly rest: readonly string[];
}

/** The time that a text tells, or null. */
function toldIn(words: readonly string[]): Told | null {
  for (const [at] of words.entries()) {
    const [one] = readTimes(words, at);
    const number = readNumbers(words, at)[0]?.end ?? at + 1;
    if (one !== undefined) return { time: one.time, rest: words.slice(Math.min(number, one.end), one.end) };
  }
  return null;
}

const readWhole = (words: readonly string[]): SpokenTime | null =>
  readTimes(words, 0).find(({ end }) => end === words.length)?.time ?? null;
