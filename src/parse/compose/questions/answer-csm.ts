// A yes or a no to "can you feel this", "is there a pulse", with the side and the strength that the answer adds.

import { isSite } from '../../../terms/index.ts';
import { isSmall, marked, type Piece, tagIn } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { type Found, inState, stateOf } from '../contrast/index.ts';
import { csmStatement } from '../csm/csm-statement.ts';
import { endOf, endsOnSide } from '../csm/limb-ends.ts';
import { isChatter } from '../light.ts';
import { sideAfter } from '../sites/said-side.ts';
import { sideIn } from '../sites/side-in.ts';
import { type HowKnown, place, type Talk } from '../talk.ts';
import type { AnswerWord } from './answer-word.ts';
import { noteAnswer } from './note-answer.ts';
import { type AskedCsm, settle } from './settle.ts';

/**
 * States of each end and aspect that was asked after whether it is intact; returns the pieces after the answer that still
 * have to be read.
 */
export function answerCsm(
  talk: Talk,
  asked: AskedCsm,
  word: AnswerWord,
  { from, to }: Span,
  rest: readonly Piece[],
): readonly Piece[] {
  const more = moreOf(rest, asked);
  // "Yes, the right one": of two that were asked after, one is answered; "no, the right" may be either way round.
  const sided = more.side === null ? asked.ends : endsOnSide(asked.ends, more.side);
  const isOther = more.pieces.some((piece) => piece.role === 'side' && sideAfter(piece) === 'mirror');
  if (word === 'no' && (more.side !== null || isOther)) {
    // "Is your left foot cold?" "No, but the right is cold": the side is that of the words behind it.
    const next = rest.slice(more.pieces.length).find((piece) => !isChatter(piece));
    if (next?.role === 'csm' || next?.role === 'finding') {
      noteAnswer(talk, { from, to });
      return rest;
    }
    noteAnswer(talk, { from, to: more.pieces.at(-1)?.to ?? to });
    place(talk, ...more.pieces);
    return rest.slice(more.pieces.length);
  }
  const carried = more.side === null && (asked.ends[0]?.side ?? null) !== null;
  const known: HowKnown = { site: 'carried', aspect: 'carried', ...(carried ? { side: 'carried' } : {}) };
  settle(
    talk,
    sided.flatMap((end) =>
      asked.aspects.map((aspect) => {
        const found: Found | null =
          word === 'yes' && more.state !== null ? inState({ aspect }, more.state) : null;
        const { present = word === 'yes', ...details } = found ?? {};
        return {
          statement: csmStatement(end, aspect, present, details),
          known,
          from,
          to: more.pieces.at(-1)?.to ?? to,
        };
      }),
    ),
  );
  place(talk, ...more.pieces);
  const next = rest.slice(more.pieces.length);
  const again = next.filter((piece) => saysAgain(piece, asked, word));
  const isElse = next.some(({ role }) => role === 'site' || role === 'side');
  if (isElse || again.length === 0) return next;
  place(talk, ...again);
  return next.filter((piece) => !again.includes(piece));
}

// "Yes, I can feel that", "no, I can't move it": the same in other words.
const saysAgain = (piece: Piece, { aspects }: AskedCsm, word: AnswerWord): boolean =>
  piece.role === 'csm' &&
  tagIn(piece, 'csm', 'present') === word &&
  aspects.every((aspect) => marked(piece, 'aspect', aspect)) &&
  !marked(piece, 'quality') &&
  !marked(piece, 'strength');

interface More {
  readonly pieces: readonly Piece[];
  readonly side: ReturnType<typeof plainSide>;
  readonly state: ReturnType<typeof stateOf>;
}

const plainSide = (pieces: readonly Piece[]) => sideIn(pieces)?.side ?? null;

/** What stands straight after a yes: "both feet", "on the right", "but weak"; nothing where more was said. */
function moreOf(rest: readonly Piece[], asked: AskedCsm): More {
  const end = rest.findIndex((piece) => !isMore(piece) && !isOfEnd(piece, asked));
  const head = end < 0 ? rest : rest.slice(0, end);
  const pieces = head.slice(0, head.findLastIndex((piece) => !isLead(piece)) + 1);
  const says = pieces.find((piece) => isState(piece));
  // A site that none of these words can be said of begins something new.
  const next = rest[pieces.length];
  if (next !== undefined && !isChatter(next) && next.role !== 'answer' && next.role !== 'negation')
    return { pieces: [], side: null, state: null };
  return { pieces, side: plainSide(pieces), state: says === undefined ? null : stateOf(says) };
}

// "Yes, both feet": the end that was asked after, named again with its side.
const isOfEnd = (piece: Piece, { ends }: AskedCsm): boolean => {
  const site = tagIn(piece, 'sites', 'site');
  return (
    piece.role === 'site' && site !== null && isSite(site) && ends.every((one) => one.site === endOf(site))
  );
};

const isState = (piece: Piece): boolean => marked(piece, 'state') && !isSmall(piece, 'link');
const isLead = (piece: Piece): boolean =>
  (isChatter(piece) || (piece.role === 'negation' && marked(piece, 'negation', 'stop'))) && !isState(piece);
const isMore = (piece: Piece): boolean => isLead(piece) || isState(piece) || piece.role === 'side';
