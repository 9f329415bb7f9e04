// Random records for property tests: few sites, values and moments, so that entries meet; everything is invented.

import fc from 'fast-check';
import type { Entry, EntryState } from '../../src/record/entry.ts';
import type { Aspect, Care, Finding, Side, Site, Statement, Topic } from '../../src/terms/index.ts';
import { minute } from './build.ts';

const side = fc.constantFrom<Side | null>('left', 'right', 'both', null);
const sites = fc.constantFrom<Site>(
  'head',
  'skull',
  'neck',
  'cervical-spine',
  'thoracic-spine',
  'lumbar-spine',
  'chest',
  'ribs',
  'abdomen',
  'pelvis',
  'back',
  'shoulder',
  'arm',
  'upper-arm',
  'forearm',
  'wrist',
  'hand',
  'leg',
  'thigh',
  'knee',
  'foot',
);
const findings = fc.constantFrom<Finding>(
  'deformity',
  'tenderness',
  'puncture',
  'bleeding',
  'instability',
  'swelling',
  'burn',
  'amputation',
  'numbness',
  'abnormality',
);

// Words that rules look for, most of the time none.
const quality = fc.option(
  fc.constantFrom(
    ['partial-thickness'],
    ['superficial'],
    ['3 palms'],
    ['20 percent'],
    ['open-fracture'],
    ['fracture'],
    ['crushed'],
    ['active'],
  ),
  { freq: 3 },
);

const finding: fc.Arbitrary<Statement> = fc
  .record({
    kind: fc.constant('finding' as const),
    site: sites,
    side,
    finding: findings,
    present: fc.boolean(),
    words: quality,
  })
  .map(({ words, ...said }) => ({ ...said, ...(words === null ? {} : { quality: words }) }));

const measure = fc.constantFrom(
  {},
  {},
  { pulse: 'radial' as const },
  { warmth: 'cold' as const },
  { capRefillSeconds: 4 },
  { strength: 'weak' as const },
);

const csm: fc.Arbitrary<Statement> = fc
  .record({
    kind: fc.constant('csm' as const),
    site: fc.constantFrom('hand' as const, 'foot' as const),
    side,
    aspect: fc.constantFrom<Aspect>('circulation', 'sensation', 'motion'),
    present: fc.boolean(),
    more: measure,
  })
  .map(({ more, ...said }) => ({ ...said, ...more }));

const part = (most: number) => fc.oneof(fc.integer({ min: 1, max: most }), fc.constant('NT' as const));

const vital: fc.Arbitrary<Statement> = fc
  .oneof(
    fc.integer({ min: 40, max: 150 }).map((rate) => ({ vital: 'pulse' as const, value: { rate } })),
    fc.integer({ min: 5, max: 40 }).map((rate) => ({ vital: 'respirations' as const, value: { rate } })),
    fc
      .tuple(fc.integer({ min: 60, max: 180 }), fc.option(fc.integer({ min: 30, max: 59 })))
      .map(([systolic, diastolic]) => ({ vital: 'blood-pressure' as const, value: { systolic, diastolic } })),
    fc.tuple(fc.integer({ min: 80, max: 100 }), fc.option(fc.boolean())).map(([percent, onOxygen]) => ({
      vital: 'oxygen-saturation' as const,
      value: onOxygen === null ? { percent } : { percent, onOxygen },
    })),
    fc
      .constantFrom(33.5, 36, 37, 39.5)
      .map((celsius) => ({ vital: 'temperature' as const, value: { celsius } })),
    fc
      .tuple(part(4), part(5), part(6))
      .map(([eye, verbal, motor]) => ({ vital: 'gcs' as const, value: { eye, verbal, motor } })),
    fc.tuple(fc.option(fc.boolean()), fc.option(fc.boolean())).map(([left, right]) => ({
      vital: 'pupils' as const,
      value: {
        ...(left === null ? {} : { leftReactive: left }),
        ...(right === null ? {} : { rightReactive: right }),
      },
    })),
    fc
      .tuple(
        fc.constantFrom('A' as const, 'V' as const, 'P' as const, 'U' as const),
        fc.integer({ min: 2, max: 4 }),
      )
      .map(([avpu, orientation]) => ({ vital: 'responsiveness' as const, value: { avpu, orientation } })),
  )
  .map((reading): Statement => ({ kind: 'vital', ...reading }));

const history: fc.Arbitrary<Statement> = fc.oneof(
  fc
    .constantFrom(4, 9, 10, 40, 64, 65, 80)
    .map((years): Statement => ({ kind: 'history', topic: 'age', text: `${years}`, years })),
  fc
    .constantFrom<[Topic, string, boolean]>(
      ['mechanism', 'fell twenty feet', true],
      ['mechanism', 'fell six feet', true],
      ['mechanism', 'not ejected', true],
      ['mechanism', 'thrown from a horse and hit his head', true],
      ['events', 'he is drunk', true],
      ['last-intake', 'no alcohol', false],
      ['past-history', 'twenty four weeks pregnant', true],
      ['sex', 'female', true],
      ['medications', 'warfarin', true],
      ['medications', 'no medications', false],
    )
    .map(([topic, text, present]): Statement => ({ kind: 'history', topic, text, present })),
);

const care: fc.Arbitrary<Statement> = fc.record({
  kind: fc.constant('care' as const),
  care: fc.constantFrom<Care>('tourniquet', 'splint', 'oxygen', 'collar'),
  site: fc.constantFrom<Site>('thigh', 'forearm', 'neck'),
  side,
});

const words: fc.Arbitrary<Statement> = fc
  .constantFrom('moved to the litter', 'maybe ejected', 'smells of alcohol')
  .map((text) => ({ kind: 'note', text }));

const visit: fc.Arbitrary<Statement> = fc.record({ kind: fc.constant('visit' as const), site: sites, side });

const statement = fc.oneof(
  { weight: 5, arbitrary: finding },
  { weight: 4, arbitrary: vital },
  { weight: 3, arbitrary: csm },
  { weight: 2, arbitrary: history },
  { weight: 1, arbitrary: care },
  { weight: 1, arbitrary: visit },
  { weight: 1, arbitrary: words },
);

/** Up to forty entries at few moments, many of them the same moment. */
export const record: fc.Arbitrary<readonly Entry[]> = fc
  .array(
    fc.tuple(
      statement,
      fc.constantFrom(0, 0, 3, 10, 20),
      fc.constantFrom<EntryState>('heard', 'confirmed', 'confirmed', 'struck'),
    ),
    { maxLength: 40 },
  )
  .map((rows) =>
    rows.map(
      ([said, at, state], index): Entry => ({
        id: `e${index}`,
        at: minute(at),
        heardAt: minute(at),
        heard: '',
        state,
        ...said,
      }),
    ),
  );
