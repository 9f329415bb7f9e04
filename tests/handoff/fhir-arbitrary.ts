// Invented records by chance with every kind of entry and every slot there is, for the tests of the FHIR document.

import fc from 'fast-check';
import type { Entry } from '../../src/record/entry.ts';
import {
  CARES,
  DIGITS,
  FINDINGS,
  PARTS,
  PULSE_POINTS,
  SEVERITIES,
  SIDES,
  SITES,
  STRENGTHS,
  type Statement,
  TOPICS,
  WARMTHS,
} from '../../src/terms/index.ts';
import { statement as common } from './arbitrary.ts';
import { made } from './made-up.ts';

const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined, freq: 2 });

/** A slot that is not there is left out, as the record has it. */
const without = (facts: object): object =>
  Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined));

const statementOf = (kind: Entry['kind'], slots: Record<string, fc.Arbitrary<unknown>>) =>
  fc.record(slots).map((facts) => ({ kind, ...without(facts) }) as Statement);

/** Words that a page, a person or a recogniser could give, with all that markup and the standard forbid. */
const said = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    'no known ones',
    'Tom & <Anna> "Ray"',
    'a\u0000b\n\tc',
    '\ud800',
    'père 🚑',
    '5 < 6',
  ),
  fc.string({ unit: 'binary', maxLength: 20 }),
);
const words = maybe(fc.array(said, { maxLength: 2 }));
const side = fc.constantFrom(...SIDES, null);
const whole = (min: number, max: number) => fc.integer({ min, max });

const finding = statementOf('finding', {
  site: fc.constantFrom(...SITES),
  side,
  finding: fc.constantFrom(...FINDINGS),
  present: fc.boolean(),
  part: maybe(fc.uniqueArray(fc.constantFrom(...PARTS), { maxLength: 3 })),
  level: maybe(fc.constantFrom('C5', 'T4', 'L2', 'rib-7')),
  size: maybe(fc.constantFrom({ value: 3, unit: 'cm' }, { value: 7.6, unit: 'cm' })),
  severity: maybe(fc.oneof(fc.constantFrom<string | number>(...SEVERITIES), whole(0, 10))),
  count: maybe(whole(1, 5)),
  quality: words,
});

const csm = statementOf('csm', {
  site: fc.constantFrom('hand', 'foot'),
  side,
  aspect: fc.constantFrom('circulation', 'sensation', 'motion'),
  present: fc.boolean(),
  capRefillSeconds: maybe(whole(1, 6)),
  pulse: maybe(fc.constantFrom(...PULSE_POINTS)),
  warmth: maybe(fc.constantFrom(...WARMTHS)),
  digit: maybe(fc.constantFrom(...DIGITS)),
  strength: maybe(fc.oneof(fc.constantFrom<string | number>(...STRENGTHS), whole(0, 5))),
  quality: words,
});

const rating = (max: number) => maybe(fc.oneof(whole(1, max), fc.constant('NT')));

/** Each with all its slots; those of one that may be left out are. */
const VALUES: Readonly<Record<string, Record<string, fc.Arbitrary<unknown>>>> = {
  pulse: { rate: maybe(whole(30, 200)), quality: words },
  respirations: { rate: maybe(whole(4, 60)), quality: words },
  'blood-pressure': {
    systolic: whole(60, 220),
    diastolic: fc.oneof(whole(20, 59), fc.constant(null)),
    method: maybe(fc.constant('palpation')),
  },
  'oxygen-saturation': { percent: whole(50, 100), onOxygen: maybe(fc.boolean()) },
  temperature: { celsius: whole(280, 420).map((tenths) => tenths / 10) },
  glucose: { mgPerDl: whole(20, 500) },
  skin: { color: maybe(said), temperature: maybe(said), moisture: maybe(said) },
  pupils: {
    equal: maybe(fc.boolean()),
    round: maybe(fc.boolean()),
    reactive: maybe(fc.boolean()),
    leftMm: maybe(whole(1, 8)),
    rightMm: maybe(whole(1, 8)),
    leftReactive: maybe(fc.boolean()),
    rightReactive: maybe(fc.boolean()),
    quality: words,
  },
  responsiveness: { avpu: maybe(fc.constantFrom('A', 'V', 'P', 'U')), orientation: maybe(whole(0, 4)) },
  gcs: { eye: rating(4), verbal: rating(5), motor: rating(6), total: maybe(whole(3, 15)) },
  'pain-score': { score: whole(0, 10) },
  'capillary-refill': { seconds: whole(1, 8) },
};

const vital = fc.oneof(
  ...Object.entries(VALUES).map(([name, slots]) =>
    fc
      .record(slots)
      .map((value) => ({ kind: 'vital', vital: name, value: without(value) }) as unknown as Statement),
  ),
);

const history = statementOf('history', {
  topic: fc.constantFrom(...TOPICS),
  text: said,
  present: maybe(fc.boolean()),
}).chain((one) =>
  one.kind === 'history' && (one.topic === 'age' || one.topic === 'weight')
    ? maybe(whole(1, 100)).map((number) =>
        number === undefined ? one : { ...one, [one.topic === 'age' ? 'years' : 'kg']: number },
      )
    : fc.constant(one),
);

const care = statementOf('care', {
  care: fc.constantFrom(...CARES),
  site: maybe(fc.constantFrom(...SITES)),
  side: maybe(side),
  text: maybe(said),
});

const kept = fc.oneof(statementOf('note', { text: said }), statementOf('mark', { text: said }));

const known = fc.constantFrom({}, { side: 'carried' }, { present: 'inferred', site: 'carried' });

/** Records of up to 30 entries in every state, each of the kinds about as often as findings. */
export const fhirRecord: fc.Arbitrary<readonly Entry[]> = fc
  .array(
    fc.record({
      what: fc.oneof(finding, csm, vital, vital, history, history, care, kept, common),
      state: fc.constantFrom('heard', 'confirmed', 'struck', 'replaced'),
      minute: whole(10, 14),
      known,
      doubt: fc.constantFrom([], ['Left or right?']),
      heard: said,
    }),
    { maxLength: 30, size: 'max' },
  )
  .map((rows) =>
    rows.map(({ what, minute, ...facts }, index) =>
      made(`e${index}`, what, { ...facts, time: `14:${minute}` } as Parameters<typeof made>[2]),
    ),
  );
