// Tags in the grammar are `key:value` pairs and bare marks; every value that names an identifier must be one of the record's.

import {
  ASPECTS,
  CARES,
  DIGITS,
  FINDINGS,
  isSite,
  PARTS,
  PULSE_POINTS,
  SEVERITIES,
  SIDES,
  STRENGTHS,
  TOPICS,
  VITALS,
  WARMTHS,
} from '../terms/index.ts';
import { COMMANDS } from './frame.ts';
import type { Tag } from './islands/island.ts';
import { NEGATION_KINDS } from './negation.ts';
import { STATES } from './states.ts';

const within = (values: readonly string[]) => (value: string) => values.includes(value);

// A site tag may name several at once, joined by +, where one word means them all ("extremities").
const sites = (value: string) => value.split('+').every(isSite);

const IDENTIFIERS: Readonly<Record<string, (value: string) => boolean>> = {
  site: sites,
  at: sites,
  for: sites,
  home: sites,
  only: sites,
  sided: sites,
  negation: within(NEGATION_KINDS),
  side: within([...SIDES, 'mirror']),
  part: within(PARTS),
  finding: within(FINDINGS),
  wound: within(FINDINGS),
  ask: within(ASPECTS),
  asks: within(TOPICS),
  'asks-vital': within(VITALS),
  severity: within(SEVERITIES),
  aspect: within(ASPECTS),
  pulse: within(PULSE_POINTS),
  warmth: within(WARMTHS),
  digit: within(DIGITS),
  strength: within(STRENGTHS),
  vital: within(VITALS),
  topic: within(TOPICS),
  care: within(CARES),
  command: within(COMMANDS),
  problem: within(['first', 'strike', 'add']),
  switch: (value) => /^(next|previous|new|\d+)$/.test(value),
  state: within(STATES),
};

/** The pairs and marks of one tag: "site:clavicle plural". */
export function readTag(text: string): readonly Tag[] {
  return text
    .trim()
    .split(/\s+/)
    .filter((word) => word !== '')
    .map((word) => {
      const colon = word.indexOf(':');
      return colon < 0
        ? { key: word, value: '' }
        : { key: word.slice(0, colon), value: word.slice(colon + 1) };
    });
}

/** What is wrong with a tag, as a sentence for the person who wrote it, or null. */
export function checkTag(text: string): string | null {
  for (const { key, value } of readTag(text)) {
    const known = IDENTIFIERS[key];
    if (known !== undefined && !known(value))
      return `The tag {${key}:${value}} names no ${key} of the record: see the contract's list, or src/terms.`;
  }
  return null;
}
