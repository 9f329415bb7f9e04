// The handover in the order Situation, Background, Assessment, Recommendation; it recommends nothing that was not said.

import type { Topic } from '../../terms/index.ts';
import { dayOf } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { opening } from '../opening.ts';
import { injuries } from '../parts/injuries.ts';
import { arrivals, needs } from '../parts/needs.ts';
import { metCriteria, signs } from '../parts/signs.ts';
import { problemsTold } from '../problems.ts';
import { careSentences } from '../sentences/care.ts';
import { ofTopic, topicSentence } from '../sentences/history.ts';
import { doubtSentences } from '../sentences/kept.ts';
import { written } from '../sentences/told.ts';
import { rechecks } from '../soap/plan.ts';
import { type HandoffText, plain, type Sentence } from '../text.ts';
import { incidentTime, mechanism } from './atmist.ts';
import { section } from './section.ts';

/** Problems named in the situation; all of them stand in the assessment. */
const HEADLINE = 3;

const ASKED: readonly Topic[] = ['allergies', 'medications', 'past-history', 'last-intake'];

/**
 * The SBAR handover. Source of the order: Leonard M, Graham S, Bonacum D, Qual Saf Health Care 2004;13(suppl 1):i85-i90
 * (from memory).
 */
export function sbar(input: HandoffInput): HandoffText {
  const day = dayOf(input.startedAt);
  const { entries } = input;
  const worst = problemsTold(input, day).slice(0, HEADLINE);
  const ifSaid = (topic: Topic): readonly Sentence[] =>
    ofTopic(entries, topic).length > 0 ? [topicSentence(entries, topic, day)] : [];
  return {
    lines: [
      ...opening('SBAR', input),
      ...section('S  Situation', [
        ...(['age', 'sex', 'name'] as const).map((topic) => topicSentence(entries, topic, day)),
        ...ifSaid('chief-complaint'),
        ...(worst.length === 0 ? [plain('No present finding recorded.')] : worst.map(written)),
        ...metCriteria(input, 'red'),
      ]),
      ...section('B  Background', [
        ...incidentTime(input, day),
        ...mechanism(input, day, false),
        ...ifSaid('symptoms'),
        ...ASKED.map((topic) => topicSentence(entries, topic, day)),
        ...careSentences(entries, day),
      ]),
      ...section('A  Assessment', [...injuries(input, day), ...signs(input, day)]),
      ...section('R  Recommendation', [
        plain('Local protocol decides; what follows was said, or is due again.'),
        ...needs(entries, day).map(written),
        ...arrivals(entries, day).map(written),
        ...rechecks(input, day),
        ...doubtSentences(entries),
      ]),
    ],
  };
}
