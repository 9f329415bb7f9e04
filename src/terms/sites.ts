// Every body site the record can name, in the order a head-to-toe examination is taught, with whether it has two sides.

export const REGIONS = [
  'head',
  'neck',
  'shoulder',
  'arm',
  'chest',
  'abdomen',
  'pelvis',
  'leg',
  'back',
] as const;
export type Region = (typeof REGIONS)[number];

interface SiteRow {
  readonly region: Region;
  /** true where a left and a right one exist; such a site without a side has `side: null` only because it was not said. */
  readonly paired: boolean;
  /** the wider site that holds this one, or null for the region's own site */
  readonly within: string | null;
}

const one = (region: Region, within: string | null): SiteRow => ({ region, paired: false, within });
const two = (region: Region, within: string | null): SiteRow => ({ region, paired: true, within });

export const SITE_TABLE = {
  head: one('head', null),
  skull: one('head', 'head'),
  face: one('head', 'head'),
  forehead: one('head', 'face'),
  eye: two('head', 'face'),
  ear: two('head', 'head'),
  'behind-ear': two('head', 'head'),
  nose: one('head', 'face'),
  cheek: two('head', 'face'),
  mouth: one('head', 'face'),
  teeth: one('head', 'mouth'),
  jaw: one('head', 'face'),
  neck: one('neck', null),
  trachea: one('neck', 'neck'),
  'neck-veins': two('neck', 'neck'),
  'cervical-spine': one('neck', 'spine'),
  clavicle: two('shoulder', 'shoulder'),
  shoulder: two('shoulder', null),
  scapula: two('shoulder', 'shoulder'),
  arm: two('arm', null),
  'upper-arm': two('arm', 'arm'),
  elbow: two('arm', 'arm'),
  forearm: two('arm', 'arm'),
  wrist: two('arm', 'arm'),
  hand: two('arm', 'arm'),
  palm: two('arm', 'hand'),
  thumb: two('arm', 'hand'),
  'index-finger': two('arm', 'hand'),
  'middle-finger': two('arm', 'hand'),
  'ring-finger': two('arm', 'hand'),
  'little-finger': two('arm', 'hand'),
  fingers: two('arm', 'hand'),
  chest: one('chest', null),
  sternum: one('chest', 'chest'),
  ribs: two('chest', 'chest'),
  armpit: two('chest', 'chest'),
  abdomen: one('abdomen', null),
  'upper-quadrant': two('abdomen', 'abdomen'),
  'lower-quadrant': two('abdomen', 'abdomen'),
  pelvis: one('pelvis', null),
  hip: two('pelvis', 'pelvis'),
  groin: two('pelvis', 'pelvis'),
  genitals: one('pelvis', 'pelvis'),
  buttock: two('pelvis', 'pelvis'),
  leg: two('leg', null),
  thigh: two('leg', 'leg'),
  knee: two('leg', 'leg'),
  'lower-leg': two('leg', 'leg'),
  ankle: two('leg', 'leg'),
  foot: two('leg', 'leg'),
  heel: two('leg', 'foot'),
  'big-toe': two('leg', 'foot'),
  'little-toe': two('leg', 'foot'),
  toes: two('leg', 'foot'),
  back: one('back', null),
  spine: one('back', 'back'),
  'thoracic-spine': one('back', 'spine'),
  'lumbar-spine': one('back', 'spine'),
  sacrum: one('back', 'spine'),
  tailbone: one('back', 'spine'),
  flank: two('back', 'back'),
} as const satisfies Record<string, SiteRow>;

export type Site = keyof typeof SITE_TABLE;
export const SITES = Object.keys(SITE_TABLE) as readonly Site[];

/** True for a word that is one of the record's sites. */
export const isSite = (word: string): word is Site => Object.hasOwn(SITE_TABLE, word);

/** True where the body has a left and a right one of this site. */
export const isPaired = (site: Site): boolean => SITE_TABLE[site].paired;

/** The region whose turn in the examination this site belongs to. */
export const regionOf = (site: Site): Region => SITE_TABLE[site].region;

/** True for the site itself, and for each that it holds. */
export const isWithin = (site: Site, outer: Site): boolean =>
  site === outer || holdersOf(site).includes(outer);

/** The sites that hold this one, nearest first: `thumb` gives `hand`, `arm`. */
export function holdersOf(site: Site): readonly Site[] {
  const holders: Site[] = [];
  for (let at: string | null = SITE_TABLE[site].within; at !== null; ) {
    if (!isSite(at)) break;
    holders.push(at);
    at = SITE_TABLE[at].within;
  }
  return holders;
}
