// What is corrected minutes after it was said keeps its time, and no report takes that time for one that was spoken. The
// talk is invented.

import { describe, expect, test } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import { reportsOf } from './from-talk.ts';

function told(lines: readonly string[]) {
  const { input, soap, mist, radio } = reportsOf(...lines);
  return { all: [soap, mist, radio].join('\n'), reckoning: reckon(input.entries, { now: input.now }) };
}

describe('corrected minutes later', () => {
  test('a mechanism gives no time of the incident', () => {
    const { all, reckoning } = told([
      '[00:00:10] he fell four metres off the ladder',
      '[00:03:00] correction, he fell three metres',
    ]);
    expect(all).toMatch(/three metres/);
    expect(all).toMatch(/Time of incident: not recorded/);
    expect(all).not.toMatch(/Incident one/i);
    expect(all).not.toMatch(/metres, at /);
    expect(reckoning.clocks.find(({ clock }) => clock === 'injury')?.since).toBeNull();
  });

  test('a mechanism whose time was spoken keeps that time', () => {
    const { all } = told([
      '[00:00:10] he fell four metres at eight thirty',
      '[00:03:00] correction, he fell three metres',
    ]);
    expect(all).toMatch(/Time of incident: 08:30/);
  });

  test('a finding, an allergy and a limb are told without a time', () => {
    const { all } = told([
      '[00:00:50] right shin, swelling and bruising',
      '[00:01:05] correction, left shin',
      '[00:02:10] allergic to latex',
      '[00:04:10] correction, allergic to codeine',
      '[00:04:20] motion intact right foot',
      '[00:06:00] correction, left foot',
    ]);
    expect(all).toMatch(/Left lower leg: swelling and contusion/i);
    expect(all).toMatch(/codeine \(unconfirmed\)/);
    expect(all).not.toMatch(/codeine, at/);
    expect(all).not.toMatch(/left foot[^.]*, at /i);
  });

  test('twice, it is told as if the last had been said at first', () => {
    const { all } = told([
      '[00:00:50] he fell four metres off the ladder',
      '[00:02:00] correction, he fell five metres',
      '[00:05:00] correction, he fell six metres',
    ]);
    expect(all).toMatch(/six metres/);
    expect(all).toMatch(/Time of incident: not recorded/);
  });

  test('in its time, it is told with the time that was then spoken', () => {
    const { all } = told([
      '[00:05:50] tourniquet on the right thigh at nine eleven',
      '[00:08:00] correction, tourniquet on the right thigh at nine thirteen',
    ]);
    expect(all).toMatch(/Tourniquet to the right thigh at 09:13/);
    expect(all).not.toMatch(/09:11/);
  });
});
