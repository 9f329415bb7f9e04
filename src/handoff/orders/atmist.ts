// The handover in the order Age, Time, Mechanism, Injuries, Signs, Treatment; what was not said is "not recorded".

import { type Day, dayOf } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { opening } from '../opening.ts';
import {
  complaintTimes,
  complaintTold,
  eventsTold,
  injuryTimes,
  mechanismTold,
  onsetTold,
} from '../parts/incident.ts';
import { injuries } from '../parts/injuries.ts';
import { arrivals, needs } from '../parts/needs.ts';
import { signs } from '../parts/signs.ts';
import { careSentences } from '../sentences/care.ts';
import { topicSentence } from '../sentences/history.ts';
import { doubtSentences } from '../sentences/kept.ts';
import { written } from '../sentences/told.ts';
import { type HandoffText, plain, type Sentence } from '../text.ts';
import { section, sectionIfSaid } from './section.ts';

/** The time of the incident and of the onset; where the first is not recorded, what was told of the complaint's own time as well. */
export function incidentTime({ entries, now }: HandoffInput, day: Day): readonly Sentence[] {
  const timed = injuryTimes(entries, day, now);
  const onset = onsetTold(entries, day);
  const began = onset === null ? [] : [written(onset)];
  return timed.length > 0
    ? [...timed.map(written), ...began]
    : [plain('Time of incident: not recorded.'), ...began, ...complaintTimes(entries).map(written)];
}

/** The mechanism as told, where none was the chief complaint unless the report tells it elsewhere; then the events. */
export function mechanism({ entries }: HandoffInput, day: Day, withComplaint = true): readonly Sentence[] {
  const told = mechanismTold(entries, day);
  const rest = [
    told === null && withComplaint ? complaintTold(entries, day) : null,
    eventsTold(entries, day),
  ];
  return [
    told === null ? plain('Mechanism: not recorded.') : written(told),
    ...rest.filter((one) => one !== null).map(written),
  ];
}

/**
 * The ATMIST handover, with the estimated time of arrival and the requirements where they were said. Source of the
 * order: RCEM Learning, trauma pre-alerts (age; time of incident; mechanism; injuries suspected; signs with vital signs
 * and GCS; treatment; ETA; requirements on arrival), read.
 */
export function mist(input: HandoffInput): HandoffText {
  const day = dayOf(input.startedAt);
  const { entries } = input;
  return {
    lines: [
      ...opening('ATMIST', input),
      ...section(
        'A  Age, sex, name',
        (['age', 'sex', 'name'] as const).map((topic) => topicSentence(entries, topic, day)),
      ),
      ...section('T  Time of incident', incidentTime(input, day)),
      ...section('M  Mechanism', mechanism(input, day)),
      ...section('I  Injuries', injuries(input, day)),
      ...section('S  Signs', signs(input, day)),
      ...section('T  Treatment', careSentences(entries, day)),
      ...sectionIfSaid('E  Arrival', arrivals(entries, day).map(written)),
      ...sectionIfSaid('R  Requirements', needs(entries, day).map(written)),
      ...sectionIfSaid('To settle', doubtSentences(entries)),
    ],
  };
}
