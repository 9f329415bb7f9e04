// Sentences that put a sampled finding at a sampled site, with a negation or without.

import { isSite, regionOf, type Site } from '../../../src/terms/index.ts';
import { anyPlace, type Place, plainPlace, sidedPlace } from './places.ts';
import type { Phrase, Sampler } from './sampler.ts';
import { type Pattern, type Sentence, stating } from './sentence.ts';

const has = (phrase: Phrase, key: string): boolean => phrase.tag(key) !== null;

const homesOf = (phrase: Phrase, key: string): readonly Site[] =>
  (phrase.tag(key) ?? '').split('+').filter(isSite);

/** Where this finding may be said to be. */
const fitting =
  (phrase: Phrase) =>
  (sites: readonly Site[]): boolean => {
    const only = homesOf(phrase, 'for');
    const exact = homesOf(phrase, 'only');
    if (exact.length > 0) return sites.every((site) => exact.includes(site));
    // "Jugular, distension" is a finding with a name of its own.
    if (phrase.tag('finding') === 'distension' && sites.includes('neck-veins')) return false;
    // An "ear hole" is a place.
    if (phrase.text === 'hole' && sites.includes('ear')) return false;
    if (OF_A_LIMB.test(phrase.text) && sites.some((site) => LIMBS.has(regionOf(site)))) return false;
    return (
      only.length === 0 ||
      sites.every((site) => only.some((one) => one === site || regionOf(one) === regionOf(site)))
    );
  };

// "Midline tenderness" names a side of its own, and so does "goes in on the left as he breathes in"; the neck's veins may be one thing.
const sideOf = (phrase: Phrase, place: Place): Pattern => {
  if (/\bmidline\b/.test(phrase.text) || place.sites.includes('neck-veins')) return {};
  return { side: (has(phrase, 'side') ? phrase.tag('side') : place.side) as Place['side'] };
};

const foundAt = (phrase: Phrase, place: Place, present: boolean): readonly Pattern[] =>
  phrase
    .tags('finding')
    .flatMap((finding) =>
      place.sites.map((site) =>
        stating({ kind: 'finding', site, ...sideOf(phrase, place), finding, present }),
      ),
    );

// At a limb these say how its end feels and moves; the sentences about limbs' ends have them.
const OF_A_LIMB = /\b(feeling|sensation|motion|movement|mobility|range|r o m|moves|moving|move)\b/;
const LIMBS: ReadonlySet<string> = new Set(['arm', 'leg', 'shoulder', 'pelvis']);

// "Anything out of place" asks, and states nothing.
function finding(sampler: Sampler): Phrase {
  for (;;) {
    const phrase = sampler.say('findings.finding');
    // "Can't you bend" asks: compose/which-of-two.test.ts holds what it asks after.
    if (!/^anything\b/.test(phrase.text) && phrase.tag('asked') === null) return phrase;
  }
}

/** A noun that a "no" may stand before and a site after. */
export function nounFinding(sampler: Sampler): Phrase {
  for (;;) {
    const phrase = finding(sampler);
    const odd = [
      'adj',
      'present',
      'at',
      'for',
      'only',
      'home',
      'predicate',
      'weak',
      'own',
      'before-site',
    ].some((key) => has(phrase, key));
    // "D cap of the shoulder" is a cap of the shoulder too.
    const initials = phrase.tags('finding').length > 1;
    if (!odd && !initials && !OF_A_LIMB.test(phrase.text) && phrase.tag('finding') !== null) return phrase;
  }
}

// "Moves fine" has its verb.
const IS_VERB = /^(?:it|this|that|has|he|she|still|able|can|moves|moving|bends|turns|rotates)\b/;

/** One sampled finding of any kind, said of a place it can have. */
function stated(sampler: Sampler): Sentence {
  const { chance } = sampler;
  const phrase = finding(sampler);
  const rule = `findings.finding ${phrase.tag('finding')}`;
  const present = phrase.tag('present') !== 'false';
  const homes = homesOf(phrase, 'at');
  const bare = !has(phrase, 'predicate') && !has(phrase, 'for') && !has(phrase, 'only');
  if (homes.length > 0 && bare) {
    const wants = phrase
      .tags('finding')
      .flatMap((finding) => homes.map((site) => stating({ kind: 'finding', site, finding, present })));
    return { rule, lines: [phrase.text], wants };
  }
  const [home] = homes;
  const place: Place =
    home === undefined
      ? (has(phrase, 'only') ? plainPlace : anyPlace)(sampler, fitting(phrase))
      : { text: home, sites: [home], side: null };
  const wants = foundAt(phrase, place, present);
  const never = phrase
    .tags('finding')
    .map((finding) => stating({ kind: 'finding', finding, present: !present }));
  // Nobody says "teeth looks two missing".
  const isCounted = /^(one|two|three|some|a few|several|a couple)\b/.test(phrase.text);
  const is = IS_VERB.test(phrase.text) || isCounted ? '' : `${chance.pick(['is', 'looks', 'feels'])} `;
  // "A nail in the left palm", "not a mark on the left palm": its place stands straight after it.
  if (has(phrase, 'before-site'))
    return { rule, lines: [withoutDoubles(`${phrase.text} the ${place.text}`)], wants, never };
  if (has(phrase, 'predicate') || !present)
    return {
      rule,
      lines: [`${place.text} ${has(phrase, 'adj') && !IS_VERB.test(phrase.text) ? 'is ' : ''}${phrase.text}`],
      wants,
      never,
    };
  if (has(phrase, 'adj')) return { rule, lines: [`${place.text} ${is}${phrase.text}`], wants, never };
  const joined = phrase.tags('finding').length > 1 ? `${place.text}, ${phrase.text}` : null;
  const lines = chance.pick([
    [`${place.text} ${phrase.text}`],
    [`${phrase.text} of the ${place.text}`],
    [`${place.text}, ${phrase.text}`],
  ]);
  return { rule, lines: (joined === null ? lines : [joined]).map(withoutDoubles), wants, never };
}

/** "Of the" before a phrase that has its own article or preposition is not said. */
export const withoutDoubles = (line: string): string =>
  line
    .replace(
      /\b(of|on) the (the|his|her|their|your|my|this|that|both|all|every|four|on|to|at|of|in|over|across|down|along|above|below|under|beneath|behind|around|just|inside|either)\b/,
      '$1 $2',
    )
    .replace(
      /\bof (on|to|at|of|in|over|across|down|along|above|below|under|beneath|behind|around|just|inside)\b/,
      '$1',
    );

const NEGATIONS = ['no', 'no', 'no', 'without', 'no sign of', 'do not see any', 'denies any'];

/** "No deformity, swelling or tenderness of the left forearm": each is denied, and none is stated. */
function denied(sampler: Sampler): Sentence {
  const { chance } = sampler;
  const phrases = Array.from({ length: chance.whole(1, 3) }, () => nounFinding(sampler));
  const place = sidedPlace(sampler);
  const texts = phrases.map(({ text }) => text);
  const list = texts.length === 1 ? texts[0] : `${texts.slice(0, -1).join(', ')} or ${texts.at(-1)}`;
  const no = chance.pick(NEGATIONS);
  const line = chance.pick([`${no} ${list} of the ${place.text}`, `${place.text}, ${no} ${list}`]);
  return {
    rule: 'findings.finding denied',
    lines: [withoutDoubles(line)],
    wants: phrases.flatMap((phrase) => foundAt(phrase, place, false)),
    never: [stating({ kind: 'finding', present: true })],
  };
}

/** A finding with no site said is at the site in mind. */
function carried(sampler: Sampler): Sentence {
  const phrase = nounFinding(sampler);
  const place = sidedPlace(sampler);
  // What hurts with the breath is in the trunk, whatever limb is in mind.
  const isTrunk = place.sites.every((site) => /^(chest|abdomen|back)$/.test(regionOf(site)));
  const at =
    /\b(breath|inspiration)/.test(phrase.text) && !isTrunk
      ? { ...place, sites: ['chest' as const], side: null }
      : place;
  const wants = foundAt(phrase, at, true).map((pattern) => ({ ...pattern, known: { site: 'carried' } }));
  return { rule: 'findings.finding carried', lines: [place.text, phrase.text], wants };
}

/** A site alone was visited and nothing more. */
function visited(sampler: Sampler): Sentence {
  const place = plainPlace(sampler);
  return {
    rule: 'sites.site',
    lines: [place.text],
    wants: place.sites.map((site) => stating({ kind: 'visit', site, side: place.side })),
    never: [stating({ kind: 'finding' })],
  };
}

const PAINS = /^(sharp|dull|throbbing|stabbing|constant|intermittent)$/;
const BURNS = /^(partial thickness|full thickness|circumferential)$/;

/** A finding that such a word is said of. */
const nounFor = (text: string): readonly [noun: string, finding: string] =>
  PAINS.test(text) ? ['pain', 'pain'] : BURNS.test(text) ? ['burn', 'burn'] : ['bruise', 'contusion'];

/** What is said of a finding colours it. */
function coloured(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const place = sidedPlace(sampler);
  const rule = chance.pick(['severity', 'size', 'scale', 'quality', 'extent']);
  const phrase = say(`findings.${rule}`, () => ({
    size: chance.whole(2, 20),
    severity: chance.whole(0, 10),
  }));
  const [noun, finding] = rule === 'scale' ? ['pain', 'pain'] : nounFor(phrase.text);
  const [site] = place.sites;
  const score = phrase.numbers.severity;
  const base = { kind: 'finding', site, side: place.side, finding, present: score !== 0 };
  const before = `${phrase.text} ${noun} ${withoutDoubles(`of the ${place.text}`)}`;
  const after = `${place.text} ${noun}, ${phrase.text}`;
  const size = phrase.tags('num').length === 1 ? { size: { value: sizeOf(phrase), unit: 'cm' } } : {};
  const quality = phrase.tag('quality');
  const more: Readonly<Record<string, Pattern>> = {
    severity: { severity: phrase.tag('severity') },
    size,
    scale: { severity: score },
    quality: quality === null ? {} : { quality: [quality] },
  };
  const line = rule === 'size' || rule === 'scale' ? after : before;
  return { rule: `findings.${rule}`, lines: [line], wants: [stating({ ...base, ...more[rule] })] };
}

const CM: Readonly<Record<string, number>> = { cm: 1, mm: 0.1, inch: 2.54 };

const sizeOf = (phrase: Phrase): number =>
  Math.round((phrase.numbers.size ?? 0) * (CM[phrase.tag('unit') ?? ''] ?? 0) * 100) / 100;

/** How much of the skin a burn takes in stays in its words; it is said of nothing else. */
function sized(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const place = sidedPlace(sampler);
  const phrase = say('findings.area', () => ({ palms: chance.whole(2, 9), percent: chance.whole(2, 30) }));
  const { palms, percent } = phrase.numbers;
  const [site] = place.sites;
  const each = phrase.tag('each') === null || phrase.tag('each') === undefined ? '' : ' each';
  const quality = palms === undefined ? `${percent} percent${each}` : `${palms} palms`;
  return {
    rule: 'findings.area',
    lines: [`${place.text} burn, ${phrase.text}`],
    wants: [stating({ kind: 'finding', site, side: place.side, finding: 'burn', quality: [quality] })],
    never: [stating({ kind: 'visit', site: 'palm' })],
  };
}

/** The sentences about findings and sites. */
export const findingSentences = (sampler: Sampler): readonly Sentence[] => [
  ...Array.from({ length: 700 }, () => stated(sampler)),
  ...Array.from({ length: 250 }, () => denied(sampler)),
  ...Array.from({ length: 100 }, () => carried(sampler)),
  ...Array.from({ length: 300 }, () => visited(sampler)),
  ...Array.from({ length: 120 }, () => coloured(sampler)),
  ...Array.from({ length: 40 }, () => sized(sampler)),
];
