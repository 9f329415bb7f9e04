// The tree of phrases: what ends after which words, with the tags of the way there and what it costs.

import { describe, expect, it } from 'vitest';
import { linkGrammars } from '../../src/jsgf/index.ts';
import { buildNetwork } from '../../src/parse/islands/network.ts';
import { rootRules } from '../../src/parse/islands/roots.ts';
import { afterWord, type Branch, plantTree } from '../../src/parse/islands/tree.ts';

// Invented: two ways to one end, repeats of what may be empty, an option of what may be empty, weights.
const TEXT = `#JSGF V1.0;
grammar made;
public <place> = (on {led} | by) [the] (left {side:left} | right {side:right}) <foot> {last};
public <many> = ([very] | so)* big {big};
public <twice> = [<NULL> {passed}] small;
public <rare> = (/0.1/ foot {seldom} | /1/ foot {often}) [feet];
<foot> = foot | feet;
`;

const linked = linkGrammars([{ file: 'made.jsgf', text: TEXT }]);
if (linked.kind === 'errors') throw new Error(linked.errors[0]?.message);
const { grammars } = linked;
const root = plantTree(buildNetwork(grammars, rootRules(grammars, new Set()), new Set()));

/** The phrases that end after these words, each as its tags and its cost; null where no phrase goes on so far. */
function ends(said: string): readonly string[] | null {
  let branch: Branch | null = root;
  for (const word of said.split(' ')) branch = branch === null ? null : afterWord(branch, word);
  const phrases = branch?.endings.map(({ tags, cost }) => `${tags.map(({ key }) => key).join(' ')} ${cost}`);
  return phrases ?? null;
}

describe('the tree of phrases', () => {
  it.each([
    ['on the left foot', ['led side last 0']],
    // The same end by another way has the tags of its own way.
    ['by the left foot', ['side last 0']],
    ['on right feet', ['led side last 0']],
    ['very so very big', ['big 0']],
    ['big', ['big 0']],
    // What may be empty within an option is passed in two ways.
    ['small', ['passed 0', ' 0']],
    ['foot', ['seldom 1', 'often 0']],
    ['foot feet', ['seldom 1', 'often 0']],
    ['on the', []],
  ])('ends as the grammar says after: %s', (said, phrases) => {
    expect(ends(said)).toEqual(phrases);
  });

  it.each(['left', 'on foot', 'by the the left', 'on the left foot foot', 'unheard'])(
    'leads nowhere: %s',
    (said) => {
      expect(ends(said)).toBeNull();
    },
  );
});
