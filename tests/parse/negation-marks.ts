// Finds the trigger phrases of grammar/negation.jsgf in words, for tests of the negation alone: the cover that knows
// most words with the fewest phrases.

import { readFileSync } from 'node:fs';
import { type GrammarSet, linkGrammars, phrasesOf } from '../../src/jsgf/index.ts';
import { NEGATION_KINDS, type NegationKind, type NegationMark } from '../../src/parse/negation.ts';

const url = new URL('../../grammar/negation.jsgf', import.meta.url);

export interface Trigger {
  readonly phrase: string;
  readonly kind: NegationKind;
}

function grammar(): GrammarSet {
  const linked = linkGrammars([{ file: 'grammar/negation.jsgf', text: readFileSync(url, 'utf8') }]);
  if (linked.kind === 'errors') throw new Error(JSON.stringify(linked.errors, null, 2));
  return linked.grammars;
}

function triggers(): readonly Trigger[] {
  const listed = phrasesOf(grammar(), 'negation.negation', 50_000);
  if (listed.kind === 'too-many')
    throw new Error(`The negation grammar has more than ${listed.limit} phrases.`);
  return listed.phrases.map(({ words, tags }) => {
    const named = tags.filter((tag) => tag.startsWith('negation:'));
    const kind = NEGATION_KINDS.find((known) => named.length === 1 && named[0] === `negation:${known}`);
    if (kind === undefined) throw new Error(`"${words.join(' ')}" has the tags {${tags.join('} {')}}.`);
    return { phrase: words.join(' '), kind };
  });
}

/** Every phrase of the grammar with its kind. */
export const TRIGGERS = triggers();

const KINDS = new Map(TRIGGERS.map(({ phrase, kind }) => [phrase, kind]));
const LONGEST = Math.max(...TRIGGERS.map(({ phrase }) => phrase.split(' ').length));

// Known words count ten each, and each phrase costs three, so that one long phrase beats two short ones.
const worth = (words: number): number => 10 * words - 3;

interface Step {
  readonly score: number;
  readonly mark: NegationMark | null;
}

function bestStep(
  words: readonly string[],
  start: number,
  breaks: ReadonlySet<number>,
  after: readonly Step[],
): Step {
  let best: Step = { score: after[start + 1]?.score ?? 0, mark: null };
  for (let end = start + 1; end <= Math.min(words.length, start + LONGEST); end++) {
    if (end > start + 1 && breaks.has(end - 1)) break;
    const kind = KINDS.get(words.slice(start, end).join(' '));
    const score = worth(end - start) + (after[end]?.score ?? 0);
    if (kind !== undefined && score >= best.score) best = { score, mark: { start, end, kind } };
  }
  return best;
}

/** The marks in words; `breaks` are the positions before which a sentence ends, where every reach stops. */
export function marksIn(
  words: readonly string[],
  breaks: ReadonlySet<number> = new Set(),
): readonly NegationMark[] {
  const steps: Step[] = [];
  for (let at = words.length - 1; at >= 0; at--) steps[at] = bestStep(words, at, breaks, steps);
  const marks: NegationMark[] = [...breaks].map((at) => ({ start: at, end: at, kind: 'stop' }));
  for (let at = 0; at < words.length; ) {
    const mark = steps[at]?.mark ?? null;
    if (mark !== null) marks.push(mark);
    at = mark?.end ?? at + 1;
  }
  return marks;
}

const CONTRACTIONS: readonly (readonly [RegExp, string])[] = [
  [/\bcan't|\bcannot/g, 'can not'],
  [/n't\b/g, ' not'],
  [/'m\b/g, ' am'],
  [/'ve\b/g, ' have'],
  [/'re\b/g, ' are'],
  [/\b(he|she|it|that|there|patient)'s\b/g, '$1 is'],
];

/** Text as plain lower-case words, contractions in full, with the positions where a sentence ended before a word. */
export function wordsIn(text: string): { words: readonly string[]; breaks: ReadonlySet<number> } {
  const full = CONTRACTIONS.reduce(
    (t, [short, long]) => t.replace(short, long),
    text.toLowerCase().replaceAll('’', "'"),
  );
  const words: string[] = [];
  const breaks = new Set<number>();
  for (const [piece] of full.matchAll(/[a-z0-9]+|[.;?!](?=\s|$)/g))
    if (/[a-z0-9]/.test(piece)) words.push(piece);
    else breaks.add(words.length);
  return { words, breaks };
}
