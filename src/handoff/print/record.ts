// The whole record in the order it stands on paper.

import { standing as standingOf, stands } from '../../record/entry.ts';
import { TOPICS, type Topic } from '../../terms/index.ts';
import { type Day, dayOf, inOrder } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { madeAt } from '../moment.ts';
import { incidentTime } from '../orders/atmist.ts';
import { notExamined } from '../parts/injuries.ts';
import { flagSentences } from '../sentences/flags.ts';
import { ofTopic, topicSentences } from '../sentences/history.ts';
import { doubtSentences, keptSentences } from '../sentences/kept.ts';
import { and } from '../sentences/list.ts';
import { placeName } from '../sentences/place.ts';
import { missingSigns, scoreSentences } from '../sentences/signs.ts';
import { markOf } from '../sentences/trust.ts';
import { plain, type Sentence } from '../text.ts';
import { alteredTable } from './altered.ts';
import { careTable } from './care.ts';
import { type PrintedTable, printedTables } from './findings.ts';
import { signsTable } from './signs.ts';

export interface PrintedSection {
  readonly title: string;
  readonly lines: readonly Sentence[];
  readonly tables: readonly PrintedTable[];
  /** charts of the signs stand in this section */
  readonly charts: boolean;
}

export interface PrintedRecord {
  /** who, in bare words for the top of the first page */
  readonly patient: readonly Sentence[];
  readonly startedAt: string;
  readonly made: string;
  readonly standing: number;
  readonly unconfirmed: number;
  readonly sections: readonly PrintedSection[];
}

const WHO: readonly Topic[] = ['name', 'age', 'sex', 'weight'];
const INCIDENT: readonly Topic[] = ['mechanism', 'chief-complaint', 'events'];
/** Asked of every patient: one of which nothing was said is "not recorded". */
const ASKED: readonly Topic[] = ['allergies', 'medications', 'past-history', 'last-intake'];

const section = (
  title: string,
  lines: readonly Sentence[],
  tables: readonly (PrintedTable | null)[] = [],
): PrintedSection => ({ title, lines, tables: tables.filter((table) => table !== null), charts: false });

function history({ entries }: HandoffInput, day: Day): readonly Sentence[] {
  const rest = TOPICS.filter((topic) => ![...WHO, ...INCIDENT, ...ASKED].includes(topic)).filter(
    (topic) => ofTopic(entries, topic).length > 0,
  );
  return [...ASKED, ...rest].flatMap((topic) => topicSentences(entries, topic, day));
}

/** Every place that was looked at or felt, whatever was found there. */
function looked({ entries }: HandoffInput): readonly Sentence[] {
  const visits = standingOf(inOrder(entries), 'visit');
  if (visits.length === 0) return [];
  const places = [...new Set(visits.map(({ site, side }) => placeName({ site, side })))];
  return [
    {
      text: `Looked at or felt, which alone finds nothing: ${and(places)}${markOf(visits)}.`,
      entries: visits.map(({ id }) => id),
    },
  ];
}

/** The record on paper; left and right are the patient's. */
export function printedRecord(input: HandoffInput): PrintedRecord {
  const day = dayOf(input.startedAt);
  const { entries } = input;
  const standing = entries.filter(stands);
  const found = printedTables(input, day);
  const signs = signsTable(input, day);
  const altered = alteredTable(input, day);
  return {
    patient: WHO.flatMap((topic) => topicSentences(entries, topic, day)),
    startedAt: input.startedAt,
    made: madeAt(input),
    standing: standing.length,
    unconfirmed: standing.filter(({ state }) => state === 'heard').length,
    sections: [
      section('Incident', [
        ...incidentTime(input, day),
        ...INCIDENT.flatMap((topic) => topicSentences(entries, topic, day)),
      ]),
      section('Criteria for triage', [...flagSentences(input), plain('Local protocol decides.')]),
      section(
        'Findings by region',
        found.length === 0 ? [plain('No finding recorded; that clears nothing.')] : [],
        found,
      ),
      section('Not examined', [...notExamined(input), ...looked(input)]),
      {
        ...section('Signs', [...missingSigns(entries), ...scoreSentences(input)], [signs]),
        charts: true,
      },
      section('Care', [], [careTable(entries, day)]),
      section('History', history(input, day)),
      section('Kept as said', [...keptSentences(entries, day), ...doubtSentences(entries)]),
      section('Corrections', altered === null ? [plain('Nothing was corrected or struck.')] : [], [altered]),
    ].filter(({ lines, tables }) => lines.length + tables.length > 0),
  };
}
