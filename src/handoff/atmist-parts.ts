// The parts of an ATMIST handover that the written and the spoken one share.

import type { Entry } from '../record/entry.ts';
import { clock, type Day, minuteOf } from '../timeline/index.ts';
import { findingSentence } from './sentences/finding.ts';
import { findingGroups } from './sentences/groups.ts';
import { historySentence, ofTopic, told, topicSentences } from './sentences/history.ts';
import { idsOf, markOf } from './sentences/trust.ts';
import { plain, type Sentence } from './text.ts';

/** Age, sex and name, each as told or "not recorded"; two answers to one question are both given. */
export const who = (entries: readonly Entry[], day: Day): readonly Sentence[] =>
  (['age', 'sex', 'name'] as const).flatMap((topic) => topicSentences(entries, topic, day));

/**
 * When it happened: the time spoken with the mechanism or the events. A time told of the complaint is given as that,
 * since a pain may have begun later.
 */
export function incidentTime(entries: readonly Entry[], day: Day): readonly Sentence[] {
  const timed = [...ofTopic(entries, 'mechanism'), ...ofTopic(entries, 'events')].filter(
    (entry) => minuteOf(entry.at) !== minuteOf(entry.heardAt),
  );
  if (timed.length > 0)
    return timed.map((entry) => ({
      text: `Time of incident: ${clock(entry.at, day)}${markOf([entry])}.`,
      entries: idsOf([entry]),
    }));
  return [
    plain('Time of incident: not recorded.'),
    ...ofTopic(entries, 'time').map((entry) => ({
      text: `Time told of the complaint: ${told(entry)}${markOf([entry])}.`,
      entries: idsOf([entry]),
    })),
  ];
}

/** The mechanism as told; where none was, the events before and the chief complaint. */
export function mechanism(entries: readonly Entry[], day: Day): readonly Sentence[] {
  const said = ofTopic(entries, 'mechanism');
  if (said.length > 0) return said.map((entry) => historySentence(entry, day));
  const other = [...ofTopic(entries, 'chief-complaint'), ...ofTopic(entries, 'events')];
  return [plain('Mechanism: not recorded.'), ...other.map((entry) => historySentence(entry, day))];
}

/** The pertinent negatives, gathered by place, head to toe; without those that `given` tells already. */
export function negatives(
  entries: readonly Entry[],
  day: Day,
  given: readonly Sentence[],
): readonly Sentence[] {
  const ids = new Set(given.flatMap((sentence) => sentence.entries));
  return findingGroups(entries)
    .filter((group) => !group.entries[0].present && !group.entries.every(({ id }) => ids.has(id)))
    .map((group) => findingSentence(group, day));
}
