// The page's frame: which panels stand where, when nothing may interrupt, and what is left to examine.

import { describe, expect, it } from 'vitest';
import { coverage, remaining } from '../../src/clinical/index.ts';
import { beginExam, hearUtterance } from '../../src/record/index.ts';
import { byRegion, touchedOnly } from '../../src/screens/body/left.ts';
import { isUnderWay, type OpenRecord, type RecordKind } from '../../src/screens/desk/open-record.ts';
import { choices, marked, PANELS, shown } from '../../src/screens/frame/panels.ts';
import { entry, swelling } from './made-up.ts';

describe('the panels', () => {
  it.each([1, 2, 3] as const)('in %i columns are as many as fit, and each can be reached', (columns) => {
    const reachable = new Set(choices(columns).flatMap((panel) => shown(panel, columns)));
    expect(reachable).toEqual(new Set(PANELS));
    for (const panel of PANELS) expect(shown(panel, columns)).toHaveLength(columns);
  });

  it.each([1, 2, 3] as const)('in %i columns mark a button that is there', (columns) => {
    for (const panel of PANELS) expect(choices(columns)).toContain(marked(panel, columns));
  });
});

describe('an examination', () => {
  const START = Date.parse('2031-04-05T10:00:00+02:00');
  const MINUTE = 60_000;
  const reader = { begin: () => null, read: () => ({ frames: [], context: null }) };
  const begun = beginExam(reader, { device: 'test', startedAt: START, zone: '+02:00' });
  const heard = hearUtterance(begun, reader, { text: 'hello', heardAt: START, zone: '+02:00' });
  const record = (kind: RecordKind, exam: typeof begun): OpenRecord =>
    ({ facts: { id: 'r', kind, title: '', startedAt: '' }, exam, ahead: 0 }) as unknown as OpenRecord;

  it('is under way while a live record was spoken into within the hour', () => {
    expect(isUnderWay(record('live', heard), START + 59 * MINUTE)).toBe(true);
  });

  it.each<[string, OpenRecord | null, number]>([
    ['with no record', null, 0],
    ['before anything was said', record('live', begun), 0],
    ['an hour after the last word', record('live', heard), 61],
    ['in an invented one', record('invented', heard), 0],
  ])('is not under way %s', (_name, open, minutes) => {
    expect(isUnderWay(open, START + minutes * MINUTE)).toBe(false);
  });
});

describe('what is left', () => {
  it('of an empty record is the whole body, region by region', () => {
    const regions = byRegion(remaining(coverage([])));
    expect(regions.map(({ region }) => region)).toEqual([
      'head',
      'neck',
      'shoulder',
      'arm',
      'chest',
      'abdomen',
      'pelvis',
      'leg',
      'back',
    ]);
    expect(regions.find(({ region }) => region === 'leg')?.places).toEqual(['LEFT leg', 'RIGHT leg']);
  });

  it('names the side of what was only touched', () => {
    const rows = coverage([entry({ kind: 'visit', site: 'knee', side: 'left' }), entry(swelling)]);
    expect(touchedOnly(rows).map(({ site, side }) => [site, side])).toEqual([['knee', 'left']]);
  });
});
