// Subjective: what the patient and those about them told, in the order SAMPLE and OPQRST are asked.

import type { Finding, Topic } from '../../terms/index.ts';
import { type Day, series, topicName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { examinedTold } from '../sentences/examined.ts';
import { findingGroups } from '../sentences/groups.ts';
import { ofTopic, topicSentence } from '../sentences/history.ts';
import { written } from '../sentences/told.ts';
import { type HandoffLine, heading, line, plain } from '../text.ts';

const PATIENT: readonly Topic[] = ['name', 'age', 'sex'];
const STORY: readonly Topic[] = ['chief-complaint', 'mechanism'];
/** Signs and symptoms, allergies, medications, past history, last intake, events (from memory: NHTSA EMT teaching). */
const SAMPLE: readonly Topic[] = [
  'symptoms',
  'allergies',
  'medications',
  'past-history',
  'last-intake',
  'events',
];
/** Onset, provocation, quality, radiation, severity, time (from memory: NHTSA EMT teaching). */
const OPQRST: readonly Topic[] = ['onset', 'provocation', 'quality', 'radiation', 'severity', 'time'];

/** What only the patient can tell; it stands here and not in the examination. */
export const COMPLAINTS: readonly Finding[] = ['pain', 'numbness', 'tingling'];

export function subjective(input: HandoffInput, day: Day): readonly HandoffLine[] {
  const { entries } = input;
  const asked = (topics: readonly Topic[]): readonly HandoffLine[] =>
    topics.map((topic) => topicSentence(entries, topic, day)).map(line);
  const complaints = examinedTold(
    findingGroups(entries.filter((entry) => entry.kind === 'finding' && COMPLAINTS.includes(entry.finding))),
    day,
  ).map((told) => line(written(told)));
  const pain = OPQRST.filter((topic) => ofTopic(entries, topic).length > 0);
  // How bad it is stands among the signs where it was told as a score.
  const isScored = series(entries).some(({ vital }) => vital === 'pain-score');
  const unasked = OPQRST.filter((topic) => !pain.includes(topic) && !(topic === 'severity' && isScored)).map(
    (topic) => topicName(topic).toLowerCase(),
  );
  return [
    heading('SUBJECTIVE'),
    ...asked(PATIENT),
    ...(ofTopic(entries, 'weight').length > 0 ? asked(['weight']) : []),
    ...asked(STORY),
    ...complaints,
    ...asked(SAMPLE),
    ...asked(pain),
    ...(pain.length > 0 && unasked.length > 0 ? [line(plain(`Not recorded: ${unasked.join(', ')}.`))] : []),
  ];
}
