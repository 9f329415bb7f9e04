// A bare false under a topic denies all of it: only "no medications" is that, and not "no blood thinners".

import type { Entry } from '../../record/entry.ts';
import type { Topic } from '../../terms/index.ts';
import { topicName } from '../../timeline/index.ts';

type HistoryEntry = Extract<Entry, { kind: 'history' }>;

/** Words that name nothing by themselves: the negative, who it is said of, and any of whatever it is. */
const NAMELESS =
  /\b(?:no|not|none|nope|nah|nothing|never|nil|denie[sd]|without|isn't|doesn't|don't|aren't|hasn't|haven't|i|he|she|they|patient|is|am|are|was|has|have|had|do|does|did|you|any|known|other|at|all|to|that|knows?|of|about|so|far|anything|the|a)\b/gi;

/** What a topic may be called as a whole. */
const WHOLE: Partial<Record<Topic, RegExp>> = {
  medications: /\b(?:takes?|taking|on|medications?|medicines?|meds|drugs?|tablets?|pills?)\b/gi,
  'past-history': /\b(?:past|previous|medical|history|problems?|conditions?|issues?|illness(?:es)?)\b/gi,
  symptoms: /\bcomplaints?\b/gi,
};

const withoutName = (text: string, topic: Topic): string =>
  topicName(topic)
    .split(' ')
    .reduce((rest, word) => rest.replace(new RegExp(`\\b${word}\\b`, 'gi'), ''), text);

/** True for a denial that names no part of its topic. */
export function deniesAll({ topic, text }: HistoryEntry): boolean {
  const plain = withoutName(text.replace(/’/g, "'"), topic).replace(NAMELESS, '');
  const whole = WHOLE[topic];
  return !/\p{L}|\d/u.test(whole === undefined ? plain : plain.replace(whole, ''));
}
