// What is told of the patient in words that say nothing one by one, and lean on the talk before: "it's getting worse", "same as before".

import type { Clause } from '../clauses/clause.ts';
import { marked, type Piece } from '../pieces/piece.ts';
import { saidIn } from '../token.ts';
import { runsOf } from './breaths.ts';
import type { Talk } from './talk.ts';
import { isHeard } from './unheard-denials.ts';

const ABLE = /^((and|but) )?((he|she|they) )?(can|could) (?!not$)(?!not )\w+ \w+/;

/** "She can look up and down", "can bite down okay": what somebody can do, in words that could tell them to. */
export function bareAble(talk: Talk, { pieces, mood }: Clause): readonly Piece[] {
  const [first, last] = [pieces[0], pieces.at(-1)];
  if (mood !== 'statement' || first === undefined || last === undefined) return [];
  if (pieces.some(({ role }) => role === 'talk')) return [];
  return ABLE.test(saidIn(talk.tokens, first.from, last.to)) && !pieces.some((piece) => isHeard(talk, piece))
    ? pieces
    : [];
}

const COMPARES =
  /\b(worse|better|bigger|smaller) than\b|^(still )?no (change|changes|difference)\b|\b(is|are) new since\b|^(and )?(still )?getting (worse|better)\b/;

/** "Worse than before", "no change there", "that's new since last time": of what, the talk before tells. */
export const bareComparison = (talk: Talk, { pieces, mood }: Clause): readonly Piece[] =>
  mood === 'statement' || mood === 'past'
    ? runsOf(talk, pieces)
        .filter(
          (part) =>
            !part.some((piece) => isHeard(talk, piece)) &&
            COMPARES.test(saidIn(talk.tokens, part[0]?.from, part.at(-1)?.to)),
        )
        .flat()
    : [];

/** "It's getting worse", "he won't let us": what is told of the patient. */
export const bareTelling = (talk: Talk, { pieces, mood }: Clause): readonly Piece[] =>
  mood === 'statement'
    ? runsOf(talk, pieces)
        .filter((part) => tells(talk, part))
        .flat()
    : [];

function tells(talk: Talk, pieces: readonly Piece[]): boolean {
  const [first, last] = [pieces[0], pieces.at(-1)];
  if (first === undefined || last === undefined || first.role === 'talk') return false;
  if (pieces.some((piece) => isHeard(talk, piece))) return false;
  const said = saidIn(talk.tokens, first.from, last.to);
  // Behind an "and" it is no courtesy.
  const fewest = talk.tokens[first.from - 1]?.word === 'and' ? FEWEST_TOLD - 1 : FEWEST_TOLD;
  return (last.to - first.from >= fewest && TELLS.test(said)) || DENIES.test(said) || TURNS.test(said);
}

// "He is fine" and "it is okay" may be mere courtesy.
const FEWEST_TOLD = 4;
// "Landed on his back, wasn't out."
const DENIES = /^((and|but) )*((he|she|they|it) )?(was|were|is|did|does|has|had|would|will) not \w/;
// "Hurts but they move".
const TURNS = /^but (he|she|it|they) (move|moves|bend|bends|work|works|do|does|can|could|did|is|are)$/;
const TELLS =
  /^((and|but|so|now|then|because) )*(he|she|they|it|patient|casualty) (is|are|was|were|has|have|had|will|would|can|could|does|did|do|says|said|feels|felt|looks|looked|seems|keeps|kept|gets|got|wants|needs|moves|gives|clicks|comes|goes|never|still|just)\b/;

const LEANS =
  /^((and|but|so|yeah|yes|still|about|just|all) )*((no|not any|not much) (change|difference|better|worse|improvement)\b|((much|exactly|about) )?(the )?same (as|again)\b.|none of (that|this|these|those|it)\b|the one (above|below|beside|behind|next)\b|(over |down |up )?there (too|as well|also)\b)/;

/** "No change after moving him", "none of that on this side", "and the one below it": kept where no entry takes it up. */
export const bareReference = (talk: Talk, { pieces, mood }: Clause): readonly Piece[] => {
  const [first, last] = [pieces[0], pieces.at(-1)];
  if (first === undefined || last === undefined || mood === 'question' || mood === 'instruction') return [];
  if (pieces.some((piece) => isHeard(talk, piece) || piece.role === 'talk')) return [];
  const isLong = last.to - first.from >= FEWEST_LEANING;
  return isLong && LEANS.test(saidIn(talk.tokens, first.from, last.to)) ? pieces : [];
};

const FEWEST_LEANING = 3;

/** "Puncture marks where the dog had you": who did it is told with what was found. */
export function doerBehind(talk: Talk, { pieces, mood }: Clause): readonly Piece[] {
  const at = pieces.findIndex((piece) => marked(piece, 'mood', 'others'));
  const lead = pieces[at - 1];
  if (mood !== 'statement' || lead === undefined) return [];
  if (!/^(where|from|by)$/.test(talk.tokens[lead.to - 1]?.word ?? '')) return [];
  return pieces.slice(at - 1).filter((piece) => !isHeard(talk, piece));
}
