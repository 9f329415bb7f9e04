// Leaves out the sounds of somebody who thinks, before anything is read.

import { afterWord, type Branch } from './islands/tree.ts';
import type { Token } from './token.ts';

/** The tokens without "um" and "er"; a pause that a writer marked after one goes to the word before. */
export function withoutFillers(root: Branch, tokens: readonly Token[]): readonly Token[] {
  const fillers = tokens.map(({ word }) => isFiller(root, word));
  if (!fillers.includes(true)) return tokens;
  const kept: Token[] = [];
  tokens.forEach((token, i) => {
    const [before, next] = [tokens[i - 1]?.word, tokens[i + 1]?.word];
    // "Uh huh" and "nuh uh" are answers: a filler that begins or goes on a phrase of the grammar stays.
    const inPhrase = () => goesOn(root, token.word, next) || goesOn(root, before, token.word);
    if (!fillers[i] || inPhrase()) kept.push(token);
    else if (token.pause === 'end' || token.pause === 'ask') {
      const last = kept.pop();
      if (last !== undefined) kept.push({ ...last, pause: token.pause });
    }
  });
  // Nothing but "uh uh" is an answer.
  return kept.length > 0 ? kept : tokens;
}

const goesOn = (root: Branch, word: string | undefined, next: string | undefined): boolean => {
  const first = word === undefined || next === undefined ? null : afterWord(root, word);
  return first !== null && next !== undefined && afterWord(first, next) !== null;
};

const isFiller = (root: Branch, word: string): boolean =>
  afterWord(root, word)?.endings.some(({ tags }) => tags.some(({ key }) => key === 'filler')) ?? false;
