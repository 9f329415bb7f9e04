// Care that is said to be on still is none given anew, and a time that is told of it by its name is that of the one on record. All talk here
// is invented; it begins at 14:02.

import { describe, expect, it } from 'vitest';
import { standing as entriesStanding } from '../standing.ts';

const standing = (talk: string): readonly string[] =>
  entriesStanding(talk).map((entry) => {
    const asked = entry.doubt === undefined ? '' : '?';
    if (entry.kind === 'note') return `note: ${entry.text}${asked}`;
    const where = entry.kind === 'care' && entry.site !== undefined ? ` ${entry.side} ${entry.site}` : '';
    return `${entry.at.slice(11, 16)} ${entry.kind === 'care' ? entry.care : entry.kind}${where}${asked}`;
  });

describe('care that is on still', () => {
  it.each([
    [
      'splint on the left forearm | splint on the left forearm still in place',
      ['14:02 splint left forearm', 'note: splint on the left forearm still in place'],
    ],
    [
      'tourniquet on the right arm | [00:07:00] tourniquet is still on the right arm',
      ['14:02 tourniquet right arm', 'note: tourniquet is still on the right arm'],
    ],
    [
      'collar on | collar still on and binder on',
      ['14:02 collar', '14:02 pelvic-binder', 'note: collar still on'],
    ],
    [
      'oxygen on | oxygen still running, pulse ninety',
      ['14:02 oxygen', '14:02 vital', 'note: oxygen still running'],
    ],
  ])('is not given anew: %s', (talk, expected) => {
    expect(standing(talk)).toEqual(expected);
  });

  it.each([
    [
      'tourniquet on the right arm | tourniquet on the left thigh still on',
      ['14:02 tourniquet right arm', '14:02 tourniquet left thigh'],
    ],
    ['tourniquet on the left thigh still bleeding', ['14:02 finding', '14:02 tourniquet left thigh']],
    [
      'splint on the right leg | second splint on the left leg',
      ['14:02 splint right leg', '14:02 splint left leg'],
    ],
  ])('is care where it was not told of before, or something else goes on: %s', (talk, expected) => {
    expect(standing(talk)).toEqual(expected);
  });
});

describe('the time of care by its name', () => {
  it.each([
    [
      'tourniquet on the left thigh | [00:06:00] tourniquet time thirteen fifty six',
      ['13:56 tourniquet left thigh'],
    ],
    ['binder on | binder time thirteen fifty', ['13:50 pelvic-binder']],
    [
      'tourniquet on the left thigh at thirteen forty | tourniquet time was thirteen fifty',
      ['13:50 tourniquet left thigh?'],
    ],
    [
      'tourniquet on the left thigh at thirteen forty | correction, tourniquet time thirteen forty five',
      ['13:45 tourniquet left thigh'],
    ],
    [
      'tourniquet on the left thigh at thirteen forty | correction, tourniquet time is thirteen forty five',
      ['13:45 tourniquet left thigh'],
    ],
    [
      'splint on the right wrist at thirteen thirty | correction, splint applied thirteen thirty five',
      ['13:35 splint right wrist'],
    ],
    ['tourniquet time thirteen fifty', ['13:50 tourniquet']],
  ])('is that of the one on record: %s', (talk, expected) => {
    expect(standing(talk)).toEqual(expected);
  });

  it('is asked about where two are on', () => {
    const two = 'tourniquet on the left arm | tourniquet on the right thigh';
    expect(standing(`${two} | tourniquet time thirteen fifty`)).toEqual([
      '14:02 tourniquet left arm',
      '14:02 tourniquet right thigh',
      'note: tourniquet time thirteen fifty?',
    ]);
    expect(standing(`${two} | correction, tourniquet time thirteen fifty`)).toEqual([
      '14:02 tourniquet left arm',
      '13:50 tourniquet right thigh?',
    ]);
  });
});
