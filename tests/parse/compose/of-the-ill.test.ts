// What is said over ill patients rather than hurt ones. All talk is invented.

import { expect, test } from 'vitest';
import { found, standing } from '../standing.ts';

test.each([
  ['third spray of gtn', 'third spray of gtn'],
  ['glucose gel ten grams given by mouth', 'glucose gel ten grams given by mouth'],
  ['second puff of salbutamol', 'second puff of salbutamol'],
])('%s: care keeps which one it was, and its way', (talk, text) =>
  expect(standing(talk)).toMatchObject([{ kind: 'care', care: 'medication', text }]),
);

test.each([
  ['left arm is weak, right arm strong', ['arm', 'left', 'weakness', true]],
  ['right leg is weak, left leg strong', ['leg', 'right', 'weakness', true]],
] as const)('%s: is no history', (talk, finding) => {
  expect(found(talk)).toEqual([finding]);
  expect(standing(talk).some(({ kind }) => kind === 'history')).toBe(false);
});

test.each(['no fever, no stiff neck', 'no rash, no stiff neck'])('%s: the neck is not stiff', (talk) => {
  expect(found(talk)).toEqual([['neck', null, 'limited-motion', false]]);
  expect(standing(talk).flatMap(({ doubt = [] }) => doubt)).toEqual([]);
});

test('knees, not a mark on either: says where', () =>
  expect(found('knees, not a mark on either')).toEqual([['knee', 'both', 'abnormality', false]]));

test('a sting told of what happened is heard in the words that told it', () => {
  const sting = standing('what happened to your ankle? | a hornet stung me there').find(
    ({ kind }) => kind === 'finding',
  );
  expect(sting).toMatchObject({ finding: 'sting', site: 'ankle', heard: 'a hornet stung me there' });
});

test.each(['stung by a wasp ten minutes ago', 'she was stung by hornets ten minutes ago'])(
  '%s: what happened is dated when it happened',
  (talk) => {
    const [told, now] = standing(`${talk} | stung by a bee`);
    expect(told).toMatchObject({ kind: 'history', topic: 'mechanism' });
    expect(Date.parse(told?.at ?? '')).toBeLessThan(Date.parse(now?.at ?? '') - 9 * 60_000);
  },
);

test('salbutamol again, five milligrams: is a dose', () =>
  expect(standing('salbutamol again, five milligrams')).toMatchObject([
    { kind: 'care', care: 'medication' },
  ]));
