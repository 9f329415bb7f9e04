// Words that the composed sentences are filled with, each beside what it means; common words of the trade, no source.

export interface Paired {
  readonly one: string;
  readonly many: string;
  readonly site: string;
}

const paired = (one: string, site: string = one.replace(' ', '-'), many = `${one}s`): Paired => ({
  one,
  many,
  site,
});

export const PAIRED: readonly Paired[] = [
  paired('knee'),
  paired('ankle'),
  paired('wrist'),
  paired('elbow'),
  paired('shoulder'),
  paired('forearm'),
  paired('thigh'),
  paired('shin', 'lower-leg'),
  paired('calf', 'lower-leg', 'calves'),
  paired('hip'),
  paired('collarbone', 'clavicle'),
  paired('hand'),
  paired('foot', 'foot', 'feet'),
  paired('upper arm'),
  paired('shoulder blade', 'scapula'),
  paired('ear'),
  paired('thumb'),
];

/** Sites that need no side. */
export const PLAIN: readonly (readonly [string, string])[] = [
  ['neck', 'neck'],
  ['back', 'back'],
  ['chest', 'chest'],
  ['belly', 'abdomen'],
  ['pelvis', 'pelvis'],
  ['jaw', 'jaw'],
  ['forehead', 'forehead'],
  ['sternum', 'sternum'],
  ['nose', 'nose'],
  ['scalp', 'skull'],
  ['tailbone', 'tailbone'],
];

/** A finding as a word and as the record has it. */
export type Named = readonly [word: string, finding: string];

export const NOUNS: readonly Named[] = [
  ['swelling', 'swelling'],
  ['bruising', 'contusion'],
  ['tenderness', 'tenderness'],
  ['bleeding', 'bleeding'],
  ['deformity', 'deformity'],
  ['crepitus', 'crepitus'],
  ['pain', 'pain'],
  ['laceration', 'laceration'],
  ['redness', 'discoloration'],
  ['numbness', 'numbness'],
  ['abrasion', 'abrasion'],
];

export const ADJECTIVES: readonly Named[] = [
  ['swollen', 'swelling'],
  ['tender', 'tenderness'],
  ['bruised', 'contusion'],
  ['bleeding', 'bleeding'],
  ['deformed', 'deformity'],
  ['numb', 'numbness'],
  ['scraped', 'abrasion'],
  ['burned', 'burn'],
  ['sore', 'pain'],
];
