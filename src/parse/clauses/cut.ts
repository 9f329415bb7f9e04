// Cuts an utterance into clauses at its full stops, its dashes, and wherever a piece begins something meant another way.

import { marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { pauseAfter, pauseBefore } from '../span.ts';
import type { Pause, Token } from '../token.ts';
import { withAskedCorrections } from './asked-corrections.ts';
import { moodAt } from './begins.ts';
import { moodOfChoice } from './choices.ts';
import type { Clause } from './clause.ts';
import { colour } from './colour.ts';
import { type Draft, isFull } from './draft.ts';
import { asksAside, asksAtTheEnd, asksIfHeard, withoutClosingRight, withoutTag } from './late-question.ts';
import { isWholeProblem, mayAddress } from './list-words.ts';
import { leftAlone } from './own-breath.ts';
import { withOwnTags } from './own-tags.ts';
import { isWholeSide } from './side-anew.ts';
import { isWholeStrike } from './strikes.ts';

/** What earlier talk left: a question that waits for its answer, or one that was answered a breath ago. */
export interface Before {
  readonly open: boolean;
  readonly asking: boolean;
}

/** The clauses of an utterance in the order spoken. */
export function clausesOf(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  before: Before,
): readonly Clause[] {
  const clauses: Clause[] = [];
  const addressed = pieces.some(mayAddress);
  let sentence = 0;
  let waiting = before.open;
  let draft: Draft = { pieces: [], mood: 'statement', sentence };
  const close = () => {
    if (draft.pieces.length > 0) {
      const clause = settled(draft, tokens, before.asking && !before.open && !waiting);
      clauses.push(clause);
      waiting = isWaiting(clause, isFull(draft.pieces), waiting);
    }
    draft = { pieces: [], mood: 'statement', sentence };
  };
  pieces.forEach((piece, i) => {
    const pause = i === 0 ? '' : pauseBefore(tokens, piece);
    if (leadsOn(draft, pause)) {
      // "Correction: T five": what it corrects follows its colon.
    } else if (pause === 'end' || pause === 'ask') {
      sentence++;
      close();
    } else if (pause === 'dash' && !isOpenEnded(draft) && !isHowItWas(draft, piece)) close();
    if (
      pause === 'pause' &&
      draft.mood === 'statement' &&
      isFull(draft.pieces) &&
      asksAside(pieces, i, tokens)
    )
      close();
    const full = isFull(draft.pieces);
    const asked = draft.mood === 'question' && full;
    if (draft.mood === 'problem' && isWholeProblem(draft.pieces, piece, tokens)) close();
    if (isWholeSide(draft, piece, tokens)) close();
    if (isWholeStrike(draft, pieces, i, pauseBefore(tokens, piece))) close();
    const turn = isOpenEnded(draft)
      ? null
      : moodAt({ piece, pieces, i, tokens, full, asked, waiting, addressed, draft });
    if (turn?.turn === 'begin') close();
    if (turn !== null) draft.mood = turn.mood;
    else if (draft.mood === 'statement') {
      const coloured = colour(piece, draft.pieces, pieces, i, tokens);
      const alone = coloured === 'others' ? leftAlone(draft.pieces, pieces, i, tokens) : 0;
      const breath = alone > 0 ? draft.pieces.splice(alone) : [];
      if (alone > 0) close();
      draft.pieces.push(...breath);
      draft.mood = coloured ?? draft.mood;
    }
    draft.pieces.push(piece);
  });
  close();
  return withAskedCorrections(withOwnTags(clauses, tokens), tokens);
}

/** True for the words of a correction alone, before a dash, or before a full stop where they can be nothing else. */
const leadsOn = ({ mood, pieces }: Draft, pause: Pause): boolean =>
  mood === 'correction' &&
  pieces.every(({ role }) => role === 'correction') &&
  (pause === 'dash' || (pause === 'end' && pieces.every((piece) => marked(piece, 'correct', 'firm'))));

// "Left radial: absent", "pulse in the foot - weak": how it was stands after the colon.
const isHowItWas = ({ mood, pieces }: Draft, next: Piece): boolean =>
  mood === 'statement' &&
  pieces.some((piece) => readingOf(piece, 'csm') !== null && marked(piece, 'noun')) &&
  pieces.every(({ role }) => CHECKED.has(role)) &&
  (marked(next, 'state') || marked(next, 'negation', 'after'));

const CHECKED: ReadonlySet<Role> = new Set(['csm', 'vital', 'site', 'side', 'part', 'small']);

// What is marked, what names a problem and what is said after a turn to another patient is meant as it stands, to the end of
// its sentence.
const isOpenEnded = ({ mood }: Draft): boolean => mood === 'mark' || mood === 'problem' || mood === 'patient';

function settled(draft: Draft, tokens: readonly Token[], asking: boolean): Clause {
  const { sentence } = draft;
  const pieces = withoutClosingRight(draft.pieces, tokens);
  const pause = pauseAfter(tokens, pieces.at(-1) ?? { to: 0 });
  const asked = pause === 'ask' && !asksIfHeard(pieces, tokens);
  const asks = draft.mood === 'statement' && (asked || asksAtTheEnd(pieces, tokens, asking));
  const choice = draft.mood === 'statement' ? moodOfChoice(pieces, tokens) : null;
  const mood = asks ? 'question' : (choice ?? draft.mood);
  return { pieces: mood === 'question' ? withoutTag(pieces, tokens) : pieces, mood, sentence, pause };
}

/** Whether a question waits for its answer after this clause. */
function isWaiting({ mood, pause }: Clause, full: boolean, waiting: boolean): boolean {
  // "Here?" asks what was asked before.
  if (mood === 'question') return full || waiting || pause === 'ask';
  return mood === 'answer' || (mood === 'statement' && full) ? false : waiting;
}
