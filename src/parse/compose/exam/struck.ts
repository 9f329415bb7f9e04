// "Hit his head", "the dashboard caught his left knee": a place that is told because something struck it was not looked at. What somebody
// struck is told as what happened; all else stays in its words.

import type { Span } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { type Item, wordsOf } from '../sites/item.ts';
import { place, state, type Talk, textOf } from '../talk.ts';

const VERB =
  'hit|banged|bumped|smacked|whacked|struck|bashed|clipped|knocked(?! on)|thumped|clattered|walloped|cracked';
const OTHER_VERB =
  'hits|caught|kicked|kneed|elbowed|punched|headbutted|whipped|jabbed|slapped|stamped|trampled|slammed|smashed|pinned|crushed|squashed|trod|' +
  'stood|stepped|knelt|landed|fell|dropped|came down|ran over|crashed|bounced|dug';
const WHOM = 'him|her|me|them|himself|herself|myself|themselves|it|one another|each other';
const WHERE = 'square|straight|right|on|onto|in|into|to|across|over|against|at|under|down|top|of|between';
const WHOSE = 'the|his|her|their|my|a|both|back|front|side|left|right';
/** The examiner's own hands, and what is no blow, strike nothing: "I knocked on her chest". */
const EXAMINERS =
  /\b(i|we|i have|we have)( (just|gently))* \w+( (on|over|at|in))?( (the|his|her|their|a|both|left|right))*$/;
const STRUCK = new RegExp(`\\b(${VERB}|${OTHER_VERB})( (${WHOM}))?( hard)?( (${WHERE}))*( (${WHOSE}))*$`);
/** What somebody struck himself, and nothing else in its breath. */
const OWN = new RegExp(
  `^((and|then|so|but|also|just|apparently) )*((he|she|they|patient|the patient) )?((has|have|also|just|then|must have) )*(${VERB}) (his|her|their)( (left|right))*$`,
);
const BEHIND = /^( (hard|badly|again|too|twice|pretty hard|quite hard|really hard|as well))*$/;
const LEAD = /^(and|then|so|but)$/;

/** True where the words before a place, in its breath, say that something struck it. */
export function isStruck(talk: Talk, item: Item): boolean {
  const { before } = aroundOf(talk, item);
  return STRUCK.test(before) && !EXAMINERS.test(before);
}

/** States what happened where a breath says no more than what somebody struck ("he banged his head"). */
export function stateStruck(talk: Talk, item: Item): void {
  const { before, behind, from, to } = aroundOf(talk, item);
  if (!OWN.test(before) || !BEHIND.test(behind === '' ? '' : ` ${behind}`)) return;
  const clause = talk.clauses.find(({ pieces }) =>
    pieces.some((piece) => piece.from <= from && from < piece.to),
  );
  if (clause?.mood !== 'statement') return;
  let start = from;
  while (LEAD.test(talk.tokens[start]?.word ?? '')) start++;
  state(talk, [
    { statement: { kind: 'history', topic: 'mechanism', text: textOf(talk, start, to) }, from: start, to },
  ]);
  place(talk, { from: start, to });
}

/** The words of its breath before a place with its side and behind it; from and to are those of the breath. */
function aroundOf({ tokens }: Talk, item: Item): Span & { readonly before: string; readonly behind: string } {
  const words = wordsOf(item);
  const from = tokens.slice(0, words.from).findLastIndex(({ pause }) => pause !== '') + 1;
  const end = tokens.findIndex(({ pause }, at) => at >= words.to - 1 && pause !== '');
  const to = end < 0 ? tokens.length : end + 1;
  // Whose it is and which one may be within the place.
  const site = words.to - 1;
  let name = site;
  while (name > words.from && !isWhich(tokens[name - 1]?.word ?? '')) name--;
  return { from, to, before: saidIn(tokens, from, name), behind: saidIn(tokens, words.to, to) };
}

const isWhich = (word: string): boolean => /^(the|his|her|their|my|left|right|of)$/.test(word);
