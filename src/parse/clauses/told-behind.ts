// What is told in one breath behind a question or an instruction, in a clause of its own: "can you swallow yes but it catches".

import { saidIn, type Token } from '../token.ts';
import type { Clause } from './clause.ts';

/** Each is behind a word of the question at least; what ties it to the question ("if it hurts", "yes or no") is none. */
const TOLD: readonly RegExp[] = [
  // "Deep breath pete it hurts mate", "bend it for me it is sticking out".
  /(?<!\b(?:if|when|where|while|after|before|since|that|what|which|how|because|as|and|or|does|did|is|was|has|had|can|will|until|once|whether|why|say|says|bad|much|moment|minute|second|time|anywhere|everywhere|place|places|spot|point|bit|side|like|think|sure|move|touch|press|bend)) it (?:hurts|aches|stings|burns|throbs|catches|clicks|grinds|grates|is \w+ing\b(?! (?:to|better)))/,
  // "Can you swallow yes but it catches", "any fever no but I was shivering".
  / (?:yes|yeah|yep|aye|no|nah|nope) but (?!(?:can|do|does|did|are|is|could|will|would|have) (?:you|it|he|she)\b)\w+/,
  // "Can you raise that arm not past here".
  /^(?:can|could) you .* not (?:(?:past|beyond|further than|more than|without) \w+|really|quite|properly)/,
  // "Any dent in it no dent that I can feel".
  / no (?!(?:or|and|rush|worries|problem|hurry|good|more|need|matter|stress|one)\b)\w+ (?:that )?(?:i|he|she|they) can (?:feel|see|find|tell)\b/,
  // "Any loose teeth one on the bottom".
  /^any .*(?<!\b(?:the|that|this|or|and|which|other|at least)) (?:one|two|three|a couple|a few) (?:on|in|at) (?:the|my|his|her) (?:bottom|top|front|back|side|left|right|middle|upper|lower)\b/,
  // "Any blood in the pee red as a beetroot".
  /^any .*(?<!\b(?:as|it|that|is|looks|went|goes|or)) (?:bright |dark )?(?:red|black|brown|pink|white|blue|green|yellow|clear) as (?:an? )?\w+/,
  // "Any crook stuff in the past asthma as a kid".
  /^any .*\b(?:past|before|history|conditions|illnesses) (?!(?:or|and|like|as|when|such|even)\b)\w+ as a (?:kid|child|boy|girl|lad|bairn|baby|teenager|nipper)\b/,
  // "Any trouble breathing hurts to breathe in".
  /^any .*(?<!\b(?:it|that|this|there|what|which|where|who|here|anything|if|when)) (?:hurts|aches|stings) (?:to|when i|on the|in the|at the)\b/,
  // "Did you black out for a sec I think".
  /^(?:did|were|have) you .* i (?:think|reckon|guess|suppose)$/,
];

/** True where a question or an instruction without a question mark holds what was told behind it. */
export function isToldBehind({ pieces, mood, pause }: Clause, tokens: readonly Token[]): boolean {
  if ((mood !== 'question' && mood !== 'instruction') || pause === 'ask') return false;
  const from = pieces[0]?.from ?? 0;
  const said = saidIn(tokens, from, pieces.at(-1)?.to ?? from);
  return TOLD.some((told) => told.test(said));
}
