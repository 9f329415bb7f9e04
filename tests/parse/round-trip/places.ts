// Says where: a sampled site with a side, as "left forearm" or "forearm on the left", and what its tags fix.

import { isPaired, isSite, type Side, type Site } from '../../../src/terms/index.ts';
import type { Phrase, Sampler } from './sampler.ts';

export interface Place {
  readonly text: string;
  readonly sites: readonly Site[];
  /** null where none is said */
  readonly side: Side | null;
}

const LEVELS: Readonly<Record<string, number>> = { C: 7, T: 12, L: 5, S: 5, rib: 12 };

/** A sampled site phrase with a number that its vertebra or rib can have. */
export const sitePhrase = ({ say, chance }: Sampler): Phrase =>
  say('sites.site', (_, tag) => ({ level: chance.whole(1, LEVELS[tag('level') ?? ''] ?? 1) }));

const sitesOf = (phrase: Phrase): readonly Site[] => (phrase.tag('site') ?? '').split('+').filter(isSite);

// A side goes before a plain name; a phrase that begins so has its place for the side elsewhere.
const NO_SIDE_BEFORE =
  /^(the|his|her|their|your|my|this|that|a|on|to|at|of|in|over|across|down|along|above|below|under|beneath|behind|around|inside|outside|front|back|top|bottom|side|sides|base|tip|both|all|four|4|every|just|upper|lower|point|one|first|second|third|fourth|fifth)\b/;

/** A site alone. */
export function plainPlace(
  sampler: Sampler,
  fitting: (sites: readonly Site[]) => boolean = () => true,
): Place {
  for (let tries = 0; tries < 20_000; tries++) {
    const phrase = sitePhrase(sampler);
    const sites = sitesOf(phrase);
    if (sites.length === 0 || phrase.unnamed || phrase.tag('homophone') !== null || !fitting(sites)) continue;
    const spoken = phrase.tag('side') as Side | null;
    const plural = phrase.tag('plural') !== null && sites.every(isPaired);
    return { text: phrase.text, sites, side: spoken ?? (plural ? 'both' : null) };
  }
  throw new Error('no site of the grammar fits');
}

/** A site of which there are two, with its side. */
export function sidedPlace(
  sampler: Sampler,
  fitting: (sites: readonly Site[]) => boolean = () => true,
): Place {
  const { chance } = sampler;
  const place = plainPlace(sampler, (sites) => sites.length === 1 && sites.every(isPaired) && fitting(sites));
  if (place.side !== null) return place;
  const side = chance.pick(['left', 'right'] as const);
  const before = !NO_SIDE_BEFORE.test(place.text) && chance.maybe(0.7);
  return { ...place, side, text: before ? `${side} ${place.text}` : `${place.text} on the ${side}` };
}

/** A site with a side or without. */
export const anyPlace = (sampler: Sampler, fitting?: (sites: readonly Site[]) => boolean): Place =>
  sampler.chance.maybe(0.6) ? sidedPlace(sampler, fitting) : plainPlace(sampler, fitting);
