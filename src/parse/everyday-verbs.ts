// Everyday verbs and denials in the words of the grammar: "ain't got" and "it don't hurt", and the second "no" of one ("can't find no pulse"), which
// denies nothing more and is read as "any".

import { isDo, withoutEmphatic } from './emphatic-do.ts';
import type { Token } from './token.ts';

const setOf = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** What may stand between the denial and its second "no". */
const BETWEEN = setOf(
  'feel find see hear get got have had need take took taken want wanted notice show be been any of ever in on at',
);
const ANY: ReadonlyMap<string, string> = new Map([
  ['no', 'any'],
  ['nothing', 'anything'],
  ['nowhere', 'anywhere'],
  ['never', 'ever'],
]);
/** A "no" before one of these answers by itself ("I can't, no it's stuck"). */
const BEGINS_ANEW = setOf(
  'i it he she they we you that this there is was and but no not yes yeah sorry the my his her your',
);
/** Behind "ain't" these are of "have". */
const OF_HAVE = setOf('got had been eaten ever never');

/** "No more" stands so far behind its denial at most ("doesn't hurt when he breathes no more"). */
const NO_MORE_WITHIN = 6;

const isOneWord = (one: Token | undefined, other: Token | undefined): boolean =>
  one !== undefined && other !== undefined && one.from === other.from && one.to === other.to;

/** The words in which the grammar knows them: dialect's "ain't" and "don't", and an "any" for each second negative; places and pauses as they were. */
export const withPlainVerbs = (tokens: readonly Token[]): readonly Token[] =>
  withPlainDenials(withoutEither(withoutEmphatic(tokens)));

function withPlainDenials(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ word }) => word === 'not' || word === 'never')) return tokens;
  const out: Token[] = [];
  let isDenied = false;
  let deniedAt = Number.NEGATIVE_INFINITY;
  for (const [at, token] of tokens.entries()) {
    const next = tokens[at + 1];
    const isAny =
      (isDenied && isSecond(token, next)) || (isNoMore(token, next) && at - deniedAt <= NO_MORE_WITHIN);
    const word: string = isAny ? (ANY.get(token.word) ?? token.word) : inFull(tokens, at);
    out.push(word === token.word ? token : { ...token, word });
    if (denies(tokens, at)) deniedAt = at;
    if (token.pause !== '') deniedAt = Number.NEGATIVE_INFINITY;
    isDenied =
      token.pause === '' && (deniedAt === at || (isDenied && (word !== token.word || BETWEEN.has(word))));
  }
  return out;
}

function denies(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token?.word === 'never') return true;
  return token?.word === 'not' && (isOneWord(tokens[at - 1], token) || tokens[at + 1]?.word === 'got');
}

/** Of one, who is told nothing: "it don't hurt" is "it does not hurt". */
const ONE = setOf('it he she that this there one everything everybody nobody mine');

/** "Ain't got" and "he's not got" are "have not got"; contractions of "is" that are no "have" stay. */
function inFull(tokens: readonly Token[], at: number): string {
  const [token, not, next] = [tokens[at], tokens[at + 1], tokens[at + 2]?.word ?? ''];
  const isHave =
    token?.word === 'is' &&
    not?.word === 'not' &&
    (next === 'got' || (isOneWord(token, not) && OF_HAVE.has(next)));
  if (isHave) return 'have';
  const before = tokens[at - 1];
  // "Don't got no pain".
  const isDoNot = token !== undefined && isDo(token) && isOneWord(token, not) && not?.word === 'not';
  if (isDoNot && next === 'got') return 'have';
  const isOfOne = isDoNot && token.word === 'do' && before?.pause === '' && ONE.has(before.word);
  return isOfOne ? 'does' : (token?.word ?? '');
}

const isSecond = ({ word, pause }: Token, next: Token | undefined): boolean =>
  word !== 'no' || (pause === '' && next !== undefined && !BEGINS_ANEW.has(next.word));

const isNoMore = ({ word, pause }: Token, next: Token | undefined): boolean =>
  word === 'no' && pause === '' && next?.word === 'more';

/** Without a "neither" or "either" that ends a breath which denied something ("no swelling neither"): it says no more. */
const withoutEither = (tokens: readonly Token[]): readonly Token[] =>
  tokens.some(({ word }) => EITHER.test(word))
    ? tokens.flatMap((token, at) => {
        if (isEither(tokens, at)) return [];
        const next = isEither(tokens, at + 1) ? tokens[at + 1] : undefined;
        return [next === undefined ? token : { ...token, to: next.to, pause: next.pause }];
      })
    : tokens;

const EITHER = /^n?either$/;
/** "Not a scratch on either": it says where. */
const AT = /^(on|in|at|to|from|of|over)$/;

function isEither(tokens: readonly Token[], at: number): boolean {
  const [token, next] = [tokens[at], tokens[at + 1]];
  if (token === undefined || !EITHER.test(token.word) || (next !== undefined && token.pause === ''))
    return false;
  if (AT.test(tokens[at - 1]?.word ?? '')) return false;
  const begin = tokens.slice(0, at).findLastIndex(({ pause }) => pause !== '') + 1;
  return at - begin > 1 && tokens.slice(begin, at).some(({ word }) => word === 'not' || word === 'no');
}
