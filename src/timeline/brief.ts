// An entry in one short line that reads in a second: the side first and in capitals, a negative ending in NO.

import type { Entry } from '../record/entry.ts';
import {
  type CareStatement,
  type CsmStatement,
  type FindingStatement,
  type HistoryStatement,
  isImpaired,
  isPaired,
  type Side,
  type Site,
  type Statement,
} from '../terms/index.ts';
import { ageText } from './age.ts';
import { careName, findingName, siteName, sitePlural, topicName, vitalName } from './names.ts';
import { deniesOneAllergy, oneAllergyDenied } from './one-allergy.ts';
import { readingText } from './reading.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Sites whose plain name is a plural already: "BOTH ribs" would read as two ribs. */
const MANY: readonly Site[] = ['ribs', 'fingers', 'toes', 'neck-veins'];

/** `RIGHT forearm`, `BOTH wrists`, `SIDE NOT SAID wrist`, `Abdomen` */
export function briefPlace(site: Site, side: Side | null): string {
  if (side === null) return isPaired(site) ? `SIDE NOT SAID ${siteName(site)}` : capital(siteName(site));
  if (side !== 'both') return `${side.toUpperCase()} ${siteName(site)}`;
  return isPaired(site) && !MANY.includes(site) ? `BOTH ${sitePlural(site)}` : `BOTH SIDES ${siteName(site)}`;
}

const severity = (said: FindingStatement['severity']): string | undefined =>
  typeof said === 'number' ? `${said} out of 10` : said;

function finding(said: FindingStatement): string {
  const where = [
    briefPlace(said.site, said.side),
    ...(said.part ?? []),
    ...(said.level === undefined ? [] : [said.level.replace('-', ' ')]),
  ].join(', ');
  const what = [
    findingName(said.finding),
    said.count === undefined ? undefined : `× ${said.count}`,
    said.size === undefined ? undefined : `${said.size.value} ${said.size.unit}`,
    severity(said.severity),
    ...(said.quality ?? []),
  ]
    .filter((word) => word !== undefined)
    .join(' ');
  return `${where}: ${what}${said.present ? '' : ': NO'}`;
}

function csm(said: CsmStatement): string {
  const details = [
    said.digit?.replace('-', ' '),
    said.pulse === undefined
      ? undefined
      : `${said.present ? '' : 'no '}${said.pulse.replace('-', ' ')} pulse${said.present ? ' present' : ''}`,
    said.capRefillSeconds === undefined ? undefined : `refill ${said.capRefillSeconds} s`,
    said.warmth,
    typeof said.strength === 'number' ? `strength ${said.strength} of 5` : said.strength,
    ...(said.quality ?? []),
  ].filter((word) => word !== undefined);
  const tail = details.length === 0 ? '' : ` (${details.join(', ')})`;
  return `${briefPlace(said.site, said.side)}: ${said.aspect} ${said.present && isImpaired(said) ? 'present' : 'intact'}${said.present ? '' : ': NO'}${tail}`;
}

function history(said: HistoryStatement): string {
  const words = ageText(said) ?? said.text;
  const number = said.kg === undefined ? words : `${said.kg} kg`;
  if (deniesOneAllergy(said)) return `${topicName(said.topic)}: ${oneAllergyDenied(said.text)}`;
  if (said.present === false) {
    const bare = said.text === '' || said.text.toLowerCase() === said.topic.replace('-', ' ');
    return `${topicName(said.topic)}: NO${bare ? '' : ` (${said.text})`}`;
  }
  return `${topicName(said.topic)}: ${number}`;
}

function care(said: CareStatement): string {
  const what = `${careName(said.care).toLowerCase()}${said.text === undefined ? '' : `, ${said.text}`}`;
  return said.site === undefined
    ? `Care: ${what}`
    : `${briefPlace(said.site, said.side ?? null)}: care, ${what}`;
}

/** What was stated, without times, marks or state. */
export function brief(said: Statement | Entry): string {
  switch (said.kind) {
    case 'finding':
      return finding(said);
    case 'csm':
      return csm(said);
    case 'vital':
      return `${vitalName(said.vital)} ${readingText(said)}`;
    case 'history':
      return history(said);
    case 'care':
      return care(said);
    case 'visit':
      return `${briefPlace(said.site, said.side)}: looked at or felt`;
    case 'mark':
      return `MARK: ${said.text}`;
    case 'note':
      return `Note: ${said.text}`;
  }
}
