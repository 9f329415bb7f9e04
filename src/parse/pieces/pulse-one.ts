// "No pulse on the left, one on the right foot": a "one" that stands for a pulse said before it.

import type { Token } from '../token.ts';
import { isSmall, marked, type Piece, readingOf } from './piece.ts';

/** Checks of a pulse that a "one" stands for. */
const PULSE = /^(pulse|pulses|radial|femoral|brachial|dp|pt|pedal|pedals|dorsalis|tibial|tib)$/;

/** "One on top of the right foot", "a weak one on the right", after a pulse of the same breath: another pulse. */
export const withPulseOnes = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.map((piece, i) => {
    const model = i > 0 && isOne(pieces, i, tokens) ? pulseBefore(pieces, i, tokens) : null;
    return model === null ? piece : another(piece, model);
  });

function isOne(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || next === undefined || piece.to - piece.from > 1) return false;
  if (tokens[piece.from]?.word !== 'one' || tokens[piece.from]?.pause !== '') return false;
  return isSmall(next, 'preposition') || next.role === 'side' || next.role === 'part' || next.role === 'site';
}

function pulseBefore(pieces: readonly Piece[], i: number, tokens: readonly Token[]): Piece | null {
  // "A weak one": how it is may stand before it.
  const end = marked(pieces[i - 1] as Piece, 'state') ? i - 1 : i;
  const model = pieces
    .slice(0, end)
    .findLast(({ role }) => role === 'csm' || role === 'finding' || role === 'vital');
  if (model === undefined || readingOf(model, 'csm') === null) return null;
  return tokens.slice(model.from, model.to).some(({ word }) => PULSE.test(word)) ? model : null;
}

const another = ({ from, to }: Piece, model: Piece): Piece => ({
  role: 'csm',
  from,
  to,
  weak: false,
  islands: [readingOf(model, 'csm')]
    .flatMap((one) => one ?? [])
    .map((island) => ({
      ...island,
      from,
      to,
      tags: [
        ...island.tags.filter(({ key }) => key === 'pulse' || key === 'aspect'),
        { key: 'csm', value: '' },
        { key: 'present', value: 'yes' },
        { key: 'late', value: '' },
      ],
      slots: [],
    })),
});
