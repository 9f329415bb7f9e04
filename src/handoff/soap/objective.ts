// Objective: signs, the examination head to toe, the limbs' ends, and what was not examined.

import { REGIONS, type Region, regionOf } from '../../terms/index.ts';
import { type Day, series } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { sectionIfSaid } from '../orders/section.ts';
import { notExamined } from '../parts/injuries.ts';
import { csmTold } from '../sentences/csm.ts';
import { examinedTold } from '../sentences/examined.ts';
import { findingGroups } from '../sentences/groups.ts';
import { keptLines } from '../sentences/kept.ts';
import { missingSigns, scoreSentences } from '../sentences/signs.ts';
import { written } from '../sentences/told.ts';
import { seriesSentence } from '../sentences/vitals.ts';
import { type HandoffLine, heading } from '../text.ts';
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

function examination(input: HandoffInput, day: Day): readonly HandoffLine[] {
  const groups = findingGroups(
    input.entries.filter((entry) => entry.kind === 'finding' && !COMPLAINTS.includes(entry.finding)),
  );
  return REGIONS.flatMap((region) => {
    const here = groups.filter(({ entries: [first] }) => regionOf(first.site) === region);
    return sectionIfSaid(REGION_HEADINGS[region], examinedTold(here, day).map(written));
  });
}

export function objective(input: HandoffInput, day: Day): readonly HandoffLine[] {
  const { entries } = input;
  const signs = series(entries).map((one) => seriesSentence(one, day));
  return [
    heading('OBJECTIVE'),
    ...sectionIfSaid('Signs', [...signs, ...missingSigns(entries), ...scoreSentences(input)]),
    ...examination(input, day),
    ...sectionIfSaid('Circulation, sensation and motion', csmTold(entries, day).map(written)),
    ...sectionIfSaid('Not examined', notExamined(input)),
    ...sectionIfSaid('Kept as said', keptLines(entries, day)),
  ];
}
