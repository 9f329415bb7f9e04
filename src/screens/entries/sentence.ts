// An entry as a sentence that can be checked in a second: where, with the side apart; what; and a plain answer.

import {
  type CsmStatement,
  type FindingStatement,
  isPaired,
  type Side,
  type Site,
  type Statement,
} from '../../terms/index.ts';
import {
  ageText,
  careName,
  findingName,
  readingText,
  siteName,
  sitePlural,
  topicName,
  vitalName,
} from '../../timeline/index.ts';

export interface EntrySentence {
  /** `RIGHT`, `LEFT`, `BOTH`, `MIDLINE`, `SIDE NOT SAID`, or null where the site has no side */
  readonly side: string | null;
  /** `forearm, distal`, with a capital where no side stands before it; null where the entry names no site */
  readonly place: string | null;
  /** `laceration 3 cm` */
  readonly what: string;
  /** `NO` and `NOT INTACT` are to stand out; null where the entry answers no question */
  readonly answer: 'YES' | 'NO' | 'INTACT' | 'NOT INTACT' | null;
}

const SIDES: Readonly<Record<Side, string>> = {
  left: 'LEFT',
  right: 'RIGHT',
  both: 'BOTH',
  midline: 'MIDLINE',
};

interface Where {
  readonly side: string | null;
  readonly place: string | null;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function where(site: Site, side: Side | null, more: readonly string[] = []): Where {
  if (side === null && isPaired(site))
    return { side: 'SIDE NOT SAID', place: [siteName(site), ...more].join(', ') };
  const name = side === 'both' && isPaired(site) ? sitePlural(site) : siteName(site);
  const place = [name, ...more].join(', ');
  return side === null ? { side: null, place: capital(place) } : { side: SIDES[side], place };
}

const words = (list: readonly (string | undefined)[]): string =>
  list.filter((word) => word !== undefined && word !== '').join(' ');

function finding(said: FindingStatement): EntrySentence {
  const severity = typeof said.severity === 'number' ? `${said.severity} out of 10` : said.severity;
  const what = words([
    findingName(said.finding),
    said.count === undefined ? undefined : `× ${said.count}`,
    said.size === undefined ? undefined : `${said.size.value} ${said.size.unit}`,
    severity,
    ...(said.quality ?? []),
  ]);
  const level = said.level?.replace('-', ' ');
  const at = where(said.site, said.side, [...(said.part ?? []), ...(level === undefined ? [] : [level])]);
  return { ...at, what, answer: said.present ? null : 'NO' };
}

function csm(said: CsmStatement): EntrySentence {
  const strength = typeof said.strength === 'number' ? `strength ${said.strength} of 5` : said.strength;
  const details = [
    said.digit === undefined ? undefined : `${said.digit.replace('-', ' ')} only`,
    said.pulse === undefined ? undefined : `${said.pulse.replace('-', ' ')} pulse`,
    said.capRefillSeconds === undefined ? undefined : `refill ${said.capRefillSeconds} s`,
    said.warmth,
    strength,
    ...(said.quality ?? []),
  ].filter((word) => word !== undefined);
  const what = details.length === 0 ? said.aspect : `${said.aspect} (${details.join(', ')})`;
  return { ...where(said.site, said.side), what, answer: said.present ? 'INTACT' : 'NOT INTACT' };
}

const NOWHERE = { side: null, place: null } as const;

/** The sentence of a statement, in parts that a view can set apart. */
export function sentenceOf(said: Statement): EntrySentence {
  switch (said.kind) {
    case 'finding':
      return finding(said);
    case 'csm':
      return csm(said);
    case 'vital':
      return { ...NOWHERE, what: `${vitalName(said.vital)} ${readingText(said)}`, answer: null };
    case 'history': {
      const text = ageText(said) ?? (said.kg === undefined ? said.text : `${said.kg} kg`);
      const denied = said.present === false;
      return { ...NOWHERE, what: `${topicName(said.topic)}: ${text}`, answer: denied ? 'NO' : null };
    }
    case 'care': {
      const what = words([careName(said.care), said.text === undefined ? undefined : `(${said.text})`]);
      return said.site === undefined
        ? { ...NOWHERE, what, answer: null }
        : { ...where(said.site, said.side ?? null), what, answer: null };
    }
    case 'visit':
      return {
        ...where(said.site, said.side),
        what: 'looked at or felt, no more said',
        answer: null,
      };
    case 'mark':
      return { ...NOWHERE, what: `Marked: “${said.text}”`, answer: null };
    case 'note':
      return { ...NOWHERE, what: `Kept as said: “${said.text}”`, answer: null };
  }
}

/** The sentence as one string, for a name that is read aloud: `RIGHT forearm: bleeding: NO`. */
export function sentenceText(said: Statement): string {
  const { side, place, what, answer } = sentenceOf(said);
  const at = words([side ?? undefined, place ?? undefined]);
  return [at, what, answer ?? ''].filter((part) => part !== '').join(': ');
}
