// A place on the body in prose, with the patient's side in a full word, and said to be unsaid where it was not said.

import { isPaired, type Level, type Part, type Side, type Site } from '../../terms/index.ts';
import { siteName, sitePlural } from '../../timeline/index.ts';

export interface Place {
  readonly site: Site;
  readonly side: Side | null;
  readonly part?: readonly Part[];
  readonly level?: Level;
}

const QUADRANTS: readonly Site[] = ['upper-quadrant', 'lower-quadrant'];
/** Plain names that are plurals already: "both ribs" would be two ribs. */
const MANY: readonly Site[] = ['ribs', 'fingers', 'toes', 'neck-veins'];
const UNSAID = '(side not said)';

const rib = (level: Level | undefined): string | null =>
  level?.startsWith('rib-') === true ? `rib ${level.slice(4)}` : null;

function paired(noun: string, nouns: string, side: Side | null, many: boolean): string {
  if (side === null) return `${noun} ${UNSAID}`;
  if (side === 'midline') return `midline of the ${noun}`;
  if (side === 'both') return many ? `${noun} on both sides` : `both ${nouns}`;
  return `${side} ${noun}`;
}

function unpaired(noun: string, side: Side | null): string {
  if (side === null) return noun;
  if (side === 'both') return `both sides of the ${noun}`;
  return side === 'midline' ? `midline of the ${noun}` : `${side} side of the ${noun}`;
}

function behindEar(parts: string, side: Side | null): string {
  const area = `${parts}area behind`;
  if (side === 'both') return `${parts}areas behind both ears`;
  return side === null ? `${area} the ear ${UNSAID}` : `${area} the ${side} ear`;
}

/** The upper part of an arm is not "the upper arm", and the lower part of a leg is not "the lower leg". */
function limbPart(site: Site, side: Side | null, part: Place['part']): string | null {
  const whole = site === 'arm' || site === 'leg';
  if (!whole || part === undefined || !part.some((word) => word === 'upper' || word === 'lower')) return null;
  return `${part.join(' ')} part of ${thePlace({ site, side })}`;
}

/** `left distal forearm`, `both wrists`, `right upper quadrant of the abdomen`, `cervical spine at C5`. No article. */
export function placeName({ site, side, part, level }: Place): string {
  const parts = (part ?? []).map((word) => `${word} `).join('');
  if (site === 'behind-ear') return behindEar(parts, side);
  const number = site === 'ribs' ? rib(level) : null;
  const limb = limbPart(site, side, part);
  if (limb !== null) return limb;
  const tail = QUADRANTS.includes(site) ? ' of the abdomen' : '';
  const at = level !== undefined && number === null ? ` at ${level.replace('-', ' ')}` : '';
  const noun = `${parts}${number ?? siteName(site)}`;
  const nouns = `${parts}${sitePlural(site)}`;
  const many = number !== null || MANY.includes(site);
  const named = isPaired(site) ? paired(noun, nouns, side, many) : unpaired(noun, side);
  // "Upper quadrant of the abdomen (side not said)", not "upper quadrant (side not said) of the abdomen".
  return tail !== '' && named.endsWith(UNSAID) ? `${noun}${tail} ${UNSAID}${at}` : `${named}${tail}${at}`;
}

/** The same place under a "no", where both sides are denied: `either wrist`; elsewhere as `thePlace` has it. */
export function noPlace(place: Place): string {
  const { site, side, part } = place;
  if (side !== 'both' || !isPaired(site) || MANY.includes(site) || place.level !== undefined)
    return thePlace(place);
  const parts = (part ?? []).map((word) => `${word} `).join('');
  if (site === 'behind-ear') return `the ${parts}area behind either ear`;
  if (limbPart(site, side, part) !== null) return thePlace(place);
  return `either ${parts}${siteName(site)}${QUADRANTS.includes(site) ? ' of the abdomen' : ''}`;
}

/** `the left distal forearm`, `both wrists`: a place as it stands after "of", "to" or "in". */
export function thePlace(place: Place): string {
  const name = placeName(place);
  return /^both |rib \d/.test(name) ? name : `the ${name}`;
}
