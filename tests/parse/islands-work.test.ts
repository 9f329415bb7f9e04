// Finding phrases costs work in step with the words said, counted and not timed, for talk of any length.

import { describe, expect, it } from 'vitest';
import { linkGrammars } from '../../src/jsgf/index.ts';
import { cover } from '../../src/parse/islands/cover.ts';
import { SLOTS } from '../../src/parse/islands/fill.ts';
import { wordsOf } from '../../src/parse/islands/match.ts';
import { buildNetwork } from '../../src/parse/islands/network.ts';
import { rootRules } from '../../src/parse/islands/roots.ts';
import { plantTree } from '../../src/parse/islands/tree.ts';
import { checkTag } from '../../src/parse/tags.ts';
import { tokenise } from '../../src/parse/token.ts';
import { grammarFiles } from '../../src/replay/grammar-files.ts';

const linked = linkGrammars(grammarFiles(), { checkTag });
if (linked.kind === 'errors') throw new Error('the grammar has errors');
const root = plantTree(buildNetwork(linked.grammars, rootRules(linked.grammars, SLOTS), SLOTS));

/** How often a word is looked at while the best cover of a text is found. */
function looks(text: string): number {
  const tokens = tokenise(text);
  let count = 0;
  const words = new Proxy(wordsOf(tokens), {
    get(target, key, receiver) {
      if (typeof key === 'string' && /^\d+$/.test(key)) count++;
      return Reflect.get(target, key, receiver);
    },
  });
  cover(root, tokens, words);
  return count;
}

// The last three are the worst for a grammar: phrases that never end, and numbers in a row.
const TALK = [
  'no deformity or swelling of the left forearm and blood pressure one twenty over eighty then ',
  'the quick brown kettle sang about the harbour ',
  'of the left of the right of the left ',
  'is are was is at about around ',
  'one two twenty five oh six hundred ',
];

describe('finding the phrases of a talk', () => {
  it.each(TALK)('looks at each word as often in a long one as in a short one: %s', (line) => {
    const short = looks(line.repeat(20));
    const long = looks(line.repeat(160));
    expect(short).toBeGreaterThan(0);
    expect(long / short).toBeGreaterThan(7);
    expect(long / short).toBeLessThan(9);
  });
});
