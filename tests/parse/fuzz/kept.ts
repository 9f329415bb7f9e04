// Finds the words of substance in an utterance that no frame holds, and says whether talk may leave them out.

import { linkGrammars } from '../../../src/jsgf/index.ts';
import type { Mood } from '../../../src/parse/clauses/clause.ts';
import { clausesOf } from '../../../src/parse/clauses/cut.ts';
import { withoutFillers } from '../../../src/parse/fillers.ts';
import type { Context, Frame } from '../../../src/parse/index.ts';
import { cover, type Element } from '../../../src/parse/islands/cover.ts';
import { SLOTS } from '../../../src/parse/islands/fill.ts';
import { hasTag } from '../../../src/parse/islands/island.ts';
import { wordsOf } from '../../../src/parse/islands/match.ts';
import { buildNetwork } from '../../../src/parse/islands/network.ts';
import { rootRules } from '../../../src/parse/islands/roots.ts';
import { afterWord, plantTree } from '../../../src/parse/islands/tree.ts';
import { withoutAdverbs } from '../../../src/parse/pieces/adverb.ts';
import { piecesOf } from '../../../src/parse/pieces/roles.ts';
import { checkTag } from '../../../src/parse/tags.ts';
import { type Token, tokenise } from '../../../src/parse/token.ts';
import { grammarFiles } from '../../../src/replay/grammar-files.ts';

export interface Unkept {
  readonly word: string;
  /** where it stands in the text */
  readonly at: number;
  /** how its clause was meant */
  readonly mood: Mood | null;
}

export interface Keeping {
  /** how many words of substance were said */
  readonly substantive: number;
  readonly unkept: readonly Unkept[];
}

// The files whose phrases say nothing of the patient by themselves: small words, talk with its moods and answers, no, and
// the words that correct and command, or turn to the problem list and to another patient.
const PLAIN_FILES = new Set(['small', 'talk', 'negation', 'commands', 'problems', 'patients']);
const fileOf = (rule: string): string => rule.slice(0, rule.indexOf('.'));

/** Looks at what was read of an utterance, with the grammar's own idea of which words are small. */
export function keeper(): (text: string, context: Context, frames: readonly Frame[]) => Keeping {
  const linked = linkGrammars(grammarFiles(), { checkTag });
  if (linked.kind === 'errors') throw new Error(linked.errors.map(({ message }) => message).join('\n'));
  const root = plantTree(buildNetwork(linked.grammars, rootRules(linked.grammars, SLOTS), SLOTS));
  const known = new Map<string, boolean>();
  // A word that may stand alone as a small word, as talk or as a no may be left out; a figure never.
  const isPlain = (word: string): boolean => {
    const before = known.get(word);
    if (before !== undefined) return before;
    const endings = afterWord(root, word)?.endings ?? [];
    const plain = endings.some(({ rule }) => PLAIN_FILES.has(fileOf(rule)) && rule !== 'small.figure');
    known.set(word, plain);
    return plain;
  };
  const readable = (word: string): boolean => /[\p{L}\p{N}]/u.test(word);

  return (text, context, frames) => {
    const all = tokenise(text);
    const spoken = all.filter(({ word }) => readable(word) && !isPlain(word));
    const isHeld = ({ from, to }: Token) => frames.some(({ span }) => from >= span[0] && to <= span[1]);
    const free = spoken.filter((token) => !isHeld(token));
    if (free.length === 0) return { substantive: spoken.length, unkept: [] };
    const tokens = withoutFillers(root, all);
    const elements = cover(root, tokens, wordsOf(tokens));
    const clauses = clausesOf(withoutAdverbs(piecesOf(elements, tokens.length), tokens), tokens, {
      open: context.asked !== null,
      asking: context.asking,
    });
    // A time that was said is kept as the time of what it was said of.
    const timed = frames.some((frame) => 'at' in frame && frame.at !== undefined);
    const isTime = (at: number) =>
      timed &&
      elements.some((element) => holds(element, at) && element.islands.some(({ file }) => file === 'times'));
    const unkept = free
      .map((token) => ({
        token,
        at: tokens.findIndex(({ from, word }) => from === token.from && word === token.word),
      }))
      .filter(({ at }) => !isTime(at))
      .filter(({ at }) => !isIntroduced(elements, tokens, at))
      .filter(
        ({ at }) => !elements.some((element) => holds(element, at) && element.islands.every(isPlainIsland)),
      )
      .map(({ token, at }) => {
        const clause = clauses.find(({ pieces }) => pieces.some(({ from, to }) => at >= from && at < to));
        return { word: token.word, at: token.from, mood: clause?.mood ?? null };
      });
    return { substantive: spoken.length, unkept };
  };
}

// "I'm Jo, mountain rescue": the responder's own name, of two words at most, is nothing of the patient's.
function isIntroduced(elements: readonly Element[], tokens: readonly Token[], at: number): boolean {
  const introduces = elements.some(({ islands }) => islands.some((island) => hasTag(island, 'introduces')));
  const before = tokens.slice(Math.max(0, at - 4), at).map(({ word }) => word);
  return introduces && /\b(i am|we are|my name|my name is|this is)( \S+)?$/.test(before.join(' '));
}

const holds = ({ from, to }: Element, at: number): boolean => at >= from && at < to;
const isPlainIsland = ({ file, rule }: { readonly file: string; readonly rule: string }): boolean =>
  PLAIN_FILES.has(file) && rule !== 'small.figure';
