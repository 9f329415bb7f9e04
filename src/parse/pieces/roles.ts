// The one list that says which reading of the same words is tried first, and the pieces that it gives.

import type { Element } from '../islands/cover.ts';
import { hasTag, type Island } from '../islands/island.ts';
import type { Piece, Role } from './piece.ts';

const ORDER: readonly (readonly [Role, (island: Island) => boolean])[] = [
  ['problem', rule('problems.problem')],
  ['problem', rule('problems.ending')],
  ['strike', rule('commands.strike')],
  ['mark', rule('commands.mark')],
  ['correction', rule('commands.correction')],
  ['command', rule('commands.command')],
  ['ask', rule('csm.ask')],
  ['ask', rule('history.ask')],
  ['history', file('history')],
  ['care', (island) => island.file === 'care' && !/^care\.(removal|earlier|waiting)$/.test(island.rule)],
  ['limbs', rule('csm.limbs')],
  ['vital', (island) => island.file === 'vitals' && !hasTag(island, 'heading') && !isLevel(island)],
  ['csm', (island) => island.file === 'csm' && !hasTag(island, 'late')],
  ['vital', (island) => island.file === 'vitals' && !isLevel(island)],
  ['csm', (island) => island.file === 'csm' && hasTag(island, 'noun')],
  ['finding', rule('findings.finding')],
  ['site', file('sites')],
  ['same', rule('sides.same')],
  ['side', (island) => island.file === 'sides' && hasTag(island, 'side')],
  ['part', (island) => island.file === 'sides' && hasTag(island, 'part')],
  ['attribute', file('findings')],
  ['time', file('times')],
  ['figure', rule('small.figure')],
  ['intention', rule('talk.intention')],
  ['mood', (island) => hasTag(island, 'mood')],
  ['asking', rule('talk.asking')],
  ['answer', rule('talk.answer')],
  ['negation', file('negation')],
  ['talk', file('talk')],
  ['small', rule('small.small')],
  // A turn to another patient is told from talk of one by what stands beside it: see clauses/list-words.ts.
  ['patient', file('patients')],
];

// "T four" is a vertebra, "T thirty six point one" a temperature.
const isLevel = (island: Island): boolean => hasTag(island, 'short') && (island.slots[0]?.value ?? 0) < 25;

function rule(name: string) {
  return (island: Island) => island.rule === name;
}

function file(name: string) {
  return (island: Island) => island.file === name;
}

// A number is never plain talk, though it stands in the file of small words.
const isPlain = (island: Island): boolean =>
  (island.file === 'small' && island.rule !== 'small.figure') || island.file === 'talk';

/** The pieces of an utterance, one for each element and one for each word between them. */
export function piecesOf(elements: readonly Element[], size: number): readonly Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  const upTo = (end: number) => {
    for (; at < end; at++) pieces.push({ role: 'unknown', from: at, to: at + 1, islands: [], weak: false });
  };
  for (const element of elements) {
    upTo(element.from);
    pieces.push(pieceOf(element));
    at = element.to;
  }
  upTo(size);
  return pieces;
}

function pieceOf({ from, to, islands }: Element): Piece {
  for (const [role, fits] of ORDER) {
    if (!islands.some(fits)) continue;
    const mine = islands.filter(fits);
    const others = islands.filter((island) => !mine.includes(island));
    return { role, from, to, islands: [...mine, ...others], weak: others.some(isPlain) };
  }
  return { role: 'unknown', from, to, islands, weak: false };
}
