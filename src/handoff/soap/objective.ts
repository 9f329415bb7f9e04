// Objective: signs, the examination head to toe, the limbs' ends, and what was not examined.

import { REGIONS, type Region, regionOf } from '../../terms/index.ts';
import { type Day, series } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { csmSentences } from '../sentences/csm.ts';
import { findingSentence } from '../sentences/finding.ts';
import { findingGroups } from '../sentences/groups.ts';
import { keptSentences } from '../sentences/kept.ts';
import { and } from '../sentences/list.ts';
import { missingSigns, scoreSentences } from '../sentences/signs.ts';
import { placesIn } from '../sentences/unexamined.ts';
import { fullSeries } from '../sentences/vitals.ts';
import { type HandoffLine, heading, line, plain, type Sentence } from '../text.ts';
import { COMPLAINTS } from './subjective.ts';

const REGION_HEADINGS: Readonly<Record<Region, string>> = {
  head: 'Head',
  neck: 'Neck',
  shoulder: 'Shoulders',
  arm: 'Arms',
  chest: 'Chest',
  abdomen: 'Abdomen',
  pelvis: 'Pelvis',
  leg: 'Legs',
  back: 'Back',
};

const section = (title: string, sentences: readonly Sentence[]): readonly HandoffLine[] =>
  sentences.length === 0 ? [] : [heading(title), ...sentences.map(line)];

function examination(input: HandoffInput, day: Day): readonly HandoffLine[] {
  const groups = findingGroups(
    input.entries.filter((entry) => entry.kind === 'finding' && !COMPLAINTS.includes(entry.finding)),
  );
  return REGIONS.flatMap((region) =>
    section(
      REGION_HEADINGS[region],
      groups
        .filter(({ entries: [first] }) => regionOf(first.site) === region)
        .map((group) => findingSentence(group, day)),
    ),
  );
}

/** What was not examined, and what was only looked at or felt; neither is ever shown as normal. */
function notExamined({ coverage }: HandoffInput): readonly Sentence[] {
  if (coverage.length === 0) return [plain('What was not examined was not worked out.')];
  const none = placesIn(coverage, 'not-examined');
  const touched = placesIn(coverage, 'touched');
  return [
    plain(none.length === 0 ? 'No site is listed as not examined.' : `Not examined: ${and(none)}.`),
    ...(touched.length === 0 ? [] : [plain(`Touched, with nothing found or denied there: ${and(touched)}.`)]),
  ];
}

export function objective(input: HandoffInput, day: Day): readonly HandoffLine[] {
  const signs = series(input.entries).map((one) => fullSeries(one, day));
  return [
    heading('OBJECTIVE'),
    ...section('Signs', [...signs, ...missingSigns(input.entries), ...scoreSentences(input)]),
    ...examination(input, day),
    ...section('Circulation, sensation and motion', csmSentences(input.entries, day)),
    ...section('Not examined', notExamined(input)),
    ...section('Kept as said', keptSentences(input.entries, day)),
  ];
}
