// What the FHIR document says of each kind of entry, and what it must not say; the entries are invented.

import { describe, expect, test } from 'vitest';
import type { FindingStatement, HistoryStatement, Topic } from '../../src/terms/index.ts';
import { documentOf, observed, ofType, resourceOfStatement } from './fhir-input.ts';
import { made } from './made-up.ts';

const swelling: FindingStatement = {
  kind: 'finding',
  site: 'wrist',
  side: 'right',
  finding: 'swelling',
  present: true,
};
const history = (topic: Topic, text: string, more: Partial<HistoryStatement> = {}): HistoryStatement => ({
  kind: 'history',
  topic,
  text,
  ...more,
});

describe('a finding', () => {
  test('is true or false, with its side in the code and in the words', () => {
    expect(observed(swelling)).toMatchObject({
      status: 'final',
      code: { coding: [{ system: 'urn:fieldsay:codes:finding', code: 'swelling' }], text: 'Swelling' },
      bodySite: {
        coding: [{ system: 'urn:fieldsay:codes:place', code: 'right-wrist', display: 'Right wrist' }],
        text: 'Right wrist',
      },
      valueBoolean: true,
      interpretation: [{ coding: [{ code: 'A' }] }],
    });
  });

  test('that was denied is false and negative, and is not called normal', () => {
    const absent = observed({ ...swelling, present: false });
    expect(absent).toMatchObject({ valueBoolean: false, interpretation: [{ coding: [{ code: 'NEG' }] }] });
    expect(absent.text?.div).toContain('No swelling of the right wrist');
    expect(JSON.stringify(absent)).not.toMatch(/normal/i);
  });

  test.each([
    ['left', 'left-wrist', 'Left wrist'],
    ['both', 'both-wrist', 'Both wrists'],
    [null, 'wrist', 'Wrist (side not said)'],
  ] as const)('of side %s is at %s, "%s"', (side, code, text) => {
    expect(observed({ ...swelling, side }).bodySite).toMatchObject({ coding: [{ code }], text });
  });

  test('keeps all that was said of it', () => {
    const full = observed({
      ...swelling,
      site: 'ribs',
      part: ['anterior'],
      level: 'rib-7',
      size: { value: 3, unit: 'cm' },
      severity: 6,
      count: 2,
      quality: ['jagged'],
    });
    expect(full.bodySite?.text).toBe('Right anterior rib 7');
    expect(full.component).toMatchObject([
      { code: { coding: [{ code: 'part' }] }, valueCodeableConcept: { coding: [{ code: 'anterior' }] } },
      { code: { coding: [{ code: 'level' }] }, valueString: 'rib-7' },
      { code: { coding: [{ code: 'size' }] }, valueQuantity: { value: 3, code: 'cm' } },
      { code: { coding: [{ code: 'severity' }] }, valueQuantity: { value: 6, unit: 'out of 10' } },
      { code: { coding: [{ code: 'count' }] }, valueInteger: 2 },
      { code: { coding: [{ code: 'quality' }] }, valueString: 'jagged' },
    ]);
  });
});

describe('a vital', () => {
  test('that was felt has no lower pressure, and says why', () => {
    const felt = observed({
      kind: 'vital',
      vital: 'blood-pressure',
      value: { systolic: 110, diastolic: null, method: 'palpation' },
    });
    expect(felt.method?.text).toBe('By palpation');
    expect(felt.component?.[1]).toMatchObject({
      code: { coding: [{ code: '8462-4' }] },
      dataAbsentReason: { coding: [{ code: 'not-performed' }], text: 'Not obtained by palpation' },
    });
    expect(felt.component?.[1]).not.toHaveProperty('valueQuantity');
  });

  test('without a number has none', () => {
    const pulse = observed({ kind: 'vital', vital: 'pulse', value: { quality: ['strong'] } });
    expect(pulse.dataAbsentReason?.coding?.[0]?.code).toBe('unknown');
    expect(pulse).not.toHaveProperty('valueQuantity');
    expect(pulse.component).toMatchObject([{ valueString: 'strong' }]);
  });

  test('of the Glasgow scale that is not testable is no 1, and leaves no total', () => {
    const value = { eye: 3, verbal: 'NT', motor: 5, total: 9 } as const;
    const gcs = observed({ kind: 'vital', vital: 'gcs', value });
    expect(gcs).not.toHaveProperty('valueQuantity');
    expect(gcs.dataAbsentReason?.coding?.[0]?.code).toBe('not-performed');
    expect(gcs.component?.[1]).toEqual({
      code: expect.objectContaining({ text: 'GCS verbal' }),
      dataAbsentReason: expect.objectContaining({ text: 'Not testable' }),
    });
  });

  test('of the Glasgow scale has the total that was said, and works none out', () => {
    const gcs = (value: object) => observed({ kind: 'vital', vital: 'gcs', value });
    expect(gcs({ total: 14 })).toMatchObject({ valueQuantity: { value: 14, code: '{score}' } });
    expect(gcs({ total: 14 })).not.toHaveProperty('component');
    expect(gcs({ eye: 4, verbal: 5, motor: 6 })).toMatchObject({
      dataAbsentReason: { text: 'Total not said' },
    });
    expect(gcs({ eye: 4 }).component).toMatchObject([
      { valueCodeableConcept: { text: '4 (Spontaneous)' } },
      { dataAbsentReason: { text: 'Not said' } },
      { dataAbsentReason: { text: 'Not said' } },
    ]);
  });

  test('joins a panel with the others of its minute, which is no surer than they are', () => {
    const pulse = { kind: 'vital', vital: 'pulse', value: { rate: 92 } } as const;
    const breaths = { kind: 'vital', vital: 'respirations', value: { rate: 16 } } as const;
    const panels = (...entries: ReturnType<typeof made>[]) =>
      ofType(documentOf(entries), 'Observation').filter(({ hasMember }) => hasMember !== undefined);
    const late = made('c', breaths, { time: '14:20' });
    expect(panels(made('a', pulse), late)).toEqual([]);
    const [panel] = panels(made('a', pulse), made('b', breaths, { state: 'heard' }), late);
    expect(panel).toMatchObject({ status: 'preliminary', code: { coding: [{ code: '85353-1' }] } });
    expect(panel?.hasMember).toHaveLength(2);
  });
});

describe("a limb's end", () => {
  const motion = { kind: 'csm', site: 'hand', side: 'left', aspect: 'motion', present: true } as const;
  test('is true where it is intact, and abnormal where it is not', () => {
    expect(observed(motion)).toMatchObject({
      code: { coding: [{ code: 'motion-intact' }] },
      bodySite: { text: 'Left hand' },
      valueBoolean: true,
    });
    expect(observed(motion)).not.toHaveProperty('interpretation');
    expect(observed({ ...motion, present: false })).toMatchObject({
      valueBoolean: false,
      interpretation: [{ coding: [{ code: 'A' }] }],
    });
  });

  test('is the digit where one was named', () => {
    expect(observed({ ...motion, digit: 'thumb' }).bodySite?.coding?.[0]?.code).toBe('left-thumb');
  });
});

describe('an allergy or a medicine', () => {
  test.each([
    ['allergies', 'penicillin', {}, 'AllergyIntolerance'],
    ['allergies', 'no allergies', { present: false }, 'Observation'],
    ['allergies', 'penicillin', { present: false }, 'Observation'],
    ['allergies', 'no known ones', {}, 'Observation'],
    ['allergies', 'NKDA', {}, 'Observation'],
    ['allergies', 'isn’t allergic to bees', {}, 'Observation'],
    ['allergies', '', {}, 'Observation'],
    ['allergies', 'nuts, notably walnuts', {}, 'AllergyIntolerance'],
    ['medications', 'metoprolol', {}, 'MedicationStatement'],
    ['medications', 'no medications', { present: false }, 'Observation'],
    ['medications', 'does not take any', {}, 'Observation'],
    ['past-history', 'asthma', {}, 'Observation'],
  ] as const)('%s "%s" %j is a %s', (topic, text, more, type) => {
    expect(resourceOfStatement(history(topic, text, more))?.resourceType).toBe(type);
  });

  test.each([
    ['medications', 'warfarin', 'denies warfarin'],
    ['medications', 'Do you take blood thinners: No', 'denied (“Do you take blood thinners: No”)'],
    ['medications', 'no regular medication', '“no regular medication”'],
    ['past-history', 'Diabetic: No', 'denies diabetic'],
    ['past-history', 'had surgery', 'denies had surgery'],
    ['symptoms', 'no nausea', '“no nausea”'],
  ] as const)(
    '%s of which a part was denied, "%s", says which and is no false for all',
    (topic, text, said) => {
      const denied = observed(history(topic, text, { present: false }));
      expect(denied.valueString).toBe(said);
      expect(denied).not.toHaveProperty('valueBoolean');
    },
  );

  test.each([
    ['medications', 'no medications'],
    ['medications', 'takes nothing'],
    ['medications', 'Any medications: No'],
    ['past-history', 'no past medical history'],
    ['past-history', 'No'],
  ] as const)('%s denied as a whole is false: %s', (topic, text) => {
    const denied = observed(history(topic, text, { present: false }));
    expect(denied.valueBoolean).toBe(false);
    expect(denied).not.toHaveProperty('valueString');
  });

  test.each([
    ['no kiwi allergy', 'no kiwi allergy'],
    ['penicillin', 'denies penicillin'],
  ])('of one thing denied, "%s", is no false for all allergies', (text, said) => {
    const denied = observed(history('allergies', text, { present: false }));
    expect(denied.valueString).toBe(said);
    expect(denied).not.toHaveProperty('valueBoolean');
    expect(denied.text?.div).toContain(said);
  });

  test.each(['no known allergies', 'NKDA', 'not allergic to anything', 'no allergies that he knows of'])(
    'is false where all are denied: %s',
    (text) => {
      expect(observed(history('allergies', text, { present: false })).valueBoolean).toBe(false);
    },
  );

  test('that was told is unconfirmed as an allergy, though the words are confirmed', () => {
    expect(resourceOfStatement(history('allergies', 'penicillin'))).toMatchObject({
      verificationStatus: { coding: [{ code: 'unconfirmed' }] },
      meta: { tag: [{ code: 'confirmed' }] },
    });
  });
});
