// Where the examination stands: steps, limbs' ends, focused examinations and rechecks, on invented entries.

import { describe, expect, it } from 'vitest';
import { nextStep, reckon, uncompared } from '../../src/clinical/index.ts';
import { cared, clock, csm, csmAllFour, denied, entry, found, minute } from './build.ts';

const at = (entries: Parameters<typeof reckon>[0]) => reckon(entries, { now: clock(60) });

describe('the taught steps', () => {
  it('begin at the skull and end at the flanks', () => {
    const { steps } = at([]);
    expect(steps[0]?.text).toBe('skull');
    expect(steps.at(-1)?.text).toBe('right flank');
    expect(nextStep(steps)?.text).toBe('skull');
  });
  it('are touched, not clear, by a word on the wider site', () => {
    expect(at([denied('head', null, 'deformity')]).steps[0]?.state).toBe('touched');
  });
  it('say where only a part was examined', () => {
    const { steps } = at([denied('thumb', 'left', 'swelling')]);
    expect(steps.find((step) => step.text === 'left hand')?.state).toBe('part');
    expect(steps.find((step) => step.text === 'right hand')?.state).toBe('not-examined');
  });
  it('name the side that was not compared', () => {
    const { steps } = at([denied('knee', 'left', 'swelling'), denied('ankle', 'both', 'swelling')]);
    expect(uncompared(steps).map((step) => step.text)).toEqual(['right knee']);
  });
});

describe('the ends of the limbs', () => {
  it('are twelve, not checked before anything is said', () => {
    expect(new Set(at([]).limbEnds.map((end) => end.state))).toEqual(new Set(['not-checked']));
    expect(at([]).limbEnds).toHaveLength(12);
  });
  it('are intact after all four', () => {
    expect(new Set(at(csmAllFour()).limbEnds.map((end) => end.state))).toEqual(new Set(['intact']));
  });
  it('show the latest', () => {
    const { limbEnds } = at([...csmAllFour(), csm('foot', 'left', 'sensation', false, { at: minute(9) })]);
    expect(limbEnds.filter((end) => end.state === 'not-intact').map((end) => end.text)).toEqual([
      'sensation of the left foot: absent',
    ]);
  });
  it('have no pulse for being warm, until a pulse is felt or the whole is said', () => {
    const lost = csm('foot', 'left', 'circulation', false, { at: minute(1) }, { pulse: 'dorsalis-pedis' });
    const warm = csm('foot', 'left', 'circulation', true, { at: minute(2) }, { warmth: 'warm' });
    const cold = csm('foot', 'left', 'circulation', false, { at: minute(2) }, { warmth: 'cold' });
    const felt = csm('foot', 'left', 'circulation', true, { at: minute(3) }, { pulse: 'dorsalis-pedis' });
    const word = (...entries: Parameters<typeof at>[0]) =>
      at(entries).limbEnds.find((end) => end.text.startsWith('circulation of the left foot'))?.text;
    expect(word(lost, warm)).toBe('circulation of the left foot: absent');
    expect(word(lost, cold)).toBe('circulation of the left foot: absent, cold');
    expect(word(lost, warm, felt)).toBe('circulation of the left foot: intact');
    expect(word(lost, csm('foot', 'left', 'circulation', true, { at: minute(4) }))).toBe(
      'circulation of the left foot: intact',
    );
    const none = csm('foot', 'left', 'circulation', false, { at: minute(1) });
    expect(word(none, felt)).toBe('circulation of the left foot: intact');
    expect(at([lost, cold]).problems[0]?.text).toBe('left foot: circulation absent, cold');
  });
  it('are not intact once they are found numb or weak', () => {
    const whole = csm('foot', 'left', 'sensation', true, { at: minute(1) });
    const numb = found('foot', 'left', 'numbness', { at: minute(20) });
    const state = (...entries: Parameters<typeof at>[0]) =>
      at(entries).limbEnds.find((end) => end.text.startsWith('sensation of the left foot'));
    expect(state(whole, numb)).toMatchObject({
      state: 'not-intact',
      text: 'sensation of the left foot: numbness',
    });
    expect(state(numb)).toMatchObject({ state: 'not-intact' });
    expect(state(numb, { ...whole, id: 'later', at: minute(30) })).toMatchObject({ state: 'intact' });
  });
  it('are not checked by an intact single toe', () => {
    const { limbEnds } = at([csm('foot', 'left', 'sensation', true, {}, { digit: 'big-toe' })]);
    expect(limbEnds.every((end) => end.state === 'not-checked')).toBe(true);
  });
});

describe('the focused examination', () => {
  it('of a hurt wrist lacks the joint above and below and the end of the limb', () => {
    expect(at([found('wrist', 'left', 'swelling')]).focus).toMatchObject([
      {
        text: 'left wrist',
        missing: [
          'left elbow',
          'left hand',
          'circulation of the left hand',
          'sensation of the left hand',
          'motion of the left hand',
        ],
      },
    ]);
  });
  it('lacks nothing once they were said', () => {
    const entries = [
      found('wrist', 'left', 'swelling'),
      denied('elbow', 'left', 'pain'),
      denied('hand', 'left', 'pain'),
      ...csmAllFour(),
    ];
    expect(at(entries).focus[0]?.missing).toEqual([]);
  });
  it('is not asked for without a finding', () => {
    expect(at([denied('wrist', 'left', 'swelling')]).focus).toEqual([]);
  });
});

describe('rechecks', () => {
  const splint = cared('splint', 'wrist', 'left', 10);
  it('are asked for after a splint', () => {
    expect(at([...csmAllFour(0), splint]).rechecks).toMatchObject([
      { after: 'splint', end: { site: 'hand', side: 'left' } },
    ]);
  });
  it('are done once all three were said after it', () => {
    expect(at([...csmAllFour(0), splint, ...csmAllFour(12)]).rechecks).toEqual([]);
  });
  it('name the aspects that lack', () => {
    const entries = [splint, csm('hand', 'left', 'circulation', true, { at: minute(12) })];
    expect(at(entries).rechecks[0]?.missing).toEqual([
      'sensation of the left hand',
      'motion of the left hand',
    ]);
  });
  it.each([
    ['moved to the litter', true],
    ['log rolled', true],
    ['we carried him down', true],
    ['quad bike rolled', false],
    ['moved', false],
    ['the car rolled down the bank', false],
  ])('hold "%s" for a move of the patient: %s', (text, isMove) => {
    const told = entry({ kind: 'note', text }, { at: minute(30) });
    expect(at([told]).rechecks.length > 0).toBe(isMove);
  });
  it('are asked for of all four after a move that was marked', () => {
    const moved = entry({ kind: 'mark', text: 'moved to the litter' }, { at: minute(30) });
    expect(at([...csmAllFour(0), moved]).rechecks.map((recheck) => recheck.after)).toEqual([
      'move',
      'move',
      'move',
      'move',
    ]);
  });
  it('are not asked for after oxygen', () => {
    expect(at([cared('oxygen', undefined, undefined, 10)]).rechecks).toEqual([]);
  });
});
