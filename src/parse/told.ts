// What the context keeps of each finding that was told: where it was and on which side, as one word of the list.

import { FINDINGS, type Finding, isSite, SIDES, type Side, type Site } from '../terms/index.ts';

/** What is told is there, or was looked for and is not. */
export interface Told {
  readonly site: Site;
  readonly finding: Finding;
  readonly side: Side | null;
  readonly present: boolean;
}

/** What is kept of a finding: "site finding side", with a "no" behind it where it was denied. */
export const keptOf = ({ site, finding, side, present }: Told): string =>
  `${site} ${finding} ${side ?? ''}${present ? '' : ' no'}`;

/** The findings of such a list, the latest last. */
export const toldIn = (kept: readonly string[]): readonly Told[] => kept.flatMap(readOnce);

/** There are no more of them than places, findings and sides, and a long talk holds thousands, asked for again and again. */
const read = new Map<string, readonly Told[]>();

function readOnce(kept: string): readonly Told[] {
  const known = read.get(kept);
  if (known !== undefined) return known;
  const [site = '', finding = '', side = '', no] = kept.split(' ');
  const told =
    isSite(site) && isFinding(finding)
      ? [{ site, finding, side: isSide(side) ? side : null, present: no === undefined }]
      : [];
  read.set(kept, told);
  return told;
}

/** True where a finding was told of that place, on whichever side. */
export const wasTold = (kept: readonly string[], site: Site, finding: Finding): boolean =>
  kept.some((one) => one.startsWith(`${site} ${finding} `));

const isFinding = (word: string): word is Finding => (FINDINGS as readonly string[]).includes(word);
const isSide = (word: string): word is Side => (SIDES as readonly string[]).includes(word);
