// What the parser's entries on limbs' ends, fractures and qualified denials come to, on invented entries.

import { describe, expect, it } from 'vitest';
import { coverage, reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { Aspect, CsmStatement, Side, Site } from '../../src/terms/index.ts';
import { clock, csm, csmAllFour, denied, found, minute, told } from './build.ts';

const reckoned = (entries: readonly Entry[]) => reckon(entries, { now: clock(30) });

const flagOf = (rule: string, entries: readonly Entry[]) =>
  reckoned(entries).flags.find((flag) => flag.rule === rule)?.state;

const stateOf = (entries: readonly Entry[], site: Site, side: Side | null) =>
  coverage(entries).find((row) => row.site === site && row.side === side)?.state;

type Said = readonly [string, Aspect, boolean, Partial<CsmStatement>];

const IMPAIRED: readonly Said[] = [
  ['a weak pulse', 'circulation', true, { pulse: 'dorsalis-pedis', quality: ['weak'] }],
  ['a weak push', 'motion', true, { strength: 'weak' }],
  ['a push of 4 in 5', 'motion', true, { strength: 4 }],
  ['a decreased sensation', 'sensation', false, { quality: ['decreased'] }],
  ['a cold foot', 'circulation', false, { warmth: 'cold' }],
  ['a cool foot', 'circulation', false, { warmth: 'cool' }],
  ['a slow refill', 'circulation', false, { capRefillSeconds: 4 }],
  ['no pulse', 'circulation', false, { pulse: 'dorsalis-pedis' }],
];

const WHOLE: readonly Said[] = [
  ['a strong pulse', 'circulation', true, { pulse: 'dorsalis-pedis', quality: ['strong'] }],
  ['an equal push', 'motion', true, { strength: 'equal' }],
  ['a push of 5 in 5', 'motion', true, { strength: 5 }],
  ['a warm foot', 'circulation', true, { warmth: 'warm' }],
];

const foot = ([, aspect, present, slots]: Said, at = 20): Entry =>
  csm('foot', 'left', aspect, present, { at: minute(at) }, slots);

describe('an end of a limb', () => {
  it.each(IMPAIRED)('with %s is found, not intact and a problem', (...said) => {
    const entry = foot(said);
    const { limbEnds, problems } = reckoned([entry]);
    expect(stateOf([entry], 'foot', 'left')).toBe('found');
    expect(limbEnds.filter((end) => end.state === 'not-intact')).toHaveLength(1);
    expect(problems.map((problem) => problem.id)).toEqual(['left foot']);
  });
  it.each(WHOLE)('with %s is clear, intact and no problem', (...said) => {
    const entry = foot(said);
    expect(stateOf([entry], 'foot', 'left')).toBe('clear');
    expect(reckoned([entry]).limbEnds.filter((end) => end.state === 'intact')).toHaveLength(1);
    expect(reckoned([entry]).problems).toEqual([]);
  });
});

describe('a pulseless extremity', () => {
  it.each([
    ['a pulse said to be absent', { pulse: 'dorsalis-pedis' }],
    ['circulation said to be absent', {}],
  ] as const)('is met by %s', (_, slots) => {
    expect(flagOf('ruined-extremity', [csm('foot', 'left', 'circulation', false, {}, slots)])).toBe('met');
  });
  it.each([
    ['a cold foot', false, { warmth: 'cold' }],
    ['a slow refill', false, { capRefillSeconds: 4 }],
    ['a decreased circulation', false, { quality: ['decreased'] }],
    ['a weak pulse', true, { pulse: 'dorsalis-pedis', quality: ['weak'] }],
  ] as const)('is neither met nor ruled out by %s', (_, present, slots) => {
    const limbs = (['arm', 'leg'] as const).map((site) => denied(site, 'both', 'deformity'));
    const entry = csm('foot', 'left', 'circulation', present, { at: minute(20) }, slots);
    expect(flagOf('ruined-extremity', [...limbs, ...csmAllFour(), entry])).toBe('unknown');
  });
});

describe('the circulation of a limb over time', () => {
  const pulse = { pulse: 'dorsalis-pedis' } as const;
  const strong = csm('foot', 'left', 'circulation', true, { at: minute(5) }, pulse);
  const weak = csm('foot', 'left', 'circulation', true, { at: minute(10) }, { ...pulse, quality: ['weak'] });
  const gone = csm('foot', 'left', 'circulation', false, { at: minute(15) }, pulse);
  const pattern = (entries: readonly Entry[]) => reckoned(entries).patterns.map((each) => each.text);
  it('is a trend where it weakens, and where it goes', () => {
    expect(pattern([strong, weak])).toEqual(['trend: left foot: circulation intact 14:05, weak 14:10']);
    expect(pattern([strong, weak, gone])).toEqual(['trend: left foot: circulation weak 14:10, absent 14:15']);
  });
  it('is none where it was never better, or is again', () => {
    expect(pattern([gone])).toEqual([]);
    const back = csm('foot', 'left', 'circulation', true, { at: minute(20) }, pulse);
    expect(pattern([strong, gone, back])).toEqual([]);
    expect(reckoned([strong, gone, back]).problems[0]?.text).toBe(
      'left foot: circulation intact 14:20, absent 14:15',
    );
  });
  it('asks nothing where a slow refill and a pulse go together', () => {
    const slow = csm('foot', 'left', 'circulation', false, { at: minute(4) }, { capRefillSeconds: 4 });
    expect(reckoned([slow, strong]).conflicts).toEqual([]);
    expect(reckoned([strong, gone]).conflicts.map((conflict) => conflict.question)).toEqual([
      'left foot, circulation: intact 14:05, absent 14:15. Changed, or misheard?',
    ]);
  });
});

const broken = (site: Site, side: Side | null, word = 'fracture') =>
  found(site, side, 'abnormality', {}, { quality: [word] });

describe('a named fracture', () => {
  it('counts as a broken long bone, and two of them meet the criterion', () => {
    expect(flagOf('proximal-long-bones', [broken('upper-arm', 'left'), broken('thigh', 'right')])).toBe(
      'met',
    );
    expect(flagOf('proximal-long-bones', [broken('upper-arm', 'left'), broken('forearm', 'right')])).toBe(
      'unknown',
    );
  });
  it.each([
    ['pelvic-fracture', 'pelvis'],
    ['skull-deformity', 'skull'],
  ] as const)('meets %s at the %s', (rule, site) => {
    expect(flagOf(rule, [broken(site, null)])).toBe('met');
    expect(flagOf(rule, [broken(site, null, 'open-fracture')])).toBe('met');
  });
  it('of a rib asks after the chest wall', () => {
    expect(flagOf('chest-wall', [broken('ribs', 'left')])).toBe('unknown');
  });
  it('is not what a dislocation is', () => {
    const out = (site: Site, side: Side) => found(site, side, 'deformity', {}, { quality: ['dislocation'] });
    expect(flagOf('proximal-long-bones', [out('upper-arm', 'left'), out('thigh', 'right')])).toBe('unknown');
  });
});

describe('a denial with a qualifying word', () => {
  const noFracture = denied('pelvis', null, 'abnormality', {}, { quality: ['fracture'] });
  const pelvis = [denied('pelvis', null, 'instability'), denied('pelvis', null, 'tenderness')];
  it('of a fracture rules out nothing else', () => {
    expect(flagOf('pelvic-fracture', [noFracture])).toBe('unknown');
    expect(flagOf('pelvic-fracture', [denied('pelvis', null, 'abnormality')])).toBe('not-met');
  });
  it('of severe tenderness leaves lesser tenderness open', () => {
    const severe = denied('pelvis', null, 'tenderness', {}, { severity: 'severe' });
    expect(flagOf('pelvic-fracture', [denied('pelvis', null, 'instability'), severe])).toBe('unknown');
    expect(flagOf('pelvic-fracture', pelvis)).toBe('not-met');
  });
  it('of a fracture is not at odds with a bruise there', () => {
    expect(reckoned([noFracture, found('pelvis', null, 'contusion')]).conflicts).toEqual([]);
  });
  it('of a fracture is at odds with that fracture', () => {
    const later = found('pelvis', null, 'abnormality', { at: minute(9) }, { quality: ['fracture'] });
    expect(reckoned([noFracture, later]).conflicts.map((conflict) => conflict.conflict)).toEqual([
      'opposite',
    ]);
  });
});

describe('the middle of the neck', () => {
  it('tender is the midline tenderness of the rules, and denied it is not', () => {
    const state = (entries: readonly Entry[]) =>
      reckoned(entries).spine.items.find((item) => item.item === 'posterior midline cervical tenderness')
        ?.state;
    expect(state([found('neck', 'midline', 'tenderness')])).toBe('present');
    expect(state([denied('neck', 'midline', 'tenderness')])).toBe('absent');
    expect(state([denied('neck', 'left', 'tenderness')])).toBe('unknown');
  });
  it('tender with a loss below is a suspected spinal injury', () => {
    const loss = csm('foot', 'both', 'sensation', false);
    expect(flagOf('spinal-injury-with-loss', [found('neck', 'midline', 'tenderness'), loss])).toBe('met');
    expect(flagOf('spinal-injury-with-loss', [found('neck', 'left', 'tenderness'), loss])).toBe('unknown');
  });
});

describe('one who goes over the handlebars', () => {
  it('was thrown from a bicycle, unless a motor is named', () => {
    expect(flagOf('pedestrian-or-cyclist', [told('mechanism', 'went over the handlebars')])).toBe('met');
    const motor = [told('mechanism', 'went over the handlebars of a dirt bike')];
    expect(flagOf('pedestrian-or-cyclist', motor)).toBe('unknown');
    expect(flagOf('rider-separated', motor)).toBe('met');
  });
});

describe('a burn told twice in one breath', () => {
  it('has the depth that was said once', () => {
    const facts = { at: minute(1) };
    const hand = [
      found('hand', 'left', 'burn', facts),
      found('hand', 'left', 'burn', facts, { quality: ['full-thickness'] }),
    ];
    expect(reckoned(hand).burns?.missing).not.toContain('depth at: left hand');
    expect(reckoned(hand.slice(0, 1)).burns?.missing).toContain('depth at: left hand');
  });
});
