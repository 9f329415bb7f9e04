// "Pressure was one thirty, not one thirteen": a sign said with the figure that it was not takes the place of that figure.

import type { Vital, VitalStatement } from '../../../terms/index.ts';
import { readNumbers } from '../../numbers/index.ts';
import { figureIn, likelyTag, marked, type Piece } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';
import { isChatter } from '../light.ts';
import type { Talk } from '../talk.ts';
import { vitalFromFigure, vitalOf } from '../vitals/vital.ts';
import type { VitalRead } from '../vitals/vital-read.ts';
import type { Changed } from './changes.ts';
import { mainOf } from './main-figure.ts';

/** The change of a sign whose wrong figure is named behind a "not"; null where the pieces do not say that. */
export function figureNotThat(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const all = pieces.filter((piece) => piece.role !== 'correction' && !isChatter(piece));
  // "No, thirty five point six, not thirty six."
  const said = all[0] !== undefined && marked(all[0], 'plain') ? all.slice(1) : all;
  const [sign, not, was, ...others] = said;
  if (sign === undefined || not === undefined || was === undefined || others.length > 0) return null;
  const wrong = figureIn(was);
  if (!isNot(talk.tokens, not) || wrong === null) return null;
  const last = talk.context.said.findLast((one) => one.kind === 'vital');
  const vital = sign.role === 'vital' ? (likelyTag(sign, 'vital') as Vital | null) : (last?.vital ?? null);
  const isLast = last !== undefined && last.vital === vital;
  // A figure alone is of the sign before it, and another sign than that may be meant by its name.
  if (vital === null || (isLast ? !isNumberOf(last, wrong) : sign.role !== 'vital')) return null;
  return changeOf(talk, sign, vital, { kind: 'vital', vital });
}

// "Not thirty six", of thirty six point six.
const isNumberOf = (last: VitalStatement, wrong: number): boolean => {
  const main = mainOf(last);
  return main !== null && (main === wrong || Math.trunc(main) === wrong);
};

const isNot = (tokens: readonly Token[], { from, to }: Piece): boolean =>
  to - from === 1 && tokens[from]?.word === 'not';

function changeOf(
  talk: Talk,
  sign: Piece,
  vital: Vital,
  target: Changed['target'],
): readonly Changed[] | null {
  const island = sign.islands[0];
  const whole = sign.role === 'vital' && island !== undefined ? vitalOf(island) : null;
  if (whole !== null) return [anew(whole, target)];
  const value = sign.role === 'vital' ? numberIn(talk, sign) : figureIn(sign);
  if (value === null) return null;
  // One figure of a pressure is its upper one; the lower one stands.
  if (vital === 'blood-pressure') return [{ change: { change: 'number', value }, target }];
  const read = vitalFromFigure(vital, value);
  return read === null ? null : [anew(read, target)];
}

const anew = ({ statement, known }: VitalRead, target: Changed['target']): Changed => ({
  change: { change: 'statement', statement },
  target,
  basis: { statement, known, doubt: [] },
});

/** The one number that ends a sign's words, wherever the grammar parted it. */
function numberIn({ tokens }: Talk, { islands: [island], to }: Piece): number | null {
  const from = island?.slots[0]?.from;
  if (from === undefined) return null;
  const words = tokens.slice(from, to).map(({ word }) => word);
  return readNumbers(words, 0).find(({ end }) => end === words.length)?.value ?? null;
}
