// "Correction, no hip pain" denies: behind words that take back, a "no" before the name of a thing is a denial of it, and never tells that
// it is there. All invented.

import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/record/index.ts';
import { standing as entriesStanding } from '../standing.ts';

const standing = (talk: string): readonly Entry[] =>
  entriesStanding(talk).filter(({ kind }) => kind !== 'visit');

const told = (entry: Entry): string =>
  [
    ...('present' in entry && entry.present === false ? ['no'] : []),
    ...('side' in entry && entry.side !== null ? [entry.side] : []),
    ...('site' in entry ? [entry.site] : []),
    entry.kind === 'finding' ? entry.finding : '',
    'text' in entry ? entry.text : '',
  ]
    .filter((word) => word !== '')
    .join(' ');

describe('a "no" behind words that take back, before the name of a thing', () => {
  it.each([
    ['belly pain when he coughs | correction, no belly pain', 'no abdomen pain'],
    ['back pain and neck pain | sorry, no neck pain', 'no neck pain'],
    ['left elbow swelling | actually no elbow swelling', 'no left elbow swelling'],
    ['pelvis tender | make that no pelvic tenderness', 'no pelvis tenderness'],
    ['right shin deformed | correction, no right shin deformity', 'no right lower-leg deformity'],
    ['she has epilepsy | correction, no epilepsy', 'no epilepsy'],
    ['bleeding from the scalp | correction no scalp bleeding', 'no skull bleeding'],
  ])('denies it: %s', (talk, denied) => {
    const all = standing(talk);
    expect(all.map(told)).toContain(denied);
    expect(all.map(told)).not.toContain(denied.replace(/^no /, ''));
  });

  it.each([
    ['tender over the sternum | correction, no rib tenderness', 'sternum tenderness', 'no ribs tenderness'],
    ['neck pain | hang on no back pain', 'neck pain', 'no back pain'],
  ])('leaves what was said of another place: %s', (talk, before, denied) => {
    const all = standing(talk).map(told);
    expect(all).toContain(before);
    expect(all).toContain(denied);
  });

  it.each([
    ['left elbow swelling | sorry, no right elbow swelling', 'right elbow swelling'],
    ['both knees swollen | correction, no left hip pain', 'left hip pain'],
  ])('is asked about where a side may be put right: %s', (talk, thing) => {
    const unsure = standing(talk).filter((entry) => told(entry).replace(/^no /, '') === thing);
    expect(unsure).toHaveLength(1);
    expect(unsure[0]?.doubt ?? []).not.toEqual([]);
  });

  it.each([
    ['left elbow swelling | sorry no, right elbow swelling', 'right elbow swelling'],
    ['chest tender | correction, no, abdomen tender', 'abdomen tenderness'],
    ['left knee swollen | sorry no the right knee', 'right knee swelling'],
  ])('takes back where a pause or an adjective follows: %s', (talk, now) => {
    expect(standing(talk).map(told)).toContain(now);
  });
});
