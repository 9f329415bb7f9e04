// Every surface site of the injury codes of ICD-10-CM is read as a site of the record, with its side.
//
// Source: ICD-10-CM order file, January 2021 (US CDC/NCHS and CMS; a work of the US Government, public domain), codes
// S00 to S99 and T20 to T34: the sites of abrasion, contusion, laceration, puncture, bite, burn and crushing.
// Which site of the record a word of theirs means (the table below) is our reading: common practice, no source.

import { existsSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Reader } from '../../src/parse/index.ts';
import type { Side, Site } from '../../src/terms/index.ts';
import { entriesOf, realReader } from '../talk-case.ts';

const FILE = new URL('../../../shared/data/sites/surface-sites.json', import.meta.url);

// What no one sees or feels from outside is not left out by phrase but by these words.
const INTERNAL =
  /adrenal|duodenum|fallopian|cerebellum|intra-abdominal|intrathoracic|urinary|prostate|ureter|vocal cord/;

// Words by which a classification sorts and that say nothing of the body; what follows "except" is not meant.
const SORTING = /\b(?:unspecified|other|specified|multiple|single)\b/g;
const EXCEPTION = /,? (?:except|not including) .*/;

// In this order, each taking its words out of the phrase, so that the arm in "forearm" is not found again.
const MEANINGS: readonly (readonly [RegExp, ...Site[]])[] = [
  [/trunk/, 'chest', 'abdomen', 'back'],
  [/upper quadrant/, 'upper-quadrant'],
  [/lower quadrant/, 'lower-quadrant'],
  [/abdominal wall|abdomen/, 'abdomen'],
  [/epigastric|periumbilic/, 'abdomen'],
  [/back wall of thorax|(?:lower|upper) back/, 'back'],
  [/thorax|chest|breast/, 'chest'],
  [/anus|pelvis/, 'pelvis'],
  [/genital|penis|scrotum|testi?e?s|vagina|vulva/, 'genitals'],
  [/axilla/, 'armpit'],
  [/buttock/, 'buttock'],
  [/forehead/, 'forehead'],
  [/scalp|skull/, 'skull'],
  [/head/, 'head'],
  [/temporomandibular|chin/, 'jaw'],
  [/cheek/, 'cheek'],
  [/eye|orbital/, 'eye'],
  [/face/, 'face'],
  [/nose/, 'nose'],
  [/\blip|oral cavity/, 'mouth'],
  [/\bear\b/, 'ear'],
  [/neck|throat/, 'neck'],
  [/scapula/, 'scapula'],
  [/shoulder/, 'shoulder'],
  [/upper arm/, 'upper-arm'],
  [/forearm/, 'forearm'],
  [/upper limb|\barm\b/, 'arm'],
  [/elbow/, 'elbow'],
  [/wrist/, 'wrist'],
  [/\bhand\b/, 'hand'],
  [/palm/, 'palm'],
  [/thumb/, 'thumb'],
  [/index finger/, 'index-finger'],
  [/middle finger/, 'middle-finger'],
  [/ring finger/, 'ring-finger'],
  [/little finger/, 'little-finger'],
  [/finger/, 'fingers'],
  [/\bhip\b/, 'hip'],
  [/thigh/, 'thigh'],
  [/knee/, 'knee'],
  [/lower leg/, 'lower-leg'],
  [/lower limb/, 'leg'],
  [/ankle/, 'ankle'],
  [/foot/, 'foot'],
  [/great toe/, 'big-toe'],
  [/toe/, 'toes'],
];

function meantSites(phrase: string): readonly string[] {
  let rest = phrase;
  const sites = new Set<Site>();
  for (const [words, ...meant] of MEANINGS) {
    const without = rest.replaceAll(new RegExp(words, 'g'), ' ');
    if (without !== rest) for (const site of meant) sites.add(site);
    rest = without;
  }
  return [...sites].sort();
}

function meantSides(phrase: string): readonly string[] {
  const sides = phrase.match(/\b(?:left|right|bilateral)\b/g) ?? [];
  return [...new Set(sides)].map((side) => (side === 'bilateral' ? 'both' : side)).sort();
}

interface Named {
  readonly site: Site;
  readonly side: Side | null;
}

/** The sites of the findings and visits that a sentence gives. */
const namedBy = (reader: Reader, sentence: string): readonly Named[] =>
  entriesOf(reader, [sentence]).flatMap((entry) =>
    entry.kind === 'finding' || entry.kind === 'visit' ? [{ site: entry.site, side: entry.side }] : [],
  );

const uniform = (values: readonly string[]): readonly string[] => [...new Set(values)].sort();

if (!existsSync(FILE)) {
  const title =
    'needs ../shared/data/sites/surface-sites.json (surface sites of ICD-10-CM), which is absent here';
  console.info(title);
  it(title, () => expect(existsSync(FILE)).toBe(false));
} else {
  const all = Object.keys(JSON.parse(readFileSync(FILE, 'utf8')));
  const inner = all.filter((phrase) => INTERNAL.test(phrase));
  const surface = all.filter((phrase) => !INTERNAL.test(phrase));
  const sided = surface.filter((phrase) => meantSides(phrase).length > 0);
  console.info(
    `ICD-10-CM: ${all.length} sites, ${inner.length} inner organs left out (${inner.join('; ')}), ${surface.length} checked, ${sided.length} of them with a side`,
  );

  describe('the surface sites of ICD-10-CM', () => {
    let reader: Reader;
    beforeAll(() => {
      reader = realReader();
    });

    it('are all there, and few are inner organs', () => {
      expect(all).toHaveLength(293);
      expect(inner.length).toBeLessThan(all.length / 15);
    });

    it.each(surface)('are understood with their side: %s', (phrase) => {
      const said = phrase.replace(EXCEPTION, '').replaceAll(SORTING, '');
      const named = namedBy(reader, `contusion of ${said}`);
      expect(meantSites(said)).not.toEqual([]);
      expect(uniform(named.map(({ site }) => site))).toEqual(meantSites(said));
      expect(uniform(named.flatMap(({ side }) => side ?? []))).toEqual(meantSides(said));
    });
  });
}
