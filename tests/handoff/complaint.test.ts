// What a patient without an injury complains of: where each report tells it. The talk is invented.

import { expect, test } from 'vitest';
import { reportsOf } from './from-talk.ts';

const ILL = [
  'fifty eight year old man',
  'chief complaint is chest pain',
  'it started at one thirty',
  'pain is six out of ten',
  'it feels like a tight band',
  'pulse one hundred and four',
];

test('the radio tells it in place of a mechanism', () => {
  expect(reportsOf(...ILL).radio).toMatch(/Chief complaint: chest pain/);
  expect(reportsOf(...ILL).radio.indexOf('Chief complaint')).toBeLessThan(
    reportsOf(...ILL).radio.indexOf('Not recorded'),
  );
});

test('a mechanism leaves it no room of its own', () =>
  expect(reportsOf(...ILL, 'he fell three metres off the wall').radio.split('break')[0]).not.toMatch(
    /Chief complaint/,
  ));

test('a score of the pain is not a severity that nobody recorded', () => {
  const { soap } = reportsOf(...ILL);
  expect(soap).toMatch(/Pain score: 6 out of 10/);
  expect(soap).not.toMatch(/Not recorded: [^.]*severity/);
  expect(reportsOf(...ILL.filter((line) => !line.includes('out of ten'))).soap).toMatch(
    /Not recorded: [^.]*severity/,
  );
});

test('an infant is told in months', () => {
  const { soap, radio } = reportsOf('seven month old baby girl', 'pulse one fifty');
  expect(soap).toContain('Age: 7 months');
  expect(radio).toMatch(/Age seven months, female/);
});
