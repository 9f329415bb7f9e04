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

/** `left distal forearm`, `both wrists`, `right upper quadrant of the abdomen`, `cervical spine at C5`. No article. */
export function placeName({ site, side, part, level }: Place): string {
  const parts = (part ?? []).map((word) => `${word} `).join('');
  if (site === 'behind-ear') return behindEar(parts, side);
  const number = site === 'ribs' ? rib(level) : null;
  const tail = QUADRANTS.includes(site) ? ' of the abdomen' : '';
  const at = level !== undefined && number === null ? ` at ${level.replace('-', ' ')}` : '';
  const noun = `${parts}${number ?? siteName(site)}`;
  const nouns = `${parts}${sitePlural(site)}`;
  const many = number !== null || MANY.includes(site);
  return `${isPaired(site) ? paired(noun, nouns, side, many) : unpaired(noun, side)}${tail}${at}`;
}

/** `the left distal forearm`, `both wrists`: a place as it stands after "of", "to" or "in". */
export function thePlace(place: Place): string {
  const name = placeName(place);
  return /^both |rib \d/.test(name) ? name : `the ${name}`;
}
