// The two demonstration examinations (invented) as reports: short, worst first, and with nothing out of reach.

import { beforeAll, describe, expect, test, vi } from 'vitest';
import {
  CLEAN_WORDS,
  compareReadBack,
  criticalValues,
  type HandoffInput,
  radio,
  radioDetails,
  SERIOUS_WORDS,
  soap,
  textOf,
  wordBudget,
} from '../../src/handoff/index.ts';
import { stands } from '../../src/record/entry.ts';
import { demoInput } from './demo-input.ts';

vi.setConfig({ testTimeout: 60_000 });

const confirmed = (input: HandoffInput): HandoffInput => ({
  ...input,
  entries: input.entries.map((entry) => (entry.state === 'heard' ? { ...entry, state: 'confirmed' } : entry)),
});

const DEMOS = [
  ['ridge-fall', SERIOUS_WORDS],
  ['ski-evening', CLEAN_WORDS],
] as const;

describe.each(DEMOS)('%s', (name, budget) => {
  let heard: HandoffInput;
  beforeAll(() => {
    heard = demoInput(name);
  });

  test(`is told in ${budget} words at most, confirmed or not`, () => {
    for (const input of [heard, confirmed(heard)]) {
      const words = radio(input).chunks.flatMap(({ text }) => text.split(' ')).length;
      expect(wordBudget(input)).toBe(budget);
      expect(words).toBeLessThanOrEqual(budget);
    }
  });

  test('leaves no standing entry but a look out of reach', () => {
    const told = new Set(
      [...radio(heard).chunks, ...radioDetails(heard).chunks].flatMap(({ entries }) => entries),
    );
    expect(
      heard.entries.filter((entry) => stands(entry) && entry.kind !== 'visit' && !told.has(entry.id)),
    ).toEqual([]);
  });

  test('says that it is unconfirmed once in each piece while nothing is confirmed, and nowhere after', () => {
    for (const { text } of radio(heard).chunks) expect(text.match(/unconfirmed/gi)).toHaveLength(1);
    for (const { text } of radio(confirmed(heard)).chunks) expect(text).not.toMatch(/unconfirmed/i);
  });

  test('is matched by its own read-back', () => {
    const said = radio(heard)
      .chunks.map(({ text }) => text)
      .join(' ');
    const rows = compareReadBack(criticalValues(heard), said.slice(said.indexOf('Read back')));
    expect(rows.length).toBeGreaterThan(2);
    expect(rows.filter(({ kind }) => kind !== 'matched')).toEqual([]);
  });

  test('has a narrative without words that nobody would say', () => {
    const text = textOf(soap(heard));
    expect(text).not.toMatch(
      /teeth of the teeth|deviation of the trachea|at the \w+ \w+ pulse|decides\.,|decides\. \[/,
    );
    expect(text).not.toMatch(/undefined|null|NaN|\[object/);
  });
});

test('the serious one begins with who, the red criteria, the tourniquet and the low pressure', () => {
  const [first] = radio(confirmed(demoInput('ridge-fall'))).chunks;
  expect(first?.text).toMatch(
    /^Age four one\. Red criteria: .*pulse above systolic\. Tourniquet right thigh, one three five one\. Pressure niner zero by palpation\. GCS one three\. Pulse one two four\./,
  );
});

test('the calm one names each injury that was found', () => {
  const said = radio(confirmed(demoInput('ski-evening')))
    .chunks.map(({ text }) => text)
    .join(' ');
  expect(said).toContain('Right knee: swelling');
  expect(said).toContain('Right thumb: moderate swelling');
});
