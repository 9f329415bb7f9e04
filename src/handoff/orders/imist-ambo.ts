// The handover in the order Identification, Mechanism, Injuries, Signs, Treatment; Allergies, Medication, Background, Other.

import type { Topic } from '../../terms/index.ts';
import { dayOf } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { opening } from '../opening.ts';
import { injuries } from '../parts/injuries.ts';
import { signs } from '../parts/signs.ts';
import { careSentences } from '../sentences/care.ts';
import { ofTopic, topicSentence } from '../sentences/history.ts';
import { doubtSentences, keptLines } from '../sentences/kept.ts';
import type { HandoffText, Sentence } from '../text.ts';
import { incidentTime, mechanism } from './atmist.ts';
import { section } from './section.ts';

const BACKGROUND: readonly Topic[] = ['past-history', 'last-intake'];
/** Told by the patient and in no part of its own. */
const OTHER: readonly Topic[] = [
  'weight',
  'symptoms',
  'onset',
  'provocation',
  'quality',
  'radiation',
  'severity',
  'time',
];

/**
 * The IMIST-AMBO handover. Source of the order: Iedema R and others, BMJ Qual Saf 2012;21:627-633, and a protocol sheet
 * (read): identification; mechanism or medical complaint; injuries or information; signs; treatment and trends;
 * allergies; medication; background history; other information.
 */
export function imistAmbo(input: HandoffInput): HandoffText {
  const day = dayOf(input.startedAt);
  const { entries } = input;
  const asked = (topics: readonly Topic[]): readonly Sentence[] =>
    topics.map((topic) => topicSentence(entries, topic, day));
  const said = (topics: readonly Topic[]): readonly Sentence[] =>
    asked(topics.filter((topic) => ofTopic(entries, topic).length > 0));
  const told = [...incidentTime(input, day), ...mechanism(input, day)];
  // A mechanism that is not recorded brings the complaint along already, and the time of the incident that of the onset.
  const isTold = (topic: Topic): boolean =>
    ofTopic(entries, topic).every(({ id }) => told.some(({ entries: ids }) => ids.includes(id)));
  return {
    lines: [
      ...opening('IMIST-AMBO', input),
      ...section('I  Identification', asked(['name', 'age', 'sex'])),
      ...section('M  Mechanism or medical complaint', [
        ...told,
        ...(isTold('chief-complaint') ? [] : said(['chief-complaint'])),
      ]),
      ...section('I  Injuries', injuries(input, day)),
      ...section('S  Signs', signs(input, day)),
      ...section('T  Treatment', careSentences(entries, day)),
      ...section('A  Allergies', asked(['allergies'])),
      ...section('M  Medication', asked(['medications'])),
      ...section('B  Background history', asked(BACKGROUND)),
      ...section('O  Other information', [
        ...said(OTHER.filter((topic) => !isTold(topic))),
        ...keptLines(entries, day),
        ...doubtSentences(entries),
      ]),
    ],
  };
}
