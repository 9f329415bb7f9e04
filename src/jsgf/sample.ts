// Says something at random that a rule allows, for tests that what can be heard can be understood.

import type { Choice, Expansion, GrammarSet } from './shape.ts';

export interface SampleOptions {
  /** how likely an optional part is said, 0 to 1; 0.5 where not given */
  readonly optionalChance?: number;
  /** the most often a repeat is said, at least 1; 2 where not given */
  readonly mostRepeats?: number;
}

export interface Sample {
  /** the tokens in order; a quoted token is one word even with a space in it */
  readonly words: readonly string[];
  readonly tags: readonly string[];
}

interface Sampling {
  readonly set: GrammarSet;
  readonly random: () => number;
  readonly optionalChance: number;
  readonly mostRepeats: number;
  readonly words: string[];
  readonly tags: string[];
  readonly speakable: Map<string, boolean>;
}

function ruleExpansion(set: GrammarSet, name: string): Expansion {
  const rule = set.rules.get(name);
  if (rule === undefined) throw new Error(`No rule is named <${name}> in this set.`);
  return rule.expansion;
}

/** False for what holds a `<VOID>` that cannot be gone round. */
function canSpeak(expansion: Expansion, sampling: Sampling): boolean {
  switch (expansion.type) {
    case 'void':
      return false;
    case 'sequence':
      return expansion.items.every((item) => canSpeak(item, sampling));
    case 'alternatives':
      return expansion.choices.some(({ weight, item }) => weight > 0 && canSpeak(item, sampling));
    case 'repeat':
      return expansion.min === 0 || canSpeak(expansion.item, sampling);
    case 'rule': {
      const known = sampling.speakable.get(expansion.name);
      if (known !== undefined) return known;
      const answer = canSpeak(ruleExpansion(sampling.set, expansion.name), sampling);
      sampling.speakable.set(expansion.name, answer);
      return answer;
    }
    default:
      return true;
  }
}

/** One choice, as likely as its weight; those that cannot be spoken are left out. */
function pick(choices: readonly Choice[], sampling: Sampling): Expansion {
  const open = choices.filter(({ weight, item }) => weight > 0 && canSpeak(item, sampling));
  const total = open.reduce((sum, { weight }) => sum + weight, 0);
  let rest = sampling.random() * total;
  for (const { weight, item } of open) {
    rest -= weight;
    if (rest < 0) return item;
  }
  return open.at(-1)?.item ?? { type: 'void' };
}

function speak(expansion: Expansion, sampling: Sampling): void {
  const { random, optionalChance, mostRepeats, words, tags } = sampling;
  switch (expansion.type) {
    case 'token':
      words.push(expansion.text);
      break;
    case 'tag':
      tags.push(expansion.text);
      break;
    case 'rule':
      speak(ruleExpansion(sampling.set, expansion.name), sampling);
      break;
    case 'sequence':
      for (const item of expansion.items) speak(item, sampling);
      break;
    case 'alternatives':
      speak(pick(expansion.choices, sampling), sampling);
      break;
    case 'optional':
      if (canSpeak(expansion.item, sampling) && random() < optionalChance) speak(expansion.item, sampling);
      break;
    case 'repeat': {
      const spread = mostRepeats - expansion.min + 1;
      const times = canSpeak(expansion.item, sampling) ? expansion.min + Math.floor(random() * spread) : 0;
      for (let i = 0; i < times; i++) speak(expansion.item, sampling);
      break;
    }
    default:
      break;
  }
}

/**
 * One thing that the rule allows, chosen by `random` (0 up to but not 1) and the weights. The name must be fully
 * qualified and of this set, and the rule must not be void: anything else is a bug of the caller and throws.
 */
export function sampleRule(
  set: GrammarSet,
  qualifiedName: string,
  random: () => number,
  { optionalChance = 0.5, mostRepeats = 2 }: SampleOptions = {},
): Sample {
  const words: string[] = [];
  const tags: string[] = [];
  const sampling = {
    set,
    random,
    optionalChance,
    mostRepeats,
    words,
    tags,
    speakable: new Map<string, boolean>(),
  };
  const expansion = ruleExpansion(set, qualifiedName);
  if (!canSpeak(expansion, sampling))
    throw new Error(`<${qualifiedName}> can never be spoken: it holds <VOID>.`);
  speak(expansion, sampling);
  return { words, tags };
}
