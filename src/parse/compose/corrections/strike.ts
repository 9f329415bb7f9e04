// Takes back what was said: the last thing, or what is named.

import type { Clause } from '../../clauses/clause.ts';
import type { CorrectionTarget } from '../../frame.ts';
import { figureIn, likelyTag, marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { bear, note, place, spanOf, type Talk, textOf } from '../talk.ts';
import { findingIn } from './said-anew.ts';

/** Strikes what the clause names after its strike word, or the last thing said. */
export function strike(talk: Talk, clause: Clause): void {
  const span = spanned(clause.pieces);
  const { from, to } = span;
  const [first, ...rest] = clause.pieces;
  const target = named(talk, beforeReason(talk, rest));
  // "Scratch the morphine": nobody may strike what was said last for a word that is not known; the words are kept.
  const isOpen = first !== undefined && !marked(first, 'strike', 'last') && Object.keys(target).length === 0;
  if (isOpen && rest.some(({ role }) => role === 'unknown') && !isOfLast(talk, rest)) return;
  if (isOpen && rest.some((piece) => isOtherFigure(talk, piece) || isOtherOne(talk, piece))) {
    note(talk, span);
    place(talk, span);
    return;
  }
  // "I do have a pulse there, strike that other one": the one before is meant, and never what its own breath has just told.
  if (first !== undefined && marked(first, 'strike', 'last') && isOfOther(talk, rest)) {
    note(talk, span);
    place(talk, span);
    return;
  }
  talk.frames.push({
    frame: 'correction',
    target,
    change: { change: 'strike' },
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: {},
    doubt: [],
  });
  bear(talk, { checks: [] });
  place(talk, span);
}

// "Strike the swelling of the cheek, that's just his ordinary face": the reason names nothing to strike.
function beforeReason({ tokens }: Talk, pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex(
    ({ from }, k) =>
      k > 1 && /^(that|it|its|this|those|because|since|which|there)$/.test(tokens[from]?.word ?? ''),
  );
  return at < 0 ? pieces : pieces.slice(0, at);
}

/** True where the words that are not known are among those of the care said last. */
function isOfLast({ context, tokens }: Talk, rest: readonly Piece[]): boolean {
  const [last] = context.said;
  if (last?.kind !== 'care' || last.text === undefined) return false;
  const words = last.text.toLowerCase().split(/[^a-z0-9]+/);
  return rest.every(({ role, from }) => role !== 'unknown' || words.includes(tokens[from]?.word ?? ''));
}

// "So scratch the perfect ten": a number that was not said strikes nothing.
function isOtherFigure({ context }: Talk, piece: Piece): boolean {
  const figure = piece.role === 'figure' ? figureIn(piece) : null;
  const last = context.said.at(-1);
  return (
    figure !== null && (last === undefined || !JSON.stringify(last).match(new RegExp(`\\b${figure}\\b`)))
  );
}

// "Scratch the first": which one that is nobody said.
const isOtherOne = ({ tokens }: Talk, { from, to }: Piece): boolean =>
  tokens.slice(from, to).some(({ word }) => /^(first|second|third|fourth|other|others|earlier)$/.test(word));

const isOfOther = ({ tokens }: Talk, rest: readonly Piece[]): boolean => {
  const [first, last] = [rest[0], rest.at(-1)];
  const words = saidIn(tokens, first?.from, last?.to);
  return /^(other|earlier|previous|first|old) (one|entry|bit|thing)?( .*)?$/.test(`${words} `);
};

function named(talk: Talk, pieces: readonly Piece[]): CorrectionTarget {
  // "The clean sheet": a word that calls a thing so names no finding.
  const finding = findingIn(pieces.filter((piece) => !marked(piece, 'soft')));
  const site = phrasesIn(itemsOf(talk, pieces)).flatMap((phrase) => phrase.sites.slice(0, 1));
  const last = site.at(-1);
  const side = site.findLast((ref) => ref.side !== null)?.side ?? null;
  return {
    ...(finding === null ? {} : { kind: 'finding', finding }),
    ...Object.assign({}, ...pieces.map(thing)),
    ...(last === undefined ? {} : { site: last.site }),
    ...(side === null ? {} : { side }),
  };
}

/** The kind of thing that a piece names, and which one, in the words of the grammar. */
function thing(piece: Piece): CorrectionTarget {
  const tagged = <K extends 'vital' | 'care' | 'topic'>(kind: 'vital' | 'care' | 'history', key: K) => {
    const value = likelyTag(piece, key);
    return value === null ? {} : { kind, [key]: value as NonNullable<CorrectionTarget[K]> };
  };
  switch (piece.role) {
    case 'vital':
      return tagged('vital', 'vital');
    case 'care':
      return tagged('care', 'care');
    case 'history':
      return tagged('history', 'topic');
    case 'csm':
      return likelyTag(piece, 'pulse') === null ? { kind: 'csm' } : {};
    default:
      return {};
  }
}
