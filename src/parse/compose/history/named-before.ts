// "A kiwi allergy", "thyroid tablets": the word before the topic's name is which it is, whatever word that is. Denied of it,
// it is no denial of the whole topic.

import type { HistoryStatement, Topic } from '../../../terms/index.ts';
import { hasTag, tagOf } from '../../islands/island.ts';
import { isSmall, marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { type Talk, textOf } from '../talk.ts';
import type { FoundHistory } from './found-history.ts';

/** The names of a topic that take a word before them. */
const NAMES: readonly (readonly [topic: Topic, name: RegExp])[] = [
  ['allergies', /^allerg(?:y|ies)$/],
  ['medications', /^(?:tablets?|pills?|meds|medicines?|medications?)$/],
];

function topicOf(piece: Piece, word: string): Topic | null {
  const one = NAMES.find(([topic, name]) => {
    const island = readingOf(piece, `history.${topic}`);
    return island !== null && tagOf(island, 'topic') === topic && hasTag(island, 'noun') && name.test(word);
  });
  return one?.[0] ?? null;
}

/** What is told or denied of the one that is named straight before the topic's name at `i`, or null. */
export function namedBefore(
  talk: Talk,
  pieces: readonly Piece[],
  i: number,
  negated: boolean,
): FoundHistory | null {
  const piece = pieces[i];
  const topic = piece === undefined ? null : topicOf(piece, talk.tokens[piece.from]?.word ?? '');
  if (piece === undefined || topic === null) return null;
  let first = i;
  while (isJoined(talk, pieces[first - 1]) && isWordOfIt(pieces[first - 1] as Piece)) first--;
  const named = pieces.slice(first, i);
  if (!named.some(({ role }) => role === 'unknown')) return null;
  const before = pieces[first - 1];
  const isStraight = before !== undefined && marked(before, 'negation', 'before');
  // "No meds, well, gout tablets": the "no" was said of all others. What else is said of tablets is read as any text is.
  if (topic === 'medications' && (!negated || isStraight)) return null;
  const denied = negated && topic === 'allergies';
  // The words that deny it are kept with it: without them the text would tell of it.
  const from = (denied && isStraight ? before.from : undefined) ?? pieces[first]?.from ?? piece.from;
  const to = piece.to;
  const statement: HistoryStatement = { kind: 'history', topic, text: textOf(talk, from, to) };
  return { statement: denied ? { ...statement, present: false } : statement, known: {}, from, to };
}

const isJoined = ({ tokens }: Talk, before: Piece | undefined): boolean =>
  before !== undefined && !isPaused(tokens, before);

// "A bad kiwi allergy", "passion fruit allergy", "kiwi or mango allergy".
const isWordOfIt = (piece: Piece): boolean =>
  piece.role === 'unknown' ||
  piece.role === 'attribute' ||
  (isSmall(piece, 'word') && !isSmall(piece, 'turn') && !isSmall(piece, 'thing')) ||
  isSmall(piece, 'article') ||
  isSmall(piece, 'or');
