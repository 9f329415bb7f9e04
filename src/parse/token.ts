// The words of an utterance with the place each came from and the pause that a writer marked after it.

import nlp from 'compromise/one';
import { lateContraction } from './contraction.ts';
import { splitWord } from './split-word.ts';

/** `end` a full stop or the like, `ask` a question mark, `pause` a comma, `dash` a dash, colon or semicolon. */
export type Pause = '' | 'pause' | 'dash' | 'end' | 'ask';

export interface Token {
  readonly word: string;
  /** character offsets in the utterance */
  readonly from: number;
  readonly to: number;
  readonly pause: Pause;
}

interface Term {
  readonly text: string;
  readonly pre: string;
  readonly post: string;
  readonly implicit?: string | null;
}

// Tier one of compromise leaves these joined, since "he's" may be "he has"; for the grammar "is" serves both.
const PRONOUN_IS = /^(he|she|it|that|there|what|who|where|here|how|everything|nothing)['’]s$/i;
// Words of plain letters or figures with nothing but commas between them, as a recogniser gives them.
const PLAIN = /^(?:[a-z]+|[0-9]{1,4})(?:,? (?:[a-z]+|[0-9]{1,4}))*$/i;
const PLAIN_WORD = /[a-z]+|[0-9]+/gi;
// Contractions that compromise knows without their apostrophe ("im", "gonna").
const JOINED: ReadonlySet<string> = new Set(
  (nlp.model() as { one: { contractions: readonly { word?: string }[] } }).one.contractions.flatMap(
    ({ word }) => word ?? [],
  ),
);

/** The tokens of a text, contractions expanded and joined figures parted; never throws. */
export function tokenise(text: string): readonly Token[] {
  return plainTokens(text) ?? tokensOf(text);
}

/** The tokens of a text of plain words, for which compromise has nothing to find out; null for any other text. */
function plainTokens(text: string): readonly Token[] | null {
  if (!PLAIN.test(text)) return null;
  const tokens: Token[] = [];
  for (const { 0: written, index: from } of text.matchAll(PLAIN_WORD)) {
    const word = written.toLowerCase();
    if (JOINED.has(word)) return null;
    const to = from + written.length;
    const words = lateContraction(word) ?? [word];
    for (const [at, one] of words.entries()) {
      const isPaused = at === words.length - 1 && text[to] === ',';
      tokens.push({ word: one, from, to, pause: isPaused ? 'pause' : '' });
    }
  }
  return tokens;
}

function tokensOf(text: string): readonly Token[] {
  const tokens: { word: string; from: number; to: number; pause: Pause }[] = [];
  let at = 0;
  let owner = { from: 0, to: 0 };
  for (const sentence of nlp.tokenize(text).docs as readonly (readonly Term[])[]) {
    for (const term of sentence) {
      const from = at + term.pre.length;
      const to = from + term.text.length;
      at = to + term.post.length;
      if (opens(term.pre)) strengthen(tokens, 'dash');
      if (term.text !== '') owner = { from, to };
      for (const sign of term.pre.match(/[@<≤>≥~]/g) ?? [])
        for (const piece of splitWord(sign))
          for (const word of piece.words) tokens.push({ word, from: from - 1, to: from, pause: '' });
      for (const piece of piecesOf(term)) {
        const inside = term.implicit ? owner : { from: from + piece.from, to: from + piece.to };
        for (const word of piece.words) tokens.push({ word, ...inside, pause: '' });
      }
      strengthen(tokens, pauseOf(term.post));
    }
  }
  return tokens;
}

function piecesOf(term: Term) {
  if (term.implicit) return splitWord(term.implicit);
  const stem = PRONOUN_IS.exec(term.text)?.[1];
  const whole = { from: 0, to: term.text.length };
  if (stem !== undefined) return [{ words: [stem.toLowerCase(), 'is'], ...whole }];
  const late = lateContraction(term.text);
  return late === undefined ? splitWord(term.text) : [{ words: late, ...whole }];
}

const opens = (pre: string): boolean => /[—–(]|--/.test(pre);

function pauseOf(post: string): Pause {
  if (post.includes('?')) return 'ask';
  if (/[.!\n…]/.test(post)) return 'end';
  if (/[—–;:()]|--|\s-\s/.test(post)) return 'dash';
  return post.includes(',') ? 'pause' : '';
}

const STRENGTH: Readonly<Record<Pause, number>> = { '': 0, pause: 1, dash: 2, end: 3, ask: 4 };

function strengthen(tokens: { pause: Pause }[], pause: Pause): void {
  const last = tokens.at(-1);
  if (last !== undefined && STRENGTH[pause] > STRENGTH[last.pause]) last.pause = pause;
}

/** The words from `from` up to but not with `to`, with a blank between. */
export const saidIn = (tokens: readonly Token[], from?: number, to?: number): string =>
  tokens
    .slice(from, to)
    .map(({ word }) => word)
    .join(' ');
