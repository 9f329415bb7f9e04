// Talk that is not of the patient: "dig a hole for the anchor", "the generator cuts out", with a knee in mind.
// A word that means as much outside of medicine finds nothing by itself among words that the grammar does not know:
// the place would be carried from what was said before, and nobody named it. The words stay as a note.

import type { Span } from '../span.ts';
import type { Token } from '../token.ts';
import { hasRole, type Item, phrasesIn, wordsOf } from './sites/item.ts';

const AMBIGUOUS =
  /^(hole|holes|cut|cuts|slice|slices|burn|burns|burnt|burned|break|breaks|broke|broken|step|steps|stepping|bend|bends|bent|bump|bumps|lump|lumps|bite|bites|sting|stung|stiff|asleep|drainage|twisted|drain|drains|cold|cool|icy|warm|sense|pulse|pulses|chilly|freezing|damage)$/;
/** May stand within such a phrase and do not make it clearer. */
const SMALL = /^(a|an|the|no|any|some|is|are|was|be|it|that|out|of|feels?|feeling|bit|very|good|there|s)$/;

/** Words that tell of somebody, or point at what is looked at. */
const OF_SOMEBODY =
  /^(i|me|my|he|him|his|she|her|hers|they|them|their|you|your|it|its|here|this|these|patient|casualty|skin|wound|joint|limb)$/;
/** What leads to when it hurts or to how it came, anywhere, and straight behind the word to what did it. */
const WHEN = /^(when|if|after|where|because|since|while)$/;
const CAUSE = /^(from|by|off)$/;

/**
 * True where what is found or checked at `i` is a word with another sense, no place is named in its breath, nothing there
 * tells of somebody, of a side or of how it is, and words that the grammar does not know stand beside it.
 */
export function isInOtherTalk(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const own = items[i];
  if (own === undefined) return false;
  const at = wordsOf(own);
  const said = tokens.slice(at.from, at.to).map(({ word }) => word);
  if (!said.some((word) => AMBIGUOUS.test(word))) return false;
  if (!said.every((word) => AMBIGUOUS.test(word) || SMALL.test(word))) return false;
  const breath = breathAround(tokens, at);
  const beside = items.filter((item) => item !== own && isWithin(wordsOf(item), breath));
  if (phrasesIn(beside).length > 0 || beside.some(isOfBody)) return false;
  const others = tokens.slice(breath.from, breath.to).map(({ word }) => word);
  if (others.some((word) => OF_SOMEBODY.test(word) || WHEN.test(word))) return false;
  if (CAUSE.test(tokens[at.to]?.word ?? '')) return false;
  const nouns = beside
    .map(wordsOf)
    .filter((_, k) => hasRole(beside[k], 'unknown'))
    .filter((noun) => !isManner(tokens, noun));
  // "Broken at the growth plate": what leads its breath may be told of the place in mind, with more that is not known.
  const leads = breath.from === at.from;
  if (nouns.some(({ from }) => !leads && from === at.to)) return true;
  const ends = breath.to === at.to && tokens[at.from - 1]?.word !== 'the';
  return nouns.some((noun) => noun.from < at.from && !ends && !isKind(tokens, breath, noun, at));
}

/** The words from the pause before to the pause after. */
function breathAround(tokens: readonly Token[], { from, to }: Span): Span {
  let [start, end] = [from, to];
  while (start > 0 && tokens[start - 1]?.pause === '') start -= 1;
  while (end < tokens.length && tokens[end - 1]?.pause === '') end += 1;
  return { from: start, to: end };
}

const isWithin = (span: Span, breath: Span): boolean => span.from >= breath.from && span.to <= breath.to;

/** "A chainsaw cut on the outside", "friction burn": what did it, and no thing that was named before. */
const isKind = (tokens: readonly Token[], breath: Span, noun: Span, { from }: Span): boolean =>
  noun.to === from &&
  !tokens.slice(breath.from, noun.from).some(({ word }) => /^(the|our|that|every)$/.test(word));

/** "Obviously broken", "kinda stiff": how, and of nothing else. */
const isManner = (tokens: readonly Token[], { from, to }: Span): boolean =>
  tokens
    .slice(from, to)
    .every(({ word }) => /ly$|^(kinda|sorta|proper|dead|well|yep|nah|reckon|um|uh)$/.test(word));

const isOfBody = (item: Item): boolean =>
  (
    ['finding', 'csm', 'vital', 'limbs', 'attribute', 'side', 'part', 'same', 'patient', 'figure'] as const
  ).some((role) => hasRole(item, role));
