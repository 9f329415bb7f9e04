// The best cover of an utterance by islands: long phrases before short ones, likely before unlikely, none overlapping.

import type { Token } from '../token.ts';
import { fillsOf } from './fill.ts';
import type { Bound, FilledSlot, Island } from './island.ts';
import { levelsOf } from './levels.ts';
import { type Stop, stopsFrom } from './match.ts';
import type { Branch, Ending } from './tree.ts';

/** Islands over exactly the same words, most likely first: the composer takes the one that makes sense there. */
export interface Element {
  readonly from: number;
  readonly to: number;
  readonly islands: readonly Island[];
}

const WORD = 10;
// One long island beats several short ones over the same words.
const EACH = 3;
const COST = 4;

// "Strong radial, good sensation": of equal covers the one whose phrases end where the speaker paused.
const ACROSS = 1;

/** Phrases over the same words, of which none was made an island yet: few of them come to stand in the best cover. */
interface Group {
  readonly from: number;
  readonly to: number;
  readonly stops: Stop[];
}

/** The elements in the order spoken; words between them are known to no phrase. Linear in the number of words. */
export function cover(root: Branch, tokens: readonly Token[], words: readonly string[]): readonly Element[] {
  const size = tokens.length;
  const scores: number[] = [0];
  const by: (Group | null)[] = [null];
  for (let at = 1; at <= size; at++) {
    scores.push(-1);
    by.push(null);
  }
  const fills = fillsOf(tokens, words);
  const reach = (to: number, score: number, group: Group | null): void => {
    // Of equal covers the one whose longer phrase comes first is kept: "does your | left knee".
    if (score < (scores[to] ?? score + 1)) return;
    scores[to] = score;
    by[to] = group;
  };
  for (let at = 0; at < size; at++) {
    const score = scores[at] ?? 0;
    reach(at + 1, score, null);
    for (const group of byEnd(at, stopsFrom(root, tokens, words, at, fills))) {
      const best = likeliest(group, tokens);
      if (best === null) continue;
      const across = isAcross(tokens, at, group.to);
      // "Bent back" is one phrase, and "bent, back is fine" is not.
      if (across && best.bounds.includes('unbroken')) continue;
      if (across && isAnsweringNo(tokens, at, best.file)) continue;
      reach(group.to, score + worth(group, best) - (across ? ACROSS : 0), group);
    }
  }
  return trace(by, tokens);
}

const worth = ({ from, to }: Group, { cost }: Pick<Ending, 'cost'>): number =>
  WORD * (to - from) - EACH - COST * cost;

/** The phrases that end at the same word together. */
function byEnd(from: number, stops: readonly Stop[]): readonly Group[] {
  const groups: Group[] = [];
  for (const stop of stops) {
    const group = groups.find(({ to }) => to === stop.to);
    if (group === undefined) groups.push({ from, to: stop.to, stops: [stop] });
    else group.stops.push(stop);
  }
  return groups;
}

/** The first of the most likely phrases that hold; null where none does. */
function likeliest(group: Group, tokens: readonly Token[]): Ending | null {
  let best: Ending | null = null;
  for (const { endings, slots } of group.stops)
    for (const ending of endings)
      if (holds(ending, group, tokens, slots) && (best === null || worth(group, ending) > worth(group, best)))
        best = ending;
  return best;
}

/** The phrases that hold as islands, the likely ones first. */
function islandsOf(group: Group, tokens: readonly Token[]): readonly Island[] {
  const islands: Island[] = [];
  for (const { endings, slots } of group.stops)
    for (const ending of endings)
      if (holds(ending, group, tokens, slots)) islands.push(islandOf(group, ending, slots));
  return islands.length < 2 ? islands : islands.sort((a, b) => worth(group, b) - worth(group, a));
}

const islandOf = (
  { from, to }: Group,
  { file, rule, tags, cost }: Ending,
  slots: readonly FilledSlot[],
): Island => ({ file, rule, from, to, tags, slots, cost });

// "Feel that?" asks; "I feel that it gives" does not. "The bruise is on the left shin" tells of no drug.
type Holds = (tokens: readonly Token[], group: Group, said: Pick<Island, 'tags' | 'slots'>) => boolean;

const HOLDS: Readonly<Record<Bound, Holds>> = {
  closing: closes,
  place: (tokens, { to }) => !leadsToPlace(tokens, to),
  'first-said': (tokens, { from }) => isBeside(tokens.slice(0, from)),
  'all-said': isWhole,
  opens: (tokens, { from }) => opens(tokens, from),
  'done-by': (tokens, { from }) => isBehindThing(tokens[from - 1]),
  // "A cup of tea half an hour ago" names no vertebra.
  counted: (_tokens, _group, said) => levelsOf(said).length > 0,
  // Asked of the likeliest phrase alone.
  unbroken: () => true,
};

function holds(
  { bounds, tags }: Ending,
  group: Group,
  tokens: readonly Token[],
  slots: readonly FilledSlot[],
): boolean {
  return bounds.length === 0 || bounds.every((bound) => HOLDS[bound](tokens, group, { tags, slots }));
}

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
function isWhole(tokens: readonly Token[], { from, to }: Group): boolean {
  return tokens[to - 1]?.pause !== 'ask' && isBeside(tokens.slice(0, from)) && isBeside(tokens.slice(to));
}

const OF_PLACE =
  /^(the|his|her|their|its|my|your|this|that|left|right|both|either|each|top|one|other|front|back|inside|outside|inner|outer)$/;

function leadsToPlace(tokens: readonly Token[], to: number): boolean {
  const next = tokens[to];
  return next === undefined || tokens[to - 1]?.pause !== '' || OF_PLACE.test(next.word);
}

// Said with its question mark, or as all of its sentence.
function closes(tokens: readonly Token[], { from, to }: Group): boolean {
  const pause = tokens[to - 1]?.pause;
  const opens = from === 0 || /^(ask|end)$/.test(tokens[from - 1]?.pause ?? '');
  return pause === 'ask' || (opens && (pause === 'end' || to === tokens.length));
}

// "No, no allergies", "no, pulse is there": before its pause a "no" answers, and denies nothing that follows.
const isAnsweringNo = (tokens: readonly Token[], at: number, file: string): boolean =>
  tokens[at]?.word === 'no' && tokens[at].pause === 'pause' && file !== 'talk' && file !== 'commands';

function isAcross(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to - 1; k++) if (tokens[k]?.pause === 'pause') return true;
  return false;
}

function trace(by: readonly (Group | null)[], tokens: readonly Token[]): readonly Element[] {
  const elements: Element[] = [];
  for (let at = by.length - 1; at > 0; ) {
    const group = by[at] ?? null;
    if (group !== null) elements.push({ from: group.from, to: at, islands: islandsOf(group, tokens) });
    at = group?.from ?? at - 1;
  }
  return elements.reverse();
}
