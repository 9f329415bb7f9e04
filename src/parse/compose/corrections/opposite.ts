// "No tenderness there. Oh, hang on, he flinched": what is found after such words, where its opposite was said last, takes its place.

import type { Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { CorrectionFrame, Frame, StatementFrame } from '../../frame.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { Talk } from '../talk.ts';
import { sameThing } from './same-thing.ts';
import { sameTarget } from './target.ts';

const TURNS =
  /\b(hang on|hold on|wait|actually|no sorry|sorry no|my mistake|scratch that|oops|there it is)\b/;

// Words that take something back stand near both; it also keeps a breathless talk's cost in step with its length.
const NEAR_WORDS = 24;
const NEAR_FRAMES = 6;

/** Makes corrections of the frames from `before` on that say the opposite of what was `said`, where words near them take something back. */
export function takeBackOpposites(
  talk: Talk,
  clause: Clause,
  before: number,
  said: readonly Statement[],
): void {
  const { from, to } = spanned(clause.pieces);
  if (before === talk.frames.length || !TURNS.test(saidIn(talk.tokens, Math.max(0, from - NEAR_WORDS), to)))
    return;
  for (let at = before; at < talk.frames.length; at++) {
    const frame = talk.frames[at];
    if (frame?.frame !== 'statement') continue;
    // "He can't wiggle his toes, no wait, he can, they're moving".
    const own = talk.frames
      .slice(Math.max(0, at - NEAR_FRAMES), at)
      .findLast((one) => isTakenBack(talk, one, frame));
    const told =
      own?.frame === 'statement' ? own.statement : said.findLast((one) => isOpposite(one, frame.statement));
    if (told !== undefined) talk.frames[at] = inPlaceOf(frame, told);
  }
}

// What the same breath said before the words that take it back.
const isTakenBack = ({ utterance }: Talk, one: Frame, frame: StatementFrame): boolean =>
  one.frame === 'statement' &&
  isOpposite(one.statement, frame.statement) &&
  TURNS.test(utterance.text.slice(one.span[1], Math.max(one.span[1], frame.span[1])).toLowerCase());

function isOpposite(one: Statement, other: Statement): boolean {
  if (!sameThing(one, other) || !('present' in one) || !('present' in other)) return false;
  const sameLevel = one.kind !== 'finding' || other.kind !== 'finding' || one.level === other.level;
  return sameLevel && one.present !== other.present;
}

function inPlaceOf({ statement, heard, span, known, doubt, at }: StatementFrame, old: Statement): Frame {
  const side = 'side' in old && old.side !== null && old.side !== undefined ? { side: old.side } : {};
  const frame: CorrectionFrame = {
    frame: 'correction',
    target: { ...sameTarget(old), ...side },
    change: { change: 'statement', statement },
    heard,
    span,
    known,
    doubt,
    ...(at === undefined ? {} : { at }),
  };
  return frame;
}
