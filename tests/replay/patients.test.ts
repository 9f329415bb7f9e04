// A talk that turns to another patient keeps each patient's entries apart. The talk is invented.

import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/record/index.ts';
import { readTalk, type Talk } from '../../src/record/talk/index.ts';
import { examine, examineAll } from '../../src/replay/examine.ts';
import { fhirInput } from '../../src/replay/fhir-input.ts';
import { outputOf } from '../../src/replay/output.ts';
import { realReader } from '../talk-case.ts';

const reader = realReader();
const BEGINNING = { startedAt: Date.UTC(2026, 4, 3, 20, 2, 0), zone: '-06:00' };

function talkOf(...lines: readonly string[]): Talk {
  const talk = readTalk(lines.join('\n'), BEGINNING);
  if (talk.kind === 'error') throw new Error(talk.why);
  return talk;
}

const TWO = talkOf(
  'left wrist swollen',
  'top problem is the left wrist',
  'patient two',
  'right knee bruised',
  'back to patient one, pulse eighty eight',
  'no pain there',
  'next patient',
  'left foot cold',
);

const said = (entries: readonly Entry[]) =>
  entries.flatMap((entry) =>
    entry.kind === 'finding' || entry.kind === 'csm'
      ? [entry.site]
      : entry.kind === 'vital'
        ? [entry.vital]
        : [],
  );

describe('a talk about two patients', () => {
  const patients = examineAll(reader, TWO);

  it('gives each of them a record of their own', () => {
    expect(patients.map(({ patient }) => patient)).toEqual([1, 2]);
    expect(said(patients[0].exam.state.entries)).toEqual(['wrist', 'pulse']);
    expect(said(patients[1]?.exam.state.entries ?? [])).toEqual(['knee', 'foot']);
  });

  it('carries no site from one patient to the other', () => {
    expect(patients[0].exam.state.entries.find((entry) => entry.heard === 'no pain there')?.kind).toBe(
      'note',
    );
  });

  it('names no entry of two patients alike', () => {
    const ids = patients.flatMap(({ exam }) => exam.state.entries.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('is one JSON document, with the other patient within it', () => {
    const [first, second] = patients.map(({ patient, exam }) => ({
      patient,
      input: fhirInput(TWO, exam, patient),
    }));
    if (first === undefined || second === undefined) throw new Error('there are two');
    const printed = JSON.parse(outputOf('json', first.input, [second], null));
    expect(printed).toMatchObject({
      schema: 'fieldsay-record/1',
      others: [{ patient: 2, schema: 'fieldsay-record/1' }],
    });
    expect(outputOf('soap', first.input, [second], null)).toMatch(
      /left wrist[\s\S]*== patient 2 ==[\s\S]*knee/i,
    );
  });

  it('is as before where it turns to nobody', () => {
    const talk = talkOf('left wrist swollen', 'patient two has a broken ankle');
    expect(examineAll(reader, talk)).toEqual([{ patient: 1, exam: examine(reader, talk) }]);
  });
});

describe('a number that names the patient in hand', () => {
  const entriesOf = (...lines: readonly string[]): readonly Entry[] =>
    examine(reader, talkOf(...lines)).state.entries;

  it.each([
    'Patient one. Male, forty. Right thigh bleeding heavily.',
    'this is patient one, male, forty, right thigh bleeding',
  ])('keeps nothing as said of another: %s', (line) => {
    const entries = entriesOf(line, 'pulse ninety');
    expect(said(entries)).toEqual(['thigh', 'pulse']);
    expect(entries.filter(({ kind }) => kind === 'note')).toEqual([]);
    expect(entries.flatMap(({ doubt }) => doubt ?? [])).toEqual([]);
  });

  it("still keeps as another's what is said after a turn away", () => {
    const entries = entriesOf('pulse ninety', 'patient two, left foot cold');
    expect(said(entries)).toEqual(['pulse']);
    expect(entries.filter(({ kind }) => kind === 'note')).toHaveLength(1);
  });
});
