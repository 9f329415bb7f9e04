// Reads talk: an utterance and a context in, frames and a context out. Never throws, and keeps what it does not understand.

import { type GrammarError, linkGrammars } from '../jsgf/index.ts';
import { clausesOf } from './clauses/cut.ts';
import { readClause } from './compose/clause.ts';
import { noteLeftovers } from './compose/notes.ts';
import { state, type Talk } from './compose/talk.ts';
import { mergeGcs } from './compose/vitals/merge-gcs.ts';
import { type Context, NOTHING_SAID } from './context.ts';
import type { Reading } from './frame.ts';
import { cover } from './islands/cover.ts';
import { SLOTS, wordsOf } from './islands/match.ts';
import { buildNetwork } from './islands/network.ts';
import { rootRules } from './islands/roots.ts';
import { afterWord, type Branch, plantTree } from './islands/tree.ts';
import { piecesOf } from './pieces/roles.ts';
import { checkTag, readTag } from './tags.ts';
import { type Token, tokenise } from './token.ts';
import type { Utterance } from './utterance.ts';

export interface Reader {
  /** the context before anything was said */
  begin(): Context;
  /** what an utterance gives, and the context for the next one */
  read(utterance: Utterance, context: Context): Reading<Context>;
}

export type ReaderMade =
  | { readonly kind: 'reader'; readonly reader: Reader }
  | { readonly kind: 'errors'; readonly errors: readonly GrammarError[] };

/** A reader for a grammar; a fault in the grammar is said with its file, line and rule. */
export function createReader(
  sources: readonly { readonly file: string; readonly text: string }[],
): ReaderMade {
  const linked = linkGrammars(sources, { checkTag });
  if (linked.kind === 'errors') return linked;
  const root = plantTree(buildNetwork(linked.grammars, rootRules(linked.grammars, SLOTS), SLOTS));
  return {
    kind: 'reader',
    reader: {
      begin: () => NOTHING_SAID,
      read: (utterance, context) => readUtterance(root, utterance, context),
    },
  };
}

function readUtterance(root: Branch, utterance: Utterance, context: Context): Reading<Context> {
  const tokens = withoutFillers(root, tokenise(utterance.text));
  const pieces = piecesOf(cover(root, tokens, wordsOf(tokens)), tokens.length);
  const clauses = clausesOf(pieces, tokens, { open: context.asked !== null, asking: context.asking });
  const talk: Talk = {
    utterance,
    tokens,
    clauses,
    frames: [],
    placed: tokens.map(() => false),
    context,
    group: 0,
    asking: [],
    at: undefined,
  };
  const earlier = context.asked;
  for (const clause of clauses) readClause(talk, clause);
  talk.at = undefined;
  state(talk, talk.asking);
  noteLeftovers(talk);
  // A question waits for one utterance; chatter does not use it up.
  const spoke =
    talk.frames.length > 0 || clauses.some(({ mood }) => mood === 'question' || mood === 'answer');
  if (spoke && talk.context.asked === earlier && earlier !== null)
    talk.context = { ...talk.context, asked: null };
  const asking = clauses.some(({ mood }) => mood === 'question' || mood === 'answer');
  if (talk.frames.length > 0 || asking) talk.context = { ...talk.context, asking };
  return { frames: mergeGcs(talk.frames, utterance.text), context: talk.context };
}

// "Um" and "er" are left out before anything is read; their pause, if a writer marked one, goes to the word before.
function withoutFillers(root: Branch, tokens: readonly Token[]): readonly Token[] {
  const kept: Token[] = [];
  tokens.forEach((token, i) => {
    const [before, next] = [tokens[i - 1]?.word, tokens[i + 1]?.word];
    // "Uh huh" is an answer: a filler that begins or goes on a phrase of the grammar stays.
    const inPhrase = goesOn(root, token.word, next) || goesOn(root, before, token.word);
    if (inPhrase || !isFiller(root, token.word)) kept.push(token);
    else if (token.pause === 'end' || token.pause === 'ask') {
      const last = kept.pop();
      if (last !== undefined) kept.push({ ...last, pause: token.pause });
    }
  });
  // Nothing but "uh uh" is an answer.
  return kept.length > 0 ? kept : tokens;
}

const goesOn = (root: Branch, word: string | undefined, next: string | undefined): boolean => {
  const first =
    word === undefined || next === undefined || !isFiller(root, word) ? null : afterWord(root, word);
  return first !== null && next !== undefined && afterWord(first, next) !== null;
};

const isFiller = (root: Branch, word: string): boolean =>
  afterWord(root, word)?.endings.some(({ tags }) =>
    tags.some(({ text }) => readTag(text).some(({ key }) => key === 'filler')),
  ) ?? false;
