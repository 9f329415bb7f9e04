// A scrap of a sentence next to speech that was not understood is not understood either: a few words of the grammar turn up
// in any talk, and what they were said of was in the other part.

import type { Part } from './utterances.ts';

/** Next to such speech a part needs this many words, and this many seconds. */
const WORDS = 3;
const SECONDS = 0.7;
/** Parts this near, in seconds, are next to each other. */
const NEAR = 0.8;

/** The parts, in order, with the scraps among them refused; what is next to a refused scrap is looked at again. */
export function withoutScraps(parts: readonly Part[]): readonly Part[] {
  const next = parts.map((part, index) => {
    const isNext = [parts[index - 1], parts[index + 1]].some(
      (other) => other !== undefined && !other.understood && gap(part, other) < NEAR,
    );
    return part.understood && isNext && isScrap(part) ? { ...part, understood: false } : part;
  });
  return next.every((part, index) => part === parts[index]) ? parts : withoutScraps(next);
}

const from = ({ words }: Part): number => words[0]?.start ?? 0;
const to = ({ words }: Part): number => words.at(-1)?.end ?? 0;

const gap = (one: Part, other: Part): number => Math.max(from(other) - to(one), from(one) - to(other));

const isScrap = (part: Part): boolean => part.words.length < WORDS || to(part) - from(part) < SECONDS;
