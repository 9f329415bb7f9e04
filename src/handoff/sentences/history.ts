// History reads as it was told; a denied one says so, and a topic of which nothing was said is not recorded.

import { type Entry, standing } from '../../record/entry.ts';
import type { Topic } from '../../terms/index.ts';
import { clock, type Day, inOrder, minuteOf, topicName } from '../../timeline/index.ts';
import { plain, type Sentence } from '../text.ts';
import { tidy } from './list.ts';
import { idsOf, markOf } from './trust.ts';

export type HistoryEntry = Extract<Entry, { kind: 'history' }>;

/** A denial in the teller's own negative words, or with nothing named, is quoted; else what is denied is named. */
function denied(topic: Topic, text: string): string {
  if (text === '' || text.toLowerCase() === topic.replace('-', ' ')) return 'denied';
  return /^(no|none|not|nothing|never|nil|denies|denied|without)\b/i.test(text)
    ? `denied (“${text}”)`
    : `denies ${text}`;
}

/** What was told, without its topic: `34 years`, `penicillin`, `denies nausea`. */
export function told(entry: HistoryEntry): string {
  const text = tidy(entry.text);
  if (entry.present === false) return denied(entry.topic, text);
  if (entry.years !== undefined) return `${entry.years} years`;
  return entry.kg === undefined ? text : `${entry.kg} kg`;
}

/** The standing entries of a topic, earliest first. */
export const ofTopic = (entries: readonly Entry[], topic: Topic): readonly HistoryEntry[] =>
  standing(inOrder(entries), 'history').filter((entry) => entry.topic === topic);

/** A time that was spoken with it; the time of the telling itself says nothing of the history. */
export const spokenTime = (entry: Entry, day: Day): string =>
  minuteOf(entry.at) === minuteOf(entry.heardAt) ? '' : `, at ${clock(entry.at, day)}`;

export const historySentence = (entry: HistoryEntry, day: Day): Sentence => ({
  text: `${topicName(entry.topic)}: ${told(entry)}${spokenTime(entry, day)}${markOf([entry])}.`,
  entries: idsOf([entry]),
});

/** A sentence for each entry of the topic, or one that says it is not recorded. */
export function topicSentences(entries: readonly Entry[], topic: Topic, day: Day): readonly Sentence[] {
  const said = ofTopic(entries, topic);
  return said.length === 0
    ? [plain(`${topicName(topic)}: not recorded.`)]
    : said.map((entry) => historySentence(entry, day));
}
