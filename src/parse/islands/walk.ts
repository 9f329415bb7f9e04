// The ways on from a rest along one word, one slot or the end of a phrase, through all of the grammar that says nothing itself.

import type { Tag } from './island.ts';
import { ANY_SLOT, beginsWith, END, type Part, type Word } from './parts.ts';
import { itemsFrom, type Passed, type Rest, restOf, type Step, signsFrom, wordsFrom } from './rest.ts';

/** The loops on the way since the last word: a repeat of something that may be empty would otherwise go round for ever. */
interface Round {
  readonly loop: Rest;
  readonly before: Round | null;
}

/** What comes after this word, after a slot or where the phrase ends, worked out when it is first asked for. */
export function stepsOf(rest: Rest, key: Word): readonly Step[] {
  const known = rest.steps?.get(key);
  if (known !== undefined) return known;
  const steps: Step[] = [];
  go({ key, steps }, rest, NOTHING_PASSED, null);
  // A sign is shared by many words, so most rests that are asked have no such step: to keep that costs more than to find it.
  if (steps.length === 0) return steps;
  rest.steps ??= new Map();
  // A list that grew one by one has room for more, and thousands are kept.
  rest.steps.set(key, steps.slice());
  return steps;
}

/** What a walk looks for, and what it found. */
interface Walk {
  readonly key: Word;
  readonly steps: Step[];
}

const NOTHING_PASSED: Passed = { tags: [], costs: [] };

const tagged = ({ tags, costs }: Passed, more: readonly Tag[]): Passed => ({
  tags: [...tags, ...more],
  costs,
});

const weighed = ({ tags, costs }: Passed, cost: number): Passed => ({ tags, costs: [...costs, cost] });

// The likelier a part is to lead nowhere, the earlier it is left: most can neither begin with the word nor be empty.
const leads = (part: Part, key: Word): boolean => part.mayBeEmpty || beginsWith(part, key);

function go(walk: Walk, rest: Rest, passed: Passed, round: Round | null): void {
  if ((rest.signs & walk.key.sign) === 0) return;
  const { part, at, next } = rest;
  if (next === null) return;
  switch (part.type) {
    case 'phrase':
      if (walk.key === END) walk.steps.push({ what: part.rule, rest, passed });
      break;
    case 'words':
      say(walk, part, at, next, passed);
      break;
    case 'sequence':
      goOn(walk, part, at, next, passed, round);
      break;
    case 'repeat': {
      if (goneRound(round, rest)) break;
      const here = { loop: rest, before: round };
      for (const item of part.items) if (leads(item, walk.key)) enter(walk, item, rest, passed, here);
      go(walk, next, passed, here);
    }
  }
}

function say(walk: Walk, token: Part, at: number, next: Rest, passed: Passed): void {
  const { key, steps } = walk;
  if (token.words[at] === key) steps.push({ what: key.text, rest: wordsFrom(token, at + 1, next), passed });
}

function goOn(
  walk: Walk,
  sequence: Part,
  from: number,
  next: Rest,
  passed: Passed,
  round: Round | null,
): void {
  const { items } = sequence;
  const { key } = walk;
  for (let at = from; at < items.length; at++) {
    const item = items[at];
    if (item === undefined) return;
    const begins = beginsWith(item, key);
    // An option without this word is passed as if it were not there.
    if (!begins && item.type === 'optional' && isPlain(item)) continue;
    const leadsOn = item.mayBeEmpty && (signsFrom(sequence, at + 1, next) & key.sign) !== 0;
    if (begins || leadsOn) enter(walk, item, itemsFrom(sequence, at + 1, next), passed, round);
    return;
  }
  go(walk, next, passed, round);
}

// An option of something that may be empty itself can be passed in two ways.
const isPlain = ({ items }: Part): boolean => items[0]?.mayBeEmpty === false;

/** Goes into a part that leads on (see `leads`). */
function enter(walk: Walk, part: Part, next: Rest, passed: Passed, round: Round | null): void {
  switch (part.type) {
    case 'sequence':
      goOn(walk, part, 0, next, passed, round);
      break;
    case 'alternatives':
      for (const { cost, item } of part.byWord.get(walk.key.text) ?? part.empty)
        enter(walk, item, next, cost === 0 ? passed : weighed(passed, cost), round);
      break;
    case 'optional':
      for (const item of part.items) if (leads(item, walk.key)) enter(walk, item, next, passed, round);
      go(walk, next, passed, round);
      break;
    case 'repeat':
      go(walk, restOf(part, 0, next), passed, round);
      break;
    case 'phrase':
      for (const item of part.items) enter(walk, item, restOf(part, 0, next), passed, round);
      break;
    case 'words':
      say(walk, part, 0, next, passed);
      break;
    case 'slot':
      if (walk.key === ANY_SLOT) walk.steps.push({ what: part.rule, rest: next, passed });
      break;
    case 'tag':
      go(walk, next, tagged(passed, part.tags), round);
      break;
    case 'empty':
      go(walk, next, passed, round);
  }
}

function goneRound(round: Round | null, loop: Rest): boolean {
  for (let at = round; at !== null; at = at.before) if (at.loop === loop) return true;
  return false;
}
