// What the words of a limb's check say besides whether it is there: which aspects, which pulse, how warm, how strong.

import {
  ASPECTS,
  type Aspect,
  type CsmStatement,
  type PulsePoint,
  type StrengthWord,
  type Warmth,
} from '../../../terms/index.ts';
import { hasTag, type Island, numberOf, tagOf, tagsOf } from '../../islands/island.ts';

/** The aspects that a phrase checks; a refill and a warmth are of the circulation. */
export function aspectsOf(island: Island): readonly Aspect[] {
  const tagged = tagsOf(island, 'aspect') as Aspect[];
  if (tagged.length > 0) return tagged;
  return hasTag(island, 'refill') || hasTag(island, 'csm-warmth')
    ? ASPECTS.filter((aspect) => aspect === 'circulation')
    : [];
}

/** The slots besides the aspect that a phrase fills. */
export function detailsOf(island: Island): Partial<CsmStatement> {
  const pulse = tagOf(island, 'pulse') as PulsePoint | null;
  const warmth = tagOf(island, 'warmth') as Warmth | null;
  const grade = numberOf(island, 'strength');
  const words = tagsOf(island, 'strength') as StrengthWord[];
  // "Strong and equal": the slot keeps what tells more, the other word stays as a quality.
  const word = words.find((one) => one !== 'strong') ?? words[0];
  const strength = grade !== null && grade >= 0 && grade <= 5 ? grade : word;
  const quality = [...tagsOf(island, 'quality'), ...words.filter((one) => one !== strength)];
  return {
    ...(pulse === null ? {} : { pulse }),
    ...(warmth === null ? {} : { warmth }),
    ...(strength === undefined ? {} : { strength }),
    ...(quality.length > 0 ? { quality } : {}),
  };
}
