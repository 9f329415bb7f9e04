// "No tenderness there. Oh, hang on, he flinched": what is found after such words, where its opposite was said last, takes its place.

import type { Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { CorrectionFrame, Frame, StatementFrame } from '../../frame.ts';
import { spanned } from '../../span.ts';
import type { Talk } from '../talk.ts';
import { sameThing } from './same-thing.ts';
import { sameTarget } from './target.ts';

const TURNS = /\b(hang on|hold on|wait|actually|no sorry|sorry no|my mistake|scratch that|oops)\b/;

/** Makes corrections of the frames from `before` on that say the opposite of what was `said`, where words of this utterance take something back. */
export function takeBackOpposites(
  talk: Talk,
  clause: Clause,
  before: number,
  said: readonly Statement[],
): void {
  const { to } = spanned(clause.pieces);
  const words = talk.tokens.slice(0, to).map(({ word }) => word);
  if (!TURNS.test(words.join(' '))) return;
  for (let at = before; at < talk.frames.length; at++) {
    const frame = talk.frames[at];
    if (frame?.frame !== 'statement') continue;
    // "He can't wiggle his toes, no wait, he can, they're moving".
    const own = talk.frames.slice(0, at).flatMap((one) => saidBefore(talk, one, frame));
    const old = [...said, ...own].findLast((one) => isOpposite(one, frame.statement));
    if (old !== undefined) talk.frames[at] = inPlaceOf(frame, old);
  }
}

// What the same breath said before the words that take it back.
function saidBefore({ utterance }: Talk, one: Frame, frame: StatementFrame): readonly Statement[] {
  if (one.frame !== 'statement') return [];
  const between = utterance.text.slice(one.span[1], Math.max(one.span[1], frame.span[1])).toLowerCase();
  return TURNS.test(between) ? [one.statement] : [];
}

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
