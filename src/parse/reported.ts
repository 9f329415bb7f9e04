// "He says no", "his wife is telling that nothing": who reports an answer is no part of it, so that the answer stands as if it were given.

import type { Token } from './token.ts';

const setOf = (words: string): ReadonlySet<string> => new Set(words.split(' '));

const SAYING = setOf(
  'says said saying tells told telling reckons reckoned thinks reports answers translates translating',
);
const WHO = setOf(
  'he she they patient wife husband mum mom mother dad father son daughter brother sister friend mate partner guide interpreter grandson granddaughter uncle aunt',
);
const WHOSE = setOf('his her the their my our this your');
const YES = setOf('yes yeah yep yup aye');
const ANSWERS: ReadonlySet<string> = new Set([...YES, 'no', 'nope', 'nah', 'none']);
/** Between the saying and what is said. */
const LINKS = setOf('me us that is has was');
/** "She is yes warfarin": the yes says it all. */
const IS = setOf('is does has did was');

/** The tokens without the words that say who answers, where a yes, a no or a none follows them; "is telling" is "says" elsewhere. */
export function withoutReporters(tokens: readonly Token[]): readonly Token[] {
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at];
    if (token === undefined) break;
    const end = endOfReport(tokens, at);
    if (end === at) out.push(token);
    at = Math.max(end, at + 1);
  }
  return out.flatMap((token, at) => plain(token, out[at - 1], out[at + 1]));
}

/** Where the words of the answer begin behind "his wife says that"; `from` itself where nobody is said to answer so. */
function endOfReport(tokens: readonly Token[], from: number): number {
  const wordAt = (at: number): string => tokens[at]?.word ?? '';
  const before = tokens[from - 1];
  if (before !== undefined && before.pause === '' && !isOpening(before.word)) return from;
  let at = from;
  if (WHOSE.has(wordAt(at))) at++;
  if (!WHO.has(wordAt(at))) return from;
  at++;
  if (IS.has(wordAt(at)) && YES.has(wordAt(at + 1))) return at + 1;
  while (LINKS.has(wordAt(at))) at++;
  if (!SAYING.has(wordAt(at))) return from;
  at++;
  while (LINKS.has(wordAt(at))) at++;
  // "He says nothing" may be all that can be told of his voice.
  const isNothing = wordAt(at) === 'nothing' && (wordAt(at - 1) === 'that' || tokens[at]?.pause !== '');
  // "Her daughter translates, she says no".
  if (tokens[at - 1]?.pause === 'pause' && !ANSWERS.has(wordAt(at))) {
    const end = endOfReport(tokens, at);
    if (end > at) return end;
  }
  return ANSWERS.has(wordAt(at)) || isNothing ? at : from;
}

const isOpening = (word: string): boolean => ANSWERS.has(word) || word === 'and' || word === 'okay';

/** "Is telling" and "is saying" as "says". */
function plain(token: Token, before: Token | undefined, next: Token | undefined): readonly Token[] {
  const isSaying = (one: Token | undefined): boolean => one?.word === 'telling' || one?.word === 'saying';
  if (token.word === 'is' && isSaying(next) && token.pause === '') return [];
  if (isSaying(token) && before?.word === 'is' && before.pause === '') return [{ ...token, word: 'says' }];
  return [token];
}
