// Whatever the grammar lets be said for a site is read back as that site and part, alone and behind "the" or a side.

import { describe, expect, it } from 'vitest';
import { type Expansion, type GrammarSet, phrasesOf } from '../../src/jsgf/index.ts';
import { siteGrammar, siteWords } from './site-words.ts';

interface Spoken {
  readonly words: string;
  readonly sites: readonly string[];
  readonly parts: readonly string[];
}

const values = (tags: readonly string[], key: string): readonly string[] =>
  tags.flatMap((tag) =>
    tag
      .split(' ')
      .flatMap((pair) => (pair.startsWith(`${key}:`) ? pair.slice(key.length + 1).split('+') : [])),
  );

/** All phrases of one alternative of <site>; those with a number in them have tests of their own. */
function spokenBy(set: GrammarSet, item: Expansion): readonly Spoken[] {
  const [rule, ...tags] = item.type === 'sequence' ? item.items : [item];
  if (rule?.type !== 'rule' || rule.name.endsWith('-level')) return [];
  const own = tags.flatMap((tag) => (tag.type === 'tag' ? [tag.text] : []));
  const found = phrasesOf(set, rule.name, 5_000);
  expect(found.kind).toBe('phrases');
  if (found.kind !== 'phrases') return [];
  return found.phrases.map(({ words, tags: within }) => ({
    words: words.join(' '),
    sites: values([...within, ...own], 'site'),
    parts: values(within, 'part'),
  }));
}

const set = siteGrammar.kind === 'linked' ? siteGrammar.grammars : null;
const site = set?.rules.get('sites.site')?.expansion;
const choices = site?.type === 'alternatives' ? site.choices : [];
const all = set === null ? [] : choices.flatMap(({ item }) => spokenBy(set, item));

describe('every phrase for a site', () => {
  it('is there to be read', () => {
    expect(all.length).toBeGreaterThan(2_000);
  });

  it.each(['', 'the ', 'on the left '])('is read back as its site behind "%s"', (before) => {
    const misread = all.filter(({ words, sites }) => siteWords(before + words).sites.join() !== sites.join());
    expect(misread).toEqual([]);
  });

  it.each(['', 'the '])('is read back with its part, and no other, behind "%s"', (before) => {
    const misread = all.filter(({ words, parts }) => siteWords(before + words).parts.join() !== parts.join());
    expect(misread).toEqual([]);
  });
});
