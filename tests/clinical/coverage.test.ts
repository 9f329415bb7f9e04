// Coverage against invented statements: what was said makes a row, and nothing else does.

import { describe, expect, it } from 'vitest';
import { coverage, remaining } from '../../src/clinical/coverage.ts';
import type { Entry } from '../../src/record/entry.ts';
import { isPaired, SITES, type Side, type Site } from '../../src/terms/index.ts';
import { cared, csm, denied, entry, found, visit } from './build.ts';

const stateOf = (entries: readonly Entry[], site: Site, side: Side | null): string | undefined =>
  coverage(entries).find((row) => row.site === site && row.side === side)?.state;

describe('coverage', () => {
  it('has, before anything is said, one row for an unpaired site and two for a paired one, none examined', () => {
    const rows = coverage([]);
    expect(rows).toHaveLength(SITES.reduce((sum, site) => sum + (isPaired(site) ? 2 : 1), 0));
    expect(new Set(rows.map((row) => row.state))).toEqual(new Set(['not-examined']));
    expect(rows.map((row) => row.site)).toEqual(
      SITES.flatMap((site) => (isPaired(site) ? [site, site] : [site])),
    );
  });

  const rows: readonly [string, readonly Entry[], Site, Side | null, string][] = [
    ['a visit touches', [visit('abdomen', null)], 'abdomen', null, 'touched'],
    ['a negative clears', [denied('knee', 'left', 'swelling')], 'knee', 'left', 'clear'],
    [
      'a negative leaves the other side alone',
      [denied('knee', 'left', 'swelling')],
      'knee',
      'right',
      'not-examined',
    ],
    ['both covers the left', [denied('knee', 'both', 'swelling')], 'knee', 'left', 'clear'],
    ['both covers the right', [denied('knee', 'both', 'swelling')], 'knee', 'right', 'clear'],
    [
      'a finding outweighs negatives',
      [denied('jaw', null, 'pain'), found('jaw', null, 'swelling')],
      'jaw',
      null,
      'found',
    ],
    [
      'a visit does not undo a negative',
      [denied('jaw', null, 'pain'), visit('jaw', null)],
      'jaw',
      null,
      'clear',
    ],
    ['a missing side marks no left', [denied('knee', null, 'pain')], 'knee', 'left', 'not-examined'],
    ['a missing side has its own row', [denied('knee', null, 'pain')], 'knee', null, 'clear'],
    [
      'what is said of the back leaves the neck out',
      [denied('back', null, 'burn')],
      'cervical-spine',
      null,
      'not-examined',
    ],
    [
      'what is said of the spine leaves the neck out',
      [denied('spine', null, 'tenderness')],
      'cervical-spine',
      null,
      'not-examined',
    ],
    [
      'what is said of the back touches the spine in it',
      [denied('back', null, 'burn')],
      'lumbar-spine',
      null,
      'touched',
    ],
    [
      'a pelvis that is stable shows no genitals',
      [denied('pelvis', null, 'instability')],
      'genitals',
      null,
      'not-examined',
    ],
    [
      'a pelvis that is stable shows no groin',
      [denied('pelvis', null, 'instability')],
      'groin',
      'left',
      'not-examined',
    ],
    ['a look at the pelvis shows no buttock', [visit('pelvis', null)], 'buttock', 'right', 'not-examined'],
    [
      'a pelvis that is stable touches the hips',
      [denied('pelvis', null, 'instability')],
      'hip',
      'left',
      'touched',
    ],
    ['a look at the face shows no teeth', [visit('face', null)], 'teeth', null, 'not-examined'],
    ['a look into the mouth shows the teeth', [visit('mouth', null)], 'teeth', null, 'touched'],
    ['a look at the chest shows no armpit', [visit('chest', null)], 'armpit', 'left', 'not-examined'],
    ['a wider site only touches its parts', [denied('arm', 'left', 'deformity')], 'wrist', 'left', 'touched'],
    [
      'a wider site leaves the other side',
      [denied('arm', 'left', 'deformity')],
      'wrist',
      'right',
      'not-examined',
    ],
    ['a found wider site only touches its parts', [found('leg', 'left', 'pain')], 'knee', 'left', 'touched'],
    [
      'a narrower site says nothing of the wider',
      [denied('wrist', 'left', 'pain')],
      'arm',
      'left',
      'not-examined',
    ],
    ['the chest touches both rib cages', [denied('chest', null, 'pain')], 'ribs', 'right', 'touched'],
    ['half a clear chest is a touched chest', [denied('chest', 'left', 'pain')], 'chest', null, 'touched'],
    ['half a clear chest has its own row', [denied('chest', 'left', 'pain')], 'chest', 'left', 'clear'],
    [
      'two clear halves clear the chest',
      [denied('chest', 'left', 'pain'), denied('chest', 'right', 'pain')],
      'chest',
      null,
      'clear',
    ],
    [
      'a finding on half a chest is found on the chest',
      [found('chest', 'left', 'pain')],
      'chest',
      null,
      'found',
    ],
    [
      'midline of an unpaired site is the site',
      [denied('cervical-spine', 'midline', 'pain')],
      'cervical-spine',
      null,
      'clear',
    ],
    ['intact motion clears the hand', [csm('hand', 'left', 'motion', true)], 'hand', 'left', 'clear'],
    ['lost sensation is found', [csm('foot', 'right', 'sensation', false)], 'foot', 'right', 'found'],
    [
      'intact motion says nothing of the arm',
      [csm('hand', 'left', 'motion', true)],
      'arm',
      'left',
      'not-examined',
    ],
    ['care is no examination', [cared('splint', 'wrist', 'left')], 'wrist', 'left', 'not-examined'],
  ];
  it.each(rows)('%s', (_, entries, site, side, state) => {
    expect(stateOf(entries, site, side)).toBe(state);
  });

  it.each(['struck', 'replaced'] as const)('ignores an entry that is %s', (state) => {
    expect(stateOf([found('jaw', null, 'swelling', { state })], 'jaw', null)).toBe('not-examined');
  });

  it('counts an entry that nobody has confirmed yet', () => {
    expect(stateOf([found('jaw', null, 'swelling', { state: 'heard' })], 'jaw', null)).toBe('found');
  });

  it('is not moved by notes, marks or vitals', () => {
    expect(coverage([entry({ kind: 'note', text: 'an invented note' })])).toEqual(coverage([]));
  });
});

describe('what is left', () => {
  it('names only the widest sites when nothing was said', () => {
    expect(remaining(coverage([])).map((row) => `${row.side ?? ''} ${row.site}`.trim())).toEqual([
      'head',
      'neck',
      'left shoulder',
      'right shoulder',
      'left arm',
      'right arm',
      'chest',
      'abdomen',
      'pelvis',
      'left leg',
      'right leg',
      'back',
    ]);
  });

  it('names the other parts once a part was examined, and not the whole', () => {
    const left = remaining(coverage([denied('knee', 'left', 'pain')])).map((row) =>
      `${row.side ?? ''} ${row.site}`.trim(),
    );
    expect(left).toContain('left thigh');
    expect(left).toContain('right leg');
    expect(left).not.toContain('left leg');
    expect(left).not.toContain('left knee');
    expect(left).not.toContain('left toes');
    expect(left).toContain('left foot');
  });

  it('does not list what was touched', () => {
    const left = remaining(coverage([visit('abdomen', null)]));
    expect(left.some((row) => row.site === 'abdomen' || row.site === 'upper-quadrant')).toBe(false);
  });
});
