// The body: every site is shown somewhere, states are never better than what was said, and a touch says what it shows.

import { describe, expect, it } from 'vitest';
import { type CoverageRow, coverage } from '../../src/clinical/index.ts';
import { areaState, marksAt, shownAt } from '../../src/screens/body/area-state.ts';
import { WIDTH } from '../../src/screens/body/corners.ts';
import { AREAS, middleOf, VIEWS } from '../../src/screens/body/outline.ts';
import { absentWords, COMMON, presentWords, touchedWords } from '../../src/screens/body/touch-words.ts';
import { TOUCHES } from '../../src/screens/body/touches.ts';
import { holds, rowsAt, tally, ZONES } from '../../src/screens/body/zones.ts';
import { isPaired, SITES } from '../../src/terms/index.ts';
import { statementsOf } from '../parse/read.ts';
import { entry, swelling } from './made-up.ts';

const drawnIn = (view: (typeof VIEWS)[number]) => new Set(AREAS[view].map(({ site }) => site));
const PLACES: readonly Pick<CoverageRow, 'site' | 'side'>[] = SITES.flatMap(
  (site): Pick<CoverageRow, 'site' | 'side'>[] =>
    isPaired(site)
      ? [
          { site, side: 'left' as const },
          { site, side: 'right' as const },
        ]
      : [{ site, side: null }],
);

describe('the outline', () => {
  it('shows every site of the record in one view at least', () => {
    const lost = SITES.filter((site) => VIEWS.every((view) => shownAt(site, drawnIn(view)) === null));
    expect(lost).toEqual([]);
  });

  it("has the patient's right on the viewer's left in front, and on the viewer's right from behind", () => {
    for (const view of VIEWS)
      for (const { side, corners } of AREAS[view].filter((area) => area.side !== null)) {
        const middle = corners.reduce((sum, [x]) => sum + x, 0) / corners.length;
        expect(middle < WIDTH / 2).toBe((side === 'right') === (view === 'front'));
      }
  });

  it('is blank where nothing was said', () => {
    for (const view of VIEWS)
      for (const area of AREAS[view]) {
        expect(areaState(area, coverage([]), drawnIn(view))).toBe('not-examined');
        expect(marksAt(area, [], drawnIn(view))).toBe(0);
      }
  });

  it('marks what was found at its own side alone, and what lies within at the drawn site that holds it', () => {
    const entries = [entry(swelling), entry({ ...swelling, site: 'thumb', side: 'right' })];
    const marked = AREAS.front.filter((area) => marksAt(area, entries, drawnIn('front')) > 0);
    expect(marked.map(({ site, side }) => [site, side])).toEqual([
      ['forearm', 'left'],
      ['hand', 'right'],
    ]);
    const found = AREAS.front.filter(
      (area) => areaState(area, coverage(entries), drawnIn('front')) === 'found',
    );
    expect(found).toEqual(marked);
  });

  it('calls a site examined in part where only something within it was denied', () => {
    const rows = coverage([entry({ ...swelling, site: 'thumb', present: false })]);
    const hand = AREAS.front.find((area) => area.site === 'hand' && area.side === 'left');
    expect(hand && areaState(hand, rows, drawnIn('front'))).toBe('part');
  });

  it('does not mark what was struck', () => {
    const forearm = AREAS.front.find((area) => area.site === 'forearm' && area.side === 'left');
    expect(forearm && marksAt(forearm, [entry(swelling, { state: 'struck' })], drawnIn('front'))).toBe(0);
  });
});

describe('the parts', () => {
  it('hold every place', () => {
    expect(PLACES.filter((place) => !ZONES.some((zone) => holds(zone, place)))).toEqual([]);
  });

  it('count each state and call nothing normal', () => {
    const arm = ZONES.find(({ id }) => id === 'arm-left');
    const rows = arm ? rowsAt(arm, coverage([entry(swelling)])) : [];
    expect(tally(rows)).toMatch(/^1 with findings, \d+ not examined$/);
  });
});

const said = (words: string) => statementsOf(words).map(({ statement }) => statement);

describe('the words of a touch', () => {
  it.each(PLACES)('at $side $site are read as that place', (place) => {
    const [visit, ...more] = said(touchedWords(place));
    expect(more).toEqual([]);
    expect(visit).toMatchObject({ kind: 'visit', site: place.site, side: place.side });
    for (const finding of COMMON) {
      const [found] = said(presentWords(place, finding));
      expect(found).toMatchObject({ kind: 'finding', finding, present: true, ...place });
      const [denied] = said(absentWords(place, finding));
      expect(denied).toMatchObject({ kind: 'finding', finding, present: false, ...place });
    }
  });
});

/** A ray from the point crosses the outline an odd number of times where the point lies within. */
const contains = (
  corners: readonly (readonly [number, number])[],
  [x, y]: readonly [number, number],
): boolean =>
  corners.filter(([x1, y1], index) => {
    const [x2, y2] = corners[(index + 1) % corners.length] ?? [x1, y1];
    return y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1;
  }).length %
    2 ===
  1;

describe('a finger on the outline', () => {
  it.each(VIEWS)('means in the %s view a part that the area under it belongs to', (view) => {
    const wrong = AREAS[view].filter((area) => {
      const meant = ZONES.find(({ id }) => contains(TOUCHES[view][id] ?? [], middleOf(area)));
      return meant === undefined || !holds(meant, area);
    });
    expect(wrong.map(({ site, side }) => `${side} ${site}`)).toEqual([]);
  });
});
