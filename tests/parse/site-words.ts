// Says which sites, sides and parts the grammar's words name in a line, before any sentence is made of them.

import { readFileSync } from 'node:fs';
import { linkGrammars } from '../../src/jsgf/index.ts';
import { cover } from '../../src/parse/islands/cover.ts';
import { SLOTS } from '../../src/parse/islands/fill.ts';
import { numberOf, tagOf, tagsOf } from '../../src/parse/islands/island.ts';
import { wordsOf } from '../../src/parse/islands/match.ts';
import { buildNetwork } from '../../src/parse/islands/network.ts';
import { plantTree } from '../../src/parse/islands/tree.ts';
import { checkTag } from '../../src/parse/tags.ts';
import { tokenise } from '../../src/parse/token.ts';

// The small words belong to the cover, as in talk: without them "the back | bone" would look as good as "the | back bone".
const FILES = ['sites', 'sides', 'numbers', 'ordinals', 'small'];

const sources = FILES.map((name) => {
  const file = `grammar/${name}.jsgf`;
  return { file, text: readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8') };
});

/** The grammar of sites and sides with what it imports, or the errors that keep it from being read. */
export const siteGrammar = linkGrammars(sources, { checkTag });

const grammars = siteGrammar.kind === 'linked' ? siteGrammar.grammars : { rules: new Map(), publicRules: [] };
const rules = grammars.publicRules.filter((name) => /^(sites|sides|small)\./.test(name));
const root = plantTree(buildNetwork(grammars, rules, SLOTS));

export interface SiteWords {
  readonly sites: readonly string[];
  readonly sides: readonly string[];
  readonly parts: readonly string[];
  /** `C5`, `rib-7` */
  readonly levels: readonly string[];
  /** bare marks: `plural`, `homophone`, `same` */
  readonly marks: readonly string[];
  /** the rules, for telling what stands before a site from what stands after it */
  readonly rules: readonly string[];
}

/** Everything that the words of `line` name, in the order spoken. */
export function siteWords(line: string): SiteWords {
  const tokens = tokenise(line);
  const islands = cover(root, tokens, wordsOf(tokens)).flatMap(
    ({ islands }) => islands.find(({ file }) => file !== 'small') ?? [],
  );
  const all = (key: string) => islands.flatMap((island) => tagsOf(island, key));
  return {
    sites: all('site').flatMap((value) => value.split('+')),
    sides: all('side'),
    parts: all('part'),
    levels: islands.flatMap((island) => {
      const [level] = tagsOf(island, 'level');
      if (level === undefined) return [];
      const number = numberOf(island, 'level') ?? tagOf(island, 'ordinal');
      return level === 'rib' ? `rib-${number}` : `${level}${number}`;
    }),
    marks: islands.flatMap(({ tags }) => tags.filter(({ value }) => value === '').map(({ key }) => key)),
    rules: islands.map(({ rule }) => rule),
  };
}
