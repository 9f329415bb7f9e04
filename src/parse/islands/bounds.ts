// Phrases that count only where the words around them let them: what opens or ends a breath, what leads to a place.

import type { Span } from '../span.ts';
import type { Token } from '../token.ts';
import type { Bound, Island } from './island.ts';
import { levelsOf } from './levels.ts';

// "Feel that?" asks; "I feel that it gives" does not. "The bruise is on the left shin" tells of no drug.
type Holds = (tokens: readonly Token[], span: Span, said: Pick<Island, 'tags' | 'slots'>) => boolean;

/** Whether each kind of bound lets a phrase over these words hold. */
export const HOLDS: Readonly<Record<Bound, Holds>> = {
  closing: closes,
  place: (tokens, { to }) => !leadsToPlace(tokens, to),
  'first-said': (tokens, { from }) => isBeside(tokens.slice(0, from)),
  'all-said': isWhole,
  opens: (tokens, { from }) => opens(tokens, from),
  'done-by': (tokens, { from }) => isBehindThing(tokens[from - 1]),
  // "A cup of tea half an hour ago" names no vertebra.
  counted: (_tokens, _span, said) => levelsOf(said).length > 0,
  'ends-breath': endsBreath,
  // Asked of the likeliest phrase alone.
  unbroken: () => true,
};

const LEADS_ON =
  /^(?:and|but|so|then|says|said|also|just|well|yes|yeah|yep|no|because|it|that|this|which|who|he|she|they|i)$/;
const HELPS = /^(?:is|was|has|had|did|have|been)$/;
// The name of the pain stands near what is told of it; a talk without a pause may be long.
const FAR = 8;
const PAIN = /^(?:pain|ache|hurts)$/;

// "Goes up into the neck" at the begin of a breath is said of what the talk is about; "chest goes up" is said of the chest, and
// "the pain in his hip goes down his leg" of the pain.
function opens(tokens: readonly Token[], from: number): boolean {
  let at = from;
  while (HELPS.test(tokens[at - 1]?.word ?? '') && tokens[at - 1]?.pause === '') at--;
  const before = tokens[at - 1];
  if (before === undefined || before.pause !== '' || LEADS_ON.test(before.word)) return true;
  if (PAIN.test(tokens[from]?.word ?? '')) return true;
  for (let k = at - 1; k >= Math.max(0, at - FAR) && tokens[k]?.pause === ''; k--)
    if (PAIN.test(tokens[k]?.word ?? '')) return true;
  return false;
}

const NO_THING = /^(?:he|she|i|they|we|you|who|and|then|but|has|have|had|is|just|also|not|no|never|did)$/;

// "The tree hit his back": a thing did it. "He hit his back" may as well lead to a look at it.
const isBehindThing = (before: Token | undefined): boolean =>
  before !== undefined && before.pause === '' && !NO_THING.test(before.word);

/** Words that may stand beside what asks something of the page without making another sentence of it. */
const BESIDE =
  /^(?:yes|yeah|yep|ok|okay|all|right|roger|affirm|affirmative|copy|and|then|please|thanks|thank|you)$/;

const isBeside = (tokens: readonly Token[]): boolean =>
  tokens.every(({ word, pause }) => pause !== 'ask' && BESIDE.test(word));

// "Both hold" is asked of the page; "both hold still", "it holds well" and "it holds?" are said to somebody.
function isWhole(tokens: readonly Token[], { from, to }: Span): boolean {
  return tokens[to - 1]?.pause !== 'ask' && isBeside(tokens.slice(0, from)) && isBeside(tokens.slice(to));
}

const OF_PLACE =
  /^(the|his|her|their|its|my|your|this|that|left|right|both|either|each|top|one|other|front|back|inside|outside|inner|outer)$/;

function leadsToPlace(tokens: readonly Token[], to: number): boolean {
  const next = tokens[to];
  return next === undefined || tokens[to - 1]?.pause !== '' || OF_PLACE.test(next.word);
}

// Said with its question mark, or as all of its sentence; behind a comma only to somebody: "left foot, you feel that".
function closes(tokens: readonly Token[], { from, to }: Span): boolean {
  const pause = tokens[to - 1]?.pause;
  const before = tokens[from - 1]?.pause ?? '';
  const opens = from === 0 || /^(ask|end)$/.test(before) || (before !== '' && tokens[from]?.word === 'you');
  return pause === 'ask' || (opens && (pause === 'end' || to === tokens.length));
}

const ANEW = /^(?:and|but|so|no|nope|i|it|my|he|she|his|her|the|just|mate|love|sir|doc)$/;

/** "I have none" answers, and another saying may begin behind it without a pause; "I have none left" goes on. */
export function endsBreath(tokens: readonly Token[], { to }: Span): boolean {
  const next = tokens[to];
  return next === undefined || tokens[to - 1]?.pause !== '' || ANEW.test(next.word);
}
