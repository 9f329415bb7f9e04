// The record's JSON against a schema written from the contract alone, on the demos through the real command line.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv, type ErrorObject } from 'ajv';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import {
  ASPECTS,
  CARES,
  DIGITS,
  FINDINGS,
  isPaired,
  PULSE_POINTS,
  SITES,
  TOPICS,
  VITALS,
} from '../../src/terms/index.ts';
import { ROOT, replay } from './command.ts';

vi.setConfig({ hookTimeout: 60_000 });

const SCHEMA = JSON.parse(readFileSync(new URL('record.schema.json', import.meta.url), 'utf8'));
// One decimal place cannot be tested by dividing binary fractions exactly.
const validate = new Ajv({
  allErrors: true,
  allowUnionTypes: true,
  discriminator: false,
  multipleOfPrecision: 6,
}).compile(SCHEMA);

interface Entry {
  readonly id: string;
  readonly kind: string;
  readonly state: string;
  readonly replacedBy?: string;
  readonly heard: string;
}
interface Json {
  readonly entries: readonly Entry[];
  readonly coverage: readonly { readonly site: string; readonly side: string | null }[];
  readonly flags: readonly { readonly evidence: readonly string[] }[];
}

const faults = (value: unknown): readonly string[] => {
  validate(value);
  return (validate.errors ?? []).map(
    ({ instancePath, message }: ErrorObject) => `${instancePath} ${message}`,
  );
};

const DEMOS = readdirSync(join(ROOT, 'public/demo')).filter((name) => name.endsWith('.talk'));

describe.each(DEMOS)('the record of %s', (name) => {
  let record: Json;
  beforeAll(() => {
    const { status, out, err } = replay(['--json', join('public/demo', name)]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    record = JSON.parse(out);
  });

  it('is as the contract states it', () => {
    expect(faults(record)).toEqual([]);
  });

  it('holds entries of substance', () => {
    const kinds = new Set(record.entries.map(({ kind }) => kind));
    expect([...kinds]).toEqual(expect.arrayContaining(['finding', 'vital', 'csm', 'history']));
  });

  it('gives each entry its own id, and points only to entries that are there', () => {
    const ids = record.entries.map(({ id }) => id);
    const heirs = record.entries.flatMap(({ replacedBy }) => replacedBy ?? []);
    const evidence = record.flags.flatMap((flag) => flag.evidence);
    expect(new Set(ids).size).toBe(ids.length);
    expect([...heirs, ...evidence].filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('tells what took the place of each replaced entry', () => {
    const replaced = record.entries.filter(({ state }) => state === 'replaced');
    expect(replaced.filter(({ replacedBy }) => replacedBy === undefined)).toEqual([]);
  });

  it('has a row of coverage for every site, a left and a right one where there are two', () => {
    const rows = record.coverage.map(({ site, side }) => `${site} ${side}`);
    const wanted = SITES.flatMap((site) =>
      isPaired(site) ? [`${site} left`, `${site} right`] : [`${site} null`],
    );
    expect(wanted.filter((row) => !rows.includes(row))).toEqual([]);
    expect(new Set(rows).size).toBe(rows.length);
  });

  it('heard no words that were not said', () => {
    const said = readFileSync(join(ROOT, 'public/demo', name), 'utf8');
    const squash = (text: string): string =>
      text
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, ' ')
        .trim();
    const all = squash(said.replace(/^\[[\d:]+\]/gm, ''));
    const invented = record.entries.filter(
      ({ heard }) => !heard.split('…').every((part) => all.includes(squash(part))),
    );
    expect(invented.map(({ id, heard }) => `${id}: ${heard}`)).toEqual([]);
  });
});

describe('the schema', () => {
  const facts = {
    id: 'replay-1',
    at: '2026-05-03T14:02:00-06:00',
    heardAt: '2026-05-03T14:02:00-06:00',
    heard: 'as said',
    state: 'heard',
  };
  const withEntry = (slots: object): unknown => ({
    schema: 'fieldsay-record/1',
    startedAt: '2026-05-03T14:02:00-06:00',
    entries: [{ ...facts, ...slots }],
    coverage: SITES.map((site) => ({ site, side: null, state: 'not-examined' })),
    scores: { gcs: null, shockIndex: null, meanArterialPressure: null, burnPercent: null },
    flags: [],
    handoff: { soap: 'a', mist: 'a', radio: ['a over'] },
  });

  it.each([
    {
      kind: 'finding',
      site: 'wrist',
      side: 'left',
      finding: 'swelling',
      present: true,
      size: { value: 3, unit: 'cm' },
    },
    { kind: 'vital', vital: 'temperature', value: { celsius: 36.8 } },
    { kind: 'vital', vital: 'blood-pressure', value: { systolic: 90, diastolic: null, method: 'palpation' } },
    { kind: 'vital', vital: 'gcs', value: { eye: 'NT', verbal: 5, motor: 6 } },
    { kind: 'history', topic: 'age', text: '52', years: 52 },
    { kind: 'care', care: 'tourniquet', site: 'thigh', side: 'right' },
    { kind: 'note', text: 'as said', doubt: ['nothing earlier fits this correction'] },
  ])('accepts %j', (slots) => {
    expect(faults(withEntry(slots))).toEqual([]);
  });

  it.each([
    { kind: 'finding', site: 'wrist', side: 'left', finding: 'swelling' },
    { kind: 'finding', site: 'wrist', finding: 'swelling', present: true },
    { kind: 'finding', site: 'wing', side: 'left', finding: 'swelling', present: true },
    { kind: 'finding', site: 'wrist', side: 'L', finding: 'swelling', present: true },
    { kind: 'finding', site: 'wrist', side: null, finding: 'swelling', present: true, guess: 1 },
    { kind: 'csm', site: 'wrist', side: 'left', aspect: 'motion', present: true },
    { kind: 'vital', vital: 'pulse', value: { rate: 1200 } },
    { kind: 'vital', vital: 'temperature', value: { celsius: 36.85 } },
    { kind: 'vital', vital: 'blood-pressure', value: { systolic: 90, diastolic: null } },
    { kind: 'vital', vital: 'gcs', value: { eye: 'NT', verbal: 5, motor: 6, total: 12 } },
    { kind: 'history', topic: 'sex', text: 'male', years: 4 },
    { kind: 'care', care: 'medication' },
    { kind: 'note' },
    { kind: 'note', text: 'a', state: 'guessed' },
    { kind: 'note', text: 'a', at: '2026-05-03 14:02' },
  ])('refuses %j', (slots) => {
    expect(faults(withEntry(slots))).not.toEqual([]);
  });

  it('knows the same words as the program', () => {
    const { definitions, properties } = SCHEMA;
    const branch = (kind: string) =>
      properties.entries.items.oneOf.filter(
        (one: { properties: { kind: { const: string } } }) => one.properties.kind.const === kind,
      );
    expect(definitions.site.enum.toSorted()).toEqual([...SITES].toSorted());
    expect(definitions.finding.enum.toSorted()).toEqual([...FINDINGS].toSorted());
    expect(branch('care')[0].properties.care.enum.toSorted()).toEqual([...CARES].toSorted());
    expect(branch('history')[0].properties.topic.enum.toSorted()).toEqual([...TOPICS].toSorted());
    expect(branch('csm')[0].properties.aspect.enum.toSorted()).toEqual([...ASPECTS].toSorted());
    expect(branch('csm')[0].properties.digit.enum.toSorted()).toEqual([...DIGITS].toSorted());
    expect(branch('csm')[0].properties.pulse.enum.toSorted()).toEqual([...PULSE_POINTS].toSorted());
    expect(
      branch('vital')
        .map((one: { properties: { vital: { const: string } } }) => one.properties.vital.const)
        .toSorted(),
    ).toEqual([...VITALS].toSorted());
  });
});
