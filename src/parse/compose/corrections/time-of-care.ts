// "Tourniquet on the right thigh." "Tourniquet time thirteen forty six": the time is that of the one that was told, and no second one is given.

import type { Care, CareStatement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { likelyTag, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { isChatter } from '../light.ts';
import { aheadDoubt, bear, place, spanOf, state, type Talk, textOf } from '../talk.ts';

const NAMED = /\btime( is| was| of| for)*\b/;

const OTHER = 'Another time was said of it before: which is right?';
const WHICH = 'Which of those that were told is it the time of?';

/** Times the care that was told before; false where the clause says anything but the time of care that is on record. */
export function timesCare(talk: Talk, clause: Clause): boolean {
  const care = careNamed(talk, clause);
  const [time, ...others] = talk.times;
  if (care === null || time === undefined || others.length > 0) return false;
  const told = talk.context.cared.filter((one) => one.care === care);
  const [one] = told;
  if (one === undefined) return false;
  const { from, to } = spanned(clause.pieces);
  const heard = textOf(talk, from, to);
  if (told.length > 1) {
    state(talk, [{ statement: { kind: 'note', text: heard }, from, to, doubt: [WHICH] }]);
    place(talk, { from, to });
    return true;
  }
  const statement: CareStatement = { kind: 'care', care };
  const at = time.instant;
  talk.frames.push({
    frame: 'correction',
    target: { kind: 'care', care },
    change: { change: 'statement', statement },
    heard,
    span: spanOf(talk, from, to),
    known: {},
    doubt: [...aheadDoubt(at, talk.utterance.heardAt), ...(one.at === null || one.at === at ? [] : [OTHER])],
    at,
  });
  bear(talk, { cared: talk.context.cared.map((other) => (other === one ? { ...one, at } : other)) });
  place(talk, { from, to });
  return true;
}

/** The one care that a clause names, where nothing but its time is said of it. */
function careNamed(talk: Talk, { pieces, mood }: Clause): Care | null {
  const [named, ...others] = pieces.filter(({ role }) => role === 'care');
  if (mood !== 'statement' || named === undefined || others.length > 0) return null;
  const isTime = (piece: Piece): boolean => piece.role === 'time' || isChatter(piece) || piece === named;
  if (!pieces.every(isTime)) return null;
  const care = likelyTag(named, 'care') as Care | null;
  const { from, to } = spanned(pieces);
  return care !== null && care !== 'medication' && NAMED.test(saidIn(talk.tokens, from, to)) ? care : null;
}
