// A finding as a phrase: every word that was said of it stays with it, so that "no severe pain" never becomes "no pain".

import type { Finding, FindingStatement } from '../../terms/index.ts';
import { findingName } from '../../timeline/index.ts';

/** Findings that English counts; others are numbered in brackets. */
const COUNTED: Partial<Record<Finding, string>> = {
  deformity: 'deformities',
  contusion: 'contusions',
  abrasion: 'abrasions',
  puncture: 'punctures',
  burn: 'burns',
  laceration: 'lacerations',
  avulsion: 'avulsions',
  amputation: 'amputations',
  'impaled-object': 'impaled objects',
  bite: 'bites',
  sting: 'stings',
  abnormality: 'abnormalities',
  'loose-teeth': 'loose teeth',
  'missing-teeth': 'missing teeth',
};

/** Findings whose name is a plural, said of one. */
const OF_ONE: Partial<Record<Finding, string>> = {
  'loose-teeth': 'loose tooth',
  'missing-teeth': 'missing tooth',
};

type Named = Pick<FindingStatement, 'finding' | 'count' | 'size' | 'severity' | 'quality'>;

/** True where nothing but the finding is said of it: its phrase is its name. */
export const isBare = ({ count, size, severity, quality }: Named): boolean =>
  count === undefined && size === undefined && severity === undefined && (quality ?? []).length === 0;

/** `mild swelling`, `2 jagged 3 cm lacerations`, `pain (6 out of 10)`; without place, side or negation. */
export function findingPhrase({ finding, count, size, severity, quality }: Named): string {
  const words = quality ?? [];
  const short = words.filter((word) => !/\s\S+\s/.test(word));
  const plural = count !== undefined && count !== 1 ? COUNTED[finding] : undefined;
  const counted = count !== undefined && COUNTED[finding] !== undefined;
  const before = [
    counted ? `${count}` : undefined,
    typeof severity === 'string' ? severity : undefined,
    ...short,
    size === undefined ? undefined : `${size.value} ${size.unit}`,
    plural ?? (count === 1 ? OF_ONE[finding] : undefined) ?? findingName(finding),
  ].filter((word) => word !== undefined);
  const after = [
    count !== undefined && !counted ? `${count} in number` : undefined,
    typeof severity === 'number' ? `${severity} out of 10` : undefined,
    ...words.filter((word) => !short.includes(word)),
  ].filter((word) => word !== undefined);
  return `${before.join(' ')}${after.length === 0 ? '' : ` (${after.join(', ')})`}`;
}
