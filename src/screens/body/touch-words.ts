// The words that a touch says to the reader: a place, with a finding or without it; a test reads each of them back.

import type { Finding, Side, Site } from '../../terms/index.ts';
import { findingName, siteName } from '../../timeline/index.ts';

interface Place {
  readonly site: Site;
  readonly side: Side | null;
}

/** What every first-aid course teaches to look for, in its order (common practice, no source). */
export const COMMON: readonly Finding[] = [
  'deformity',
  'contusion',
  'abrasion',
  'puncture',
  'burn',
  'tenderness',
  'laceration',
  'swelling',
  'pain',
  'bleeding',
  'crepitus',
  'instability',
  'numbness',
  'tingling',
];

const named = ({ site, side }: Place): string =>
  side === null ? siteName(site) : `${side} ${siteName(site)}`;

/** A place that is named by what it lies behind takes no "of the". */
const behind = ({ site, side }: Place): string | null =>
  site === 'behind-ear' ? `behind the ${side ?? ''} ear` : null;

const ofIt = (place: Place): string => behind(place) ?? `of the ${named(place)}`;

export const touchedWords = (place: Place): string => `looking ${behind(place) ?? `at the ${named(place)}`}`;
export const presentWords = (place: Place, finding: Finding): string =>
  `${findingName(finding)} ${ofIt(place)}`;
export const absentWords = (place: Place, finding: Finding): string =>
  `no ${findingName(finding)} ${ofIt(place)}`;
