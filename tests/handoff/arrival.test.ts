// Whether words kept as said tell an arrival that is to come, or one that was; all words are invented.

import { expect, test } from 'vitest';
import { mist, textOf } from '../../src/handoff/index.ts';
import { input, made } from './made-up.ts';

const said = (text: string): string => textOf(mist(input([made('a', { kind: 'note', text })])));

test.each([
  'ETA ten minutes',
  'the aircraft is twelve minutes out',
  'the crew is arriving now',
  'they arrive in half an hour',
  'boat inbound',
  'arrival in twenty minutes',
  'ambulance five minutes away',
])('an arrival to come is told: %s', (text) => {
  expect(said(text)).toContain(`Arrival, said at 14:06: “${text}”`);
});

test.each([
  'tourniquet was on five minutes before I arrived',
  'walking about when we arrived',
  'on our arrival he was sat up',
  'bleeding had stopped before arrival',
  'the hut was ten minutes away',
  'he was five minutes out cold',
  'seizing since they arrived',
])('what was is no arrival: %s', (text) => {
  expect(said(text)).not.toContain('Arrival, said');
});
