// Where it hurts to breathe, when another place is in mind.

import { regionOf } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { hasTag, type Island } from '../../islands/island.ts';
import type { Token } from '../../token.ts';
import { type Item, wordsOf } from '../sites/item.ts';
import { plainSite } from '../sites/site-ref.ts';

const TRUNK: ReadonlySet<string> = new Set(['chest', 'abdomen', 'back']);

/** The sites in mind for a finding: "sore on the right when I breathe in", with a hand in mind, is of the trunk, mostly the chest. */
export function mindWithBreath(
  island: Island,
  items: readonly Item[],
  tokens: readonly Token[],
  mind: readonly SiteRef[],
): readonly SiteRef[] {
  const hurts = hasTag(island, 'finding', 'pain') || hasTag(island, 'finding', 'tenderness');
  if (!hurts || mind.some(({ site }) => TRUNK.has(regionOf(site)))) return mind;
  const [first, last] = [items[0], items.at(-1)];
  if (first === undefined || last === undefined) return mind;
  const words = tokens.slice(wordsOf(first).from, wordsOf(last).to);
  return words.some(({ word }) => /^(breaths?|breathes?|breathing|inspiration)$/.test(word))
    ? [plainSite('chest', null)]
    : mind;
}
