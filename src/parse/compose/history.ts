// Composes history from its opening words and the patient's own words that follow, as said.

import type { HistoryStatement, Topic } from '../../terms/index.ts';
import { hasTag, type Island, numberOf, tagOf } from '../islands/island.ts';
import { marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { inRecordUnit } from '../units.ts';
import { type HowKnown, type Talk, textOf } from './talk.ts';

export interface FoundHistory {
  readonly statement: HistoryStatement;
  readonly known: HowKnown;
  readonly from: number;
  readonly to: number;
}

/** A topic named without a text of its own: what follows, or the next answer, may give it. */
export interface OpenTopic {
  readonly topic: Topic;
  readonly from: number;
  readonly to: number;
}

/** What one history piece says with the pieces after it; `pieces` is the rest of the clause from that piece on. */
export function historyOf(
  talk: Talk,
  pieces: readonly Piece[],
  negated: boolean,
): readonly FoundHistory[] | OpenTopic {
  const [piece] = pieces;
  const island = piece === undefined ? null : readingOf(piece, 'history');
  const topic = island === null ? null : (tagOf(island, 'topic') as Topic | null);
  if (piece === undefined || island === null || topic === null) return [];
  const { from, to } = piece;
  const give = (text: string, end: number, more: Partial<HistoryStatement> = {}): readonly FoundHistory[] => [
    { statement: { kind: 'history', topic, text, ...more }, known: {}, from, to: end },
  ];
  // "My name is …" is the patient's only in answer to being asked: the responder has a name too.
  if (
    hasTag(island, 'mine') &&
    !(talk.context.asked?.about === 'topic' && talk.context.asked.topic === topic)
  )
    return [];
  if (hasTag(island, 'denied') || (negated && (hasTag(island, 'noun') || hasTag(island, 'whole'))))
    return give(textOf(talk, from, to), to, { present: false });
  if (topic === 'age') return ageOf(talk, island, from, to);
  if (topic === 'sex') return give(tagOf(island, 'sex') ?? textOf(talk, from, to), to);
  if (topic === 'weight' && numberOf(island, 'weight') !== null) return weightOf(talk, island, from, to);
  if (hasTag(island, 'whole')) return give(textOf(talk, from, to), to);
  const end = textEnd(talk, pieces, hasTag(island, 'whole-on') || topic === 'mechanism');
  if (hasTag(island, 'whole-on')) return give(textOf(talk, from, end), end);
  // "Taking this glove off" takes no drug.
  if (hasTag(island, 'guard') && !opensText(talk, pieces[1])) return [];
  if (end === to) return { topic, from, to };
  // "Name is Ilse Brandt and…": a name is short.
  const short = hasTag(island, 'short') ? nameEnd(talk, to, end) : end;
  const start = firstOfText(talk, to, short);
  if (start >= short) return { topic, from, to };
  return give(textOf(talk, start, short), short, negated ? { present: false } : {});
}

// A name runs to the first pause, and over three words at most.
function nameEnd(talk: Talk, from: number, end: number): number {
  for (let at = from; at < Math.min(end, from + 3); at++) {
    if ((talk.tokens[at]?.pause ?? '') !== '') return at + 1;
    if (/^(i|and|he|she|is|from|who|but)$/.test(talk.tokens[at + 1]?.word ?? '')) return at + 1;
  }
  return Math.min(end, from + 3);
}

function ageOf(talk: Talk, island: Island, from: number, to: number): readonly FoundHistory[] | OpenTopic {
  const years = numberOf(island, 'years');
  const months = numberOf(island, 'months');
  if (years === null && months === null) return { topic: 'age', from, to };
  const age = years ?? inRecordUnit({ value: months ?? 0, unit: 'month' })?.value ?? null;
  if (age === null || age < 0 || age > 120) return [];
  const text = textOf(talk, from, to);
  const sex = tagOf(island, 'sex');
  const found: FoundHistory[] = [
    { statement: { kind: 'history', topic: 'age', text, years: age }, known: {}, from, to },
  ];
  if (sex !== null)
    found.push({ statement: { kind: 'history', topic: 'sex', text: sex }, known: {}, from, to });
  return found;
}

const MASS: Readonly<Record<string, 'kilogram' | 'pound' | 'stone'>> = {
  lb: 'pound',
  stone: 'stone',
  kg: 'kilogram',
};

function weightOf(talk: Talk, island: Island, from: number, to: number): readonly FoundHistory[] {
  const unit = MASS[tagOf(island, 'unit') ?? 'kg'] ?? 'kilogram';
  const converted = inRecordUnit({ value: numberOf(island, 'weight') ?? 0, unit });
  if (converted === null || converted.value < 0.3 || converted.value > 400) return [];
  const statement: HistoryStatement = {
    kind: 'history',
    topic: 'weight',
    text: textOf(talk, from, to),
    kg: converted.value,
  };
  return [{ statement, known: {}, from, to }];
}

const STRONG: ReadonlySet<Role> = new Set([
  'vital',
  'history',
  'ask',
  'asking',
  'strike',
  'mark',
  'command',
  'csm',
  'same',
  'intention',
]);

// "Slipped on the ice" names no ice that was put on anybody: care breaks a text only where it was given.
const isStrong = (piece: Piece, paused: boolean): boolean =>
  piece.role === 'care'
    ? paused || marked(piece, 'on') || marked(piece, 'put') || marked(piece, 'verb')
    : STRONG.has(piece.role) && !(piece.role === 'intention' && piece.weak);

// The text runs on to the full stop, or to the next thing that is stated in its own right.
function textEnd(talk: Talk, pieces: readonly Piece[], loose: boolean): number {
  let end = pieces[0]?.to ?? 0;
  for (let k = 1; k < pieces.length; k++) {
    const piece = pieces[k];
    if (piece === undefined) break;
    const pause = talk.tokens[(pieces[k - 1]?.to ?? 1) - 1]?.pause ?? '';
    if (pause === 'end' || pause === 'ask') break;
    if (isStrong(piece, pause !== '') && !(loose && piece.role === 'history' && pause === '')) break;
    if (pause !== '' && startsStatement(pieces, k)) break;
    end = piece.to;
  }
  return end;
}

// After a comma, a finding or a site that is not part of a plain list begins a statement of its own.
function startsStatement(pieces: readonly Piece[], k: number): boolean {
  const rest = pieces.slice(k, k + 4).filter((piece) => piece.role !== 'small');
  const [first, second] = rest;
  if (first === undefined) return false;
  if (first.role === 'negation' || first.role === 'finding')
    return second !== undefined && second.role !== 'unknown';
  return (
    (first.role === 'side' || first.role === 'site') &&
    second !== undefined &&
    (second.role === 'finding' || second.role === 'site')
  );
}

const opensText = (talk: Talk, next: Piece | undefined): boolean =>
  next !== undefined &&
  next.role !== 'site' &&
  next.role !== 'vital' &&
  next.role !== 'intention' &&
  next.role !== 'talk' &&
  !/^(this|that|the|it|these|those|off|you|your|his|her|him|them|me|us|care|over|place|part|turns)$/.test(
    talk.tokens[next.from]?.word ?? '',
  ) &&
  (talk.tokens[next.from - 1]?.pause ?? '') === '';

const LEAD = /^(is|are|was|to|of|that|includes?|um|well|yeah|yes|it)$/;

function firstOfText(talk: Talk, from: number, to: number): number {
  let at = from;
  while (at < to && LEAD.test(talk.tokens[at]?.word ?? '')) at++;
  return at;
}

/** Free words in answer to a question of history, or null where nothing is left of them. */
export function answeredTopic(talk: Talk, topic: Topic, from: number, to: number): FoundHistory | null {
  const start = firstOfText(talk, from, to);
  if (start >= to) return null;
  return {
    statement: { kind: 'history', topic, text: textOf(talk, start, to) },
    known: { topic: 'carried' },
    from: start,
    to,
  };
}
