// What HL7's own examples say, said to us, comes out in the same elements with the same codes, units and numbers.
//
// Source: HL7 FHIR 4.0.1 examples (hl7.fhir.r4.examples 4.0.1, CC0; seen), read beside the project. What differs by
// choice is named beside each check.

import { describe, expect, test } from 'vitest';
import type {
  Bundle,
  Composition,
  Encounter,
  Observation,
  Provenance,
} from '../../src/handoff/fhir/index.ts';
import type { Statement } from '../../src/terms/index.ts';
import { documentOf, observed, ofType } from '../handoff/fhir-input.ts';
import { made } from '../handoff/made-up.ts';
import { example, exampleNames, hasFhirData, vitalSignsProfiles } from './fhir-data.ts';
import { departures } from './fhir-profile.ts';
import { faultsOf } from './fhir-validator.ts';

type Value = Pick<
  Observation,
  'valueQuantity' | 'valueCodeableConcept' | 'valueBoolean' | 'dataAbsentReason'
>;
type Codes = readonly { readonly system: string; readonly code: string }[] | undefined;

const from = (codes: Codes, system: string): readonly string[] =>
  (codes ?? []).filter((coding) => coding.system === system).map(({ code }) => code);
const loincs = (codes: Codes): readonly string[] => from(codes, 'http://loinc.org');

/** Value and unit as coded, and LOINC answers with their numbers; not how they are shown. */
function codedValue({ valueQuantity, valueCodeableConcept, valueBoolean, dataAbsentReason }: Value): object {
  const answers = valueCodeableConcept?.coding?.filter(({ system }) => system === 'http://loinc.org');
  return {
    ...(valueQuantity === undefined
      ? {}
      : { value: valueQuantity.value, system: valueQuantity.system, code: valueQuantity.code }),
    ...(answers === undefined ? {} : { answers }),
    ...(valueBoolean === undefined ? {} : { valueBoolean }),
    ...(dataAbsentReason === undefined ? {} : { reason: dataAbsentReason.coding?.map(({ code }) => code) }),
  };
}

/** The coded facts of an Observation, by HL7's and LOINC's codes alone; components by their code. */
const facts = (one: Observation): object => ({
  code: loincs(one.code.coding),
  category: one.category?.map(({ coding }) => coding?.map(({ system, code }) => `${system}#${code}`)),
  ...codedValue(one),
  components: Object.fromEntries(
    (one.component ?? []).map((component) => [`${loincs(component.code.coding)}`, codedValue(component)]),
  ),
});

const vital = (name: string, value: object): Statement =>
  ({ kind: 'vital', vital: name, value }) as unknown as Statement;

const ROWS: readonly (readonly [name: string, statement: Statement])[] = [
  ['heart-rate', vital('pulse', { rate: 44 })],
  ['respiratory-rate', vital('respirations', { rate: 26 })],
  ['body-temperature', vital('temperature', { celsius: 36.5 })],
  ['satO2', vital('oxygen-saturation', { percent: 95 })],
  ['blood-pressure', vital('blood-pressure', { systolic: 107, diastolic: 60 })],
  // HL7 gives no reason in words for the lower pressure that was not taken; ours is that it was felt.
  ['blood-pressure-dar', vital('blood-pressure', { systolic: 107, diastolic: null, method: 'palpation' })],
];

function vitalTests(): void {
  test.each(ROWS)('%s', (name, statement) => {
    expect(facts(observed(statement))).toEqual(facts(example<Observation>(`Observation-${name}`)));
  });

  // HL7's example has no category; ours is "exam", since the scale is no vital sign by HL7's profiles.
  test('glasgow: E4 V4 M5 = 13, with LOINC’s answers and their numbers', () => {
    const theirs = example<Observation>('Observation-glasgow');
    const ours = observed(vital('gcs', { eye: 4, verbal: 4, motor: 5, total: 13 }));
    expect({ ...facts(ours), category: undefined }).toEqual(facts(theirs));
    expect(Object.keys(theirs).filter((key) => !(key in ours))).toEqual(['referenceRange']);
  });

  test('vitals-panel: members, the panel’s code, and no value', () => {
    const theirs = example<Observation>('Observation-vitals-panel');
    const entries = ROWS.slice(0, 3).map(([name, statement]) => made(name, statement));
    const panel = ofType(documentOf(entries), 'Observation').find(({ hasMember }) => hasMember !== undefined);
    if (panel === undefined) throw new Error('no panel');
    expect(facts(panel)).toEqual(facts(theirs));
    expect(panel.hasMember?.map((member) => typeof member.reference)).toEqual(['string', 'string', 'string']);
  });

  // Theirs is coded in a licensed terminology and has the place in its code; ours has our code and a body site.
  test('abdo-tender: an examination finding is true and abnormal', () => {
    const theirs = example<Observation>('Observation-abdo-tender');
    const ours = observed({
      kind: 'finding',
      site: 'abdomen',
      side: null,
      finding: 'tenderness',
      present: true,
    });
    expect(facts(ours)).toEqual(facts(theirs));
    expect(ours.interpretation?.[0]?.coding).toEqual(theirs.interpretation?.[0]?.coding);
  });
}

/** The names of all elements in a value, with `[x]` choices as they are written. */
const keysIn = (value: object): readonly string[] => Object.keys(value).sort();

function documentTests(): void {
  const bundle = documentOf([made('a', vital('pulse', { rate: 92 }))]);
  const father = () => example<Bundle>('Bundle-father');

  test('a document bundle begins with composition and people, and is named and dated alike', () => {
    const { type, identifier, timestamp, entry } = father();
    expect(bundle.type).toBe(type);
    expect(bundle.identifier.system).toBe(identifier.system);
    expect(keysIn(bundle)).toEqual(keysIn(bundle).filter((key) => key in father()));
    expect(typeof bundle.timestamp).toBe(typeof timestamp);
    expect(bundle.entry[0]?.resource.resourceType).toBe(entry[0]?.resource.resourceType);
    const kinds = new Set(bundle.entry.map(({ resource }) => resource.resourceType));
    for (const kind of ['Composition', 'Practitioner', 'Patient', 'Encounter', 'Observation'] as const)
      expect([kinds.has(kind), ofType(father(), kind).length > 0]).toEqual([true, true]);
  });

  test('a composition has their elements, and its sections too', () => {
    const [ours] = ofType(bundle, 'Composition');
    const theirs = example<Composition>('Composition-example');
    if (ours === undefined) throw new Error('no composition');
    expect(keysIn(ours).filter((key) => !(key in theirs))).toEqual([]);
    const known = new Set(theirs.section.flatMap(keysIn));
    expect(ours.section.flatMap(keysIn).filter((key) => !known.has(key))).toEqual([]);
  });

  test('an encounter has one class, of the same code system', () => {
    const theirs = example<Encounter>('Encounter-emerg');
    const [ours] = ofType(bundle, 'Encounter');
    expect(ours?.class.system).toBe(theirs.class.system);
    expect(ours?.class.code).toBe('FLD');
    expect(ours?.status).toBe(theirs.status);
  });

  test('a provenance has targets, a time, and agents with a type and who they are', () => {
    const theirs = example<Provenance>('Provenance-example');
    for (const { target, recorded, agent } of ofType(bundle, 'Provenance')) {
      expect([target.length > 0, typeof recorded]).toEqual([true, typeof theirs.recorded]);
      for (const one of agent) expect(keysIn(one)).toEqual(['type', 'who']);
      expect(theirs.agent[0]).toMatchObject({ type: expect.anything(), who: expect.anything() });
    }
  });
}

// The checks themselves: what HL7 publishes must pass them, or they would say nothing of ours.
function checkTests(): void {
  test('find no fault in HL7’s own examples by the base definitions', () => {
    const faults = exampleNames().flatMap((name) =>
      faultsOf(example<object>(name)).map((one) => `${name} ${one}`),
    );
    expect(exampleNames().length).toBeGreaterThan(10);
    expect(faults).toEqual([]);
  });

  test.each([
    ['heart-rate', 'heartrate'],
    ['respiratory-rate', 'resprate'],
    ['body-temperature', 'bodytemp'],
    ['satO2', 'oxygensat'],
    ['blood-pressure', 'bp'],
    ['blood-pressure-dar', 'bp'],
    ['vitals-panel', 'vitalspanel'],
  ])('find that %s meets %s', (name, id) => {
    const profile = vitalSignsProfiles().get(`http://hl7.org/fhir/StructureDefinition/${id}`);
    if (profile === undefined) throw new Error(`no profile ${id}`);
    expect(departures(profile, example<object>(`Observation-${name}`))).toEqual([]);
  });
}

if (hasFhirData) {
  describe('a vital as HL7’s example has it', vitalTests);
  describe('the rest of the document as HL7’s examples have it', documentTests);
  describe('the checks used on our documents', checkTests);
} else {
  const title = 'NOT CHECKED: HL7’s examples are needed in ../shared/data/fhir/examples';
  console.info(title);
  test(title, () => expect(hasFhirData).toBe(false));
}
