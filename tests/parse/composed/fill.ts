// Picks the words of a sentence by a seed, so that every run says the same, and gives the findings it must mean.

import { ADJECTIVES, type Named, NOUNS, PAIRED, type Paired, PLAIN } from './words.ts';

export interface Place {
  readonly say: string;
  readonly site: string;
  readonly side: string | null;
}

export interface Fill {
  /** this many places, no two of one site */
  places(count: number): readonly Place[];
  /** the same, each with a side */
  sided(count: number): readonly Place[];
  pair(): Paired;
  nouns(count: number): readonly Named[];
  /** adjectives, none of a finding that is `not` wanted */
  adjectives(count: number, not?: readonly string[]): readonly Named[];
  /** left and right in either order */
  sides(): readonly [string, string];
}

/** A statement as one line: `no swelling left knee`. */
export const said = (finding: string, side: string | null, site: string, present: boolean): string =>
  [present ? '' : 'no', finding, side ?? '', site].filter((word) => word !== '').join(' ');

export const there = (place: Place, [, finding]: Named): string =>
  said(finding, place.side, place.site, true);
export const absent = (place: Place, [, finding]: Named): string =>
  said(finding, place.side, place.site, false);
export const clear = (place: Place): string => said('abnormality', place.side, place.site, false);

/** A fill that a seed determines. */
export function fillOf(seed: number): Fill {
  let state = seed;
  const random = (): number => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state / 0x7fffffff;
  };
  const pick = <T>(all: readonly T[]): T => all[Math.floor(random() * all.length)] as T;
  const several = <T>(count: number, make: () => T, key: (one: T) => string): readonly T[] => {
    const out: T[] = [];
    while (out.length < count) {
      const one = make();
      if (!out.some((other) => key(other) === key(one))) out.push(one);
    }
    return out;
  };
  const sided = (): Place => {
    const { one, site } = pick(PAIRED);
    const side = pick(['left', 'right']);
    return { say: `${side} ${one}`, site, side };
  };
  const plain = (): Place => {
    const [say, site] = pick(PLAIN);
    return { say, site, side: null };
  };
  const bySite = ({ site }: Place): string => site;
  const byFinding = ([, finding]: Named): string => finding;
  return {
    places: (count) => several(count, () => (random() < 0.7 ? sided() : plain()), bySite),
    sided: (count) => several(count, sided, bySite),
    pair: () => pick(PAIRED),
    nouns: (count) => several(count, () => pick(NOUNS), byFinding),
    adjectives: (count, not = []) =>
      several(count, () => pick(ADJECTIVES.filter(([, finding]) => !not.includes(finding))), byFinding),
    sides: () => (random() < 0.5 ? ['left', 'right'] : ['right', 'left']),
  };
}
