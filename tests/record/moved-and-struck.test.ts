// What a correction moves keeps how much of it there was, and a strike with something told behind it means what that contradicts. All invented.

import { describe, expect, it } from 'vitest';
import { standing } from '../parse/standing.ts';

const findings = (talk: string) => standing(talk).filter(({ kind }) => kind === 'finding');
const doubts = (talk: string): string =>
  standing(talk)
    .flatMap(({ doubt = [] }) => doubt)
    .join(' ');

describe('a finding that is put on its other side', () => {
  it('keeps its size, number and look', () => {
    expect(findings('burn on the right leg, four percent | correction, the burn is on the left leg')).toEqual(
      [expect.objectContaining({ site: 'leg', side: 'left', finding: 'burn', quality: ['4 percent'] })],
    );
    expect(
      findings(
        'deep laceration on the left forearm, five centimetres | correction, the laceration is on the left hand',
      ),
    ).toEqual([expect.objectContaining({ site: 'hand', size: { value: 5, unit: 'cm' }, quality: ['deep'] })]);
  });

  it('has the size that the correction tells', () => {
    expect(
      findings(
        'laceration on the left thigh, six centimetres | correction, right thigh laceration four centimetres',
      ),
    ).toEqual([expect.objectContaining({ side: 'right', size: { value: 4, unit: 'cm' } })]);
  });

  it('asks of what else was told of the old side', () => {
    const talk =
      'laceration on the right arm, bleeding | tourniquet on the right arm | correction, the laceration is on the left arm';
    expect(doubts(talk)).toMatch(/Is this on the left too: .*bleeding.*tourniquet on the right arm/i);
    expect(doubts('right knee swollen | correction, left knee swollen')).toBe('');
    expect(doubts('left knee tender | right hip swollen | correction, left hip swollen')).toBe('');
  });
});

describe('a strike with something told behind it', () => {
  it.each([
    ['pelvis unstable | pelvic binder on | strike that, pelvis is stable', 'pelvic-binder'],
    ['right wrist swollen | splint on the right wrist | scratch that, right wrist is not swollen', 'splint'],
  ])('strikes what that contradicts, and not what was said last: %s', (talk, care) => {
    expect(findings(talk)).toEqual([expect.objectContaining({ present: false })]);
    expect(standing(talk)).toContainEqual(expect.objectContaining({ kind: 'care', care }));
  });

  it('that contradicts nothing strikes what was said last, and asks', () => {
    expect(doubts('left hip tender | oxygen on | strike that, abdomen is soft')).toMatch(
      /was struck: was that meant/,
    );
  });

  it.each([
    'left hip tender | strike that, left hip is not tender',
    'left hip tender | pulse ninety | strike that, pulse one hundred',
    'left hip tender | oxygen on | strike that',
  ])('of the same thing is not asked about: %s', (talk) => {
    expect(doubts(talk)).toBe('');
  });
});
