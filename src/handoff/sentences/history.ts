// History reads as it was told; a denied one says so, and a topic of which nothing was said is not recorded.

import { type Entry, firstTold, standing } from '../../record/entry.ts';
import type { Topic } from '../../terms/index.ts';
import {
  ageText,
  clock,
  type Day,
  deniesOneAllergy,
  inOrder,
  minuteOf,
  oneAllergyDenied,
  topicName,
} from '../../timeline/index.ts';
import { plain, type Sentence } from '../text.ts';
import { tidy } from './list.ts';
import { joined, type Told, written } from './told.ts';

export type HistoryEntry = Extract<Entry, { kind: 'history' }>;

/** `Any blood thinners: No`: a question with its answer, as it was kept. */
const ASKED = /^(?:any\s+)?(.+?):\s*(?:no|none|nope|nah|never|not (?:that i know(?: of)?|really))$/i;

/** A text that says "not" by itself; a recogniser may leave the apostrophe out. */
const OWN_NEGATION =
  /\b(?:no|not|none|nor|neither|nothing|nobody|nowhere|never|nil|nkda|nka|nope|nah|without|cannot|unable|lacks|absent|negative|free of|den(?:y|ies|ied|ying)|[a-z]+n['’]t|(?:is|are|was|were|do|does|did|has|have|had|could|would|should|ca|wo)nt)\b/i;

/** Whole sentences are quoted: "denies I remember all of it" would deny what was told, and so would "denies just stays here". */
const SENTENCE = /^(?:i|i['’]\w+|we|he|she|it|they|patient|just|only|stays?|remains?)\b/i;

/**
 * What is denied is named. Words that deny by themselves stand as they were said and nothing before them: "denies wasn't
 * knocked out" says the opposite, and so may "denied" before the quoted words.
 */
function denied(topic: Topic, text: string): string {
  const asked = ASKED.exec(text)?.[1];
  // "Did you pass out: no" is no thing that can be denied by name.
  if (
    asked !== undefined &&
    (OWN_NEGATION.test(asked) ||
      /^(?:do|does|did|is|are|was|were|have|has|had|can|could|will|would|when|what|how)\b/i.test(asked))
  )
    return `denied (“${text}”)`;
  if (asked !== undefined) return `denies ${asked.charAt(0).toLowerCase()}${asked.slice(1)}`;
  if (text === '' || text.toLowerCase() === topic.replace('-', ' ')) return 'denied';
  if (OWN_NEGATION.test(text)) return `“${text}”`;
  return SENTENCE.test(text) ? `denied (“${text}”)` : `denies ${text}`;
}

/** A recogniser writes no capitals: a name gets its own, and "i" is written as a person would. */
const spelt = (topic: Topic, text: string): string =>
  topic === 'name' && text === text.toLowerCase()
    ? text.replace(/(?<![\p{L}'’])\p{L}/gu, (letter) => letter.toUpperCase())
    : text.replace(/\bi\b(?=\s|'|’|$)/g, 'I');

/** What was told, without its topic: `34 years`, `penicillin`, `denies nausea`. */
export function told(entry: HistoryEntry): string {
  const text = spelt(entry.topic, tidy(entry.text));
  if (deniesOneAllergy(entry)) return oneAllergyDenied(text);
  if (entry.present === false) return denied(entry.topic, text);
  return ageText(entry) ?? (entry.kg === undefined ? text : `${entry.kg} kg`);
}

/** The standing entries of a topic, earliest first. */
export const ofTopic = (entries: readonly Entry[], topic: Topic): readonly HistoryEntry[] =>
  standing(inOrder(entries), 'history').filter((entry) => entry.topic === topic);

/** A time that was spoken with it; the time of the telling itself says nothing of the history. */
export const spokenTime = (entry: Entry, day: Day): string =>
  minuteOf(entry.at) === minuteOf(firstTold(entry)) ? '' : `, at ${clock(entry.at, day)}`;

export const historyTold = (entry: HistoryEntry, day: Day): Told => ({
  words: `${topicName(entry.topic)}: ${told(entry)}${spokenTime(entry, day)}`,
  entries: [entry],
});

export const historySentence = (entry: HistoryEntry, day: Day): Sentence => written(historyTold(entry, day));

/** Told twice in the same words, at the same time and confirmed alike, it is told once. */
function onceEach(
  said: readonly HistoryEntry[],
  day: Day,
): readonly (readonly [HistoryEntry, ...HistoryEntry[]])[] {
  const sets = new Map<string, [HistoryEntry, ...HistoryEntry[]]>();
  for (const entry of said) {
    const key = `${told(entry).toLowerCase()}|${spokenTime(entry, day)}|${entry.state}`;
    const set = sets.get(key);
    if (set === undefined) sets.set(key, [entry]);
    else set.push(entry);
  }
  return [...sets.values()];
}

/** A patient has one age, one sex and one weight: two that were told are both given, and that neither is settled. */
const UNSETTLED = 'which holds is not settled';
const ONE_ANSWER: readonly Topic[] = ['age', 'sex', 'weight'];

/** `which holds is not settled`, where two answers to a question that has one are told; else nothing. */
export function unsettled(entries: readonly Entry[], topic: Topic): readonly string[] {
  const answers = new Set(ofTopic(entries, topic).map((entry) => told(entry).toLowerCase()));
  return ONE_ANSWER.includes(topic) && answers.size > 1 ? [UNSETTLED] : [];
}

/** All that was told of the topic, confirmed first, as one; null where nothing was. */
export function topicTold(entries: readonly Entry[], topic: Topic, day: Day): Told | null {
  const said = ofTopic(entries, topic);
  const ordered = [
    ...said.filter(({ state }) => state === 'confirmed'),
    ...said.filter(({ state }) => state !== 'confirmed'),
  ];
  const answers = onceEach(ordered, day);
  const [first, ...others] = answers.map(
    ([entry, ...same], index): Told => ({
      words: [
        `${index === 0 ? `${topicName(topic)}: ` : ''}${told(entry)}${spokenTime(entry, day)}`,
        ...(index === answers.length - 1 ? unsettled(entries, topic) : []),
      ].join('; '),
      entries: [entry, ...same],
    }),
  );
  return first === undefined ? null : joined([first, ...others]);
}

/** One sentence for the topic, or one that says it is not recorded. */
export function topicSentence(entries: readonly Entry[], topic: Topic, day: Day): Sentence {
  const all = topicTold(entries, topic, day);
  return all === null ? plain(`${topicName(topic)}: not recorded.`) : written(all);
}

/** A sentence for each entry of the topic, or one that says it is not recorded. */
export function topicSentences(entries: readonly Entry[], topic: Topic, day: Day): readonly Sentence[] {
  const said = ofTopic(entries, topic);
  return said.length === 0
    ? [plain(`${topicName(topic)}: not recorded.`)]
    : said.map((entry) => historySentence(entry, day));
}
