// Invented entries by chance for property tests: any finding anywhere, in any state, at any of a few minutes.

import fc from 'fast-check';
import type { Entry } from '../../src/record/entry.ts';
import type { Statement } from '../../src/terms/index.ts';
import { ASPECTS, CARES, FINDINGS, PARTS, SIDES, SITES, TOPICS } from '../../src/terms/index.ts';
import { made } from './made-up.ts';

const side = fc.constantFrom(...SIDES, null);
const site = fc.constantFrom(...SITES);
const words = fc.constantFrom('jagged', 'dull', 'oozing', 'when he coughs hard', '2nd degree');

const optional = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined, freq: 3 });

/** A slot that is not there is left out, as the record has it. */
const without = (facts: object): object =>
  Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined));

const finding = fc
  .record({
    site,
    side,
    finding: fc.constantFrom(...FINDINGS),
    present: fc.boolean(),
    part: optional(fc.uniqueArray(fc.constantFrom(...PARTS), { minLength: 1, maxLength: 2 })),
    size: optional(fc.constantFrom({ value: 3, unit: 'cm' as const }, { value: 7.6, unit: 'cm' as const })),
    severity: optional(fc.constantFrom('mild' as const, 'severe' as const, 6)),
    count: optional(fc.integer({ min: 1, max: 4 })),
    quality: optional(fc.uniqueArray(words, { minLength: 1, maxLength: 2 })),
  })
  .map((facts) => ({ kind: 'finding', ...without(facts) }) as Statement);

const csm = fc
  .record({
    site: fc.constantFrom('hand' as const, 'foot' as const),
    side,
    aspect: fc.constantFrom(...ASPECTS),
    present: fc.boolean(),
    capRefillSeconds: optional(fc.integer({ min: 1, max: 6 })),
  })
  .map((facts) => ({ kind: 'csm', ...without(facts) }) as Statement);

const vital = fc.oneof(
  fc
    .integer({ min: 30, max: 200 })
    .map((rate): Statement => ({ kind: 'vital', vital: 'pulse', value: { rate } })),
  fc.tuple(fc.integer({ min: 60, max: 200 }), fc.integer({ min: 20, max: 59 })).map(
    ([systolic, diastolic]): Statement => ({
      kind: 'vital',
      vital: 'blood-pressure',
      value: { systolic, diastolic },
    }),
  ),
  fc
    .integer({ min: 300, max: 410 })
    .map((tenths): Statement => ({ kind: 'vital', vital: 'temperature', value: { celsius: tenths / 10 } })),
);

const text = fc.constantFrom('penicillin', 'fell 10 m at 2:15', 'no known ones', 'a', 'ran, slipped; fell');

const other = fc.oneof(
  fc
    .record({ topic: fc.constantFrom(...TOPICS), text, present: fc.boolean() })
    .map((facts): Statement => ({ kind: 'history', ...facts })),
  fc
    .record({ care: fc.constantFrom(...CARES), site, side })
    .map((facts): Statement => ({ kind: 'care', ...facts })),
  text.map((said): Statement => ({ kind: 'note', text: said })),
  text.map((said): Statement => ({ kind: 'mark', text: said })),
  fc.record({ site, side }).map((facts): Statement => ({ kind: 'visit', ...facts })),
);

/** Any statement, findings the most often. */
export const statement = fc.oneof({ arbitrary: finding, weight: 6 }, csm, vital, other);

/** Records of up to 40 entries; every word of `heard` is the entry's own. */
export const record: fc.Arbitrary<readonly Entry[]> = fc
  .array(
    fc.record({
      said: statement,
      state: fc.constantFrom('heard' as const, 'confirmed' as const, 'struck' as const, 'replaced' as const),
      minute: fc.integer({ min: 10, max: 14 }),
    }),
    { maxLength: 40 },
  )
  .map((rows) =>
    rows.map(({ said, state, minute }, index) => made(`e${index}`, said, { state, time: `14:${minute}` })),
  );
