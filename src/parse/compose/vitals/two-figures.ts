// "… one twenty three on eighty four": two figures with an "on" or an "over" between, which are a pressure only where one was named.

import type { Island } from '../../islands/island.ts';
import { figureIn, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { vitalOf } from './vital.ts';
import type { VitalRead } from './vital-read.ts';

/** The pressure whose first figure is the piece at `i`, three pieces long; null where there is none, or none that can be. */
export function pressureAt(pieces: readonly Piece[], tokens: readonly Token[], i: number): VitalRead | null {
  const [upper, on, lower] = pieces.slice(i, i + 3);
  if (upper === undefined || on === undefined || lower === undefined) return null;
  if (
    isPaused(tokens, upper) ||
    !/^(on|over|upon|by)$/.test(tokens[on.from]?.word ?? '') ||
    on.to - on.from > 1
  )
    return null;
  const [systolic, diastolic] = [figureIn(upper), figureIn(lower)];
  if (systolic === null || diastolic === null) return null;
  const slot = (value: number) => ({
    rule: 'numbers.number',
    from: 0,
    to: 0,
    value,
    time: null,
    loose: false,
  });
  const island: Island = {
    file: 'vitals',
    rule: 'vitals.blood-pressure',
    from: 0,
    to: 0,
    cost: 0,
    tags: [
      { key: 'vital', value: 'blood-pressure' },
      { key: 'num', value: 'systolic' },
      { key: 'num', value: 'diastolic' },
    ],
    slots: [slot(systolic), slot(diastolic)],
  };
  return vitalOf(island);
}
