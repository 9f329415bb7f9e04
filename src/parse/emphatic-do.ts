// An emphatic "do" of what is told: "he does take warfarin" is "he takes warfarin", "she did pass out" is "she passed out". It stands between its
// subject and a verb, where no question has it.

import type { Token } from './token.ts';

const setOf = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** True for a "do", "does" or "did". */
export const isDo = ({ word }: Token): boolean => word === 'does' || word === 'did' || word === 'do';

/** The words without each emphatic "do"; its verb says who and when, and is at the place of both. */
export function withoutEmphatic(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(isDo)) return tokens;
  const out: Token[] = [];
  for (const [at, token] of tokens.entries()) {
    const before = tokens[at - 1];
    if (isEmphatic(tokens, at)) continue;
    const said =
      before !== undefined && isEmphatic(tokens, at - 1) ? inForm(token.word, before.word) : token.word;
    out.push(said === token.word ? token : { ...token, word: said });
  }
  return out;
}

const SUBJECT = setOf(
  'i he she they it patient casualty man woman lady gentleman fella lad lass boy girl guy bloke chap mum mom mother dad father wife husband son daughter ' +
    'brother sister partner friend mate gran grandad',
);
/** Before the subject these ask, and with it ("does she do drugs", "can he do that"). */
const INVERTED = setOf('do does did can could will would should may might is are was were has have had');
const OWNERS = setOf('the his her their my our this that young old poor');
/** Before these it is "have" as it was; dialect says it of anybody. */
const KEPT = setOf('have');
/** Of "it" and of oneself only this one: "it does hurt" and "I do feel it" answer, and are read as they are. */
const ANSWERING = setOf('it i');

const VERBS = setOf(
  'take use get need carry wear drink smoke vape eat react suffer inject remember recall know say think reckon report complain mention feel look seem appear ' +
    'live work sleep faint vomit cough wheeze breathe flinch wince keep lose pass fall hit break come go throw wake see hear hurt bleed tell',
);
/** The pasts that are no "-ed". */
const PAST: ReadonlyMap<string, string> = new Map(
  (
    'take:took get:got wear:wore drink:drank eat:ate know:knew say:said think:thought feel:felt sleep:slept keep:kept lose:lost fall:fell hit:hit ' +
    'break:broke come:came go:went throw:threw wake:woke see:saw hear:heard hurt:hurt bleed:bled tell:told'
  )
    .split(' ')
    .map((pair): [string, string] => [pair.slice(0, pair.indexOf(':')), pair.slice(pair.indexOf(':') + 1)]),
);

function isEmphatic(tokens: readonly Token[], at: number): boolean {
  const [before, token, next] = [tokens[at - 1], tokens[at], tokens[at + 1]];
  if (token === undefined || next === undefined || !isDo(token) || token.pause !== '') return false;
  if (before === undefined || before.pause !== '' || !SUBJECT.has(before.word)) return false;
  const isVerb = KEPT.has(next.word) || (!ANSWERING.has(before.word) && VERBS.has(next.word));
  // "He does hurt": the next breath may be told to somebody ("he does, feel your chest").
  return isVerb && tokens[at + 2]?.word !== 'your' && !isAsked(tokens, at - 1);
}

/** "Does the patient do …", "can his wife do …": what stands before the subject asks already. */
function isAsked(tokens: readonly Token[], subject: number): boolean {
  const first = tokens.slice(0, subject).findLastIndex(({ word }) => !OWNERS.has(word));
  const verb = tokens[first];
  return verb !== undefined && verb.pause === '' && INVERTED.has(verb.word);
}

function inForm(verb: string, does: string): string {
  if (KEPT.has(verb) || does === 'do') return verb;
  if (does === 'did') return PAST.get(verb) ?? pastOf(verb);
  if (verb.endsWith('y')) return /[aeo]y$/.test(verb) ? `${verb}s` : `${verb.slice(0, -1)}ies`;
  return /(?:s|sh|ch|x|z|o)$/.test(verb) ? `${verb}es` : `${verb}s`;
}

function pastOf(verb: string): string {
  if (verb.endsWith('e')) return `${verb}d`;
  return verb.endsWith('y') ? `${verb.slice(0, -1)}ied` : `${verb}ed`;
}
