// The findings of a narrative, read again by the project's own reader, are the same findings. All of it is invented.

import fc from 'fast-check';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { radio, radioDetails, soap } from '../../src/handoff/index.ts';
import type { Reader } from '../../src/parse/index.ts';
import { type Entry, stands } from '../../src/record/entry.ts';
import {
  FINDINGS,
  type Finding,
  type FindingStatement,
  isPaired,
  PARTS,
  type Part,
  regionOf,
  SEVERITIES,
  SITES,
  type Site,
} from '../../src/terms/index.ts';
import { entriesOf, realReader } from '../talk-case.ts';
import { input, made } from './made-up.ts';

// The whole grammar is read again and again; a busy machine takes its time, and nothing here is about how long.
vi.setConfig({ testTimeout: 60_000 });

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

/**
 * What the reader cannot take from a sentence as it was told, by rule. Each is a rule of how talk is read, and not a
 * fault of the sentence.
 */
const EXCEPTIONS: readonly (readonly [why: string, is: (said: FindingStatement) => boolean])[] = [
  [
    'a finding that has a home of its own, told of another region, is read at home',
    ({ finding, site, side }) => {
      const home = HOMES[finding];
      return (
        home !== undefined &&
        (regionOf(home) !== regionOf(site) ||
          (site !== home && !isOfHome(home, site)) ||
          (side !== null && (home === 'pelvis' || home === 'genitals')))
      );
    },
  ],
  [
    'a digit without a side is no place by itself ("a thumb\'s breadth", "thumbs up")',
    ({ site, side }) => side === null && DIGIT_SITES.includes(site),
  ],
  [
    'a part of some places is another place: the back of the chest is the back, the mid spine the thoracic spine',
    ({ site, part }) => (part ?? []).some((word) => (PARTS_OF_OTHER_PLACES[site] ?? []).includes(word)),
  ],
  [
    'the veins of the neck without a side are read as both',
    ({ site, side }) => site === 'neck-veins' && side === null,
  ],
];

const HOMES: Partial<Record<Finding, Site>> = {
  'tracheal-deviation': 'trachea',
  'jugular-distension': 'neck-veins',
  'loose-teeth': 'teeth',
  'missing-teeth': 'teeth',
  'paradoxical-motion': 'chest',
  incontinence: 'pelvis',
  priapism: 'genitals',
  rigidity: 'abdomen',
  guarding: 'abdomen',
  distension: 'abdomen',
};
/** Within the abdomen its findings are read where they are told; the others are read at their own site alone. */
const isOfHome = (home: Site, site: Site): boolean => home === 'abdomen' && regionOf(site) === 'abdomen';

const PARTS_OF_OTHER_PLACES: Partial<Record<Site, readonly Part[]>> = {
  chest: ['posterior'],
  spine: ['mid', 'lower'],
};

const DIGIT_SITES: readonly Site[] = ['thumb', 'little-finger', 'big-toe', 'little-toe'];

const isExcepted = (said: FindingStatement): boolean => EXCEPTIONS.some(([, is]) => is(said));

type Read = Pick<FindingStatement, 'site' | 'side' | 'finding' | 'present'>;

const keyOf = ({ site, side, finding, present }: Read): string => [site, side, finding, present].join(' ');

/** The findings of the sentences that tell findings, each sentence read by itself as the reader would hear it. */
function readAgain(entries: readonly Entry[]): ReadonlySet<string> {
  const ids = new Set(entries.filter(({ kind }) => kind === 'finding').map(({ id }) => id));
  const { lines } = soap(input(entries));
  const sentences = lines
    .filter((line) => line.role === 'line' && line.entries.some((id) => ids.has(id)))
    .map(({ text }) => text);
  return new Set(
    sentences.flatMap((text) =>
      entriesOf(reader, [text])
        .filter((entry) => entry.kind === 'finding' && stands(entry))
        .map((entry) => (entry.kind === 'finding' ? keyOf(entry) : '')),
    ),
  );
}

const sidesOf = (site: Site) =>
  isPaired(site) ? (['left', 'right', 'both', null] as const) : ([null, 'left'] as const);

describe.each(SITES)('each finding at the %s, told alone', (site) => {
  test('is read as it was told', () => {
    const wrong: string[] = [];
    for (const finding of FINDINGS)
      for (const side of sidesOf(site))
        for (const present of [true, false]) {
          const said: FindingStatement = { kind: 'finding', site, side, finding, present };
          if (isExcepted(said)) continue;
          const read = [...readAgain([made('a', said)])];
          if (read.join() !== keyOf(said))
            wrong.push(`${keyOf(said)} was read as ${read.join('; ') || 'nothing'}`);
        }
    expect(wrong).toEqual([]);
  });
});

const optional = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined, freq: 4 });

const statement: fc.Arbitrary<FindingStatement> = fc
  .record({
    site: fc.constantFrom(...SITES),
    sided: fc.constantFrom('left' as const, 'right' as const, 'both' as const, null),
    finding: fc.constantFrom(...FINDINGS),
    present: fc.boolean(),
    part: optional(fc.constantFrom(...PARTS)),
    severity: optional(fc.constantFrom(...SEVERITIES)),
    size: optional(fc.constantFrom(3, 7.6)),
  })
  .map(({ site, sided, finding, present, part, severity, size }): FindingStatement => {
    const side = isPaired(site) ? sided : null;
    return {
      kind: 'finding',
      site,
      side,
      finding,
      present,
      ...(part === undefined || !present ? {} : { part: [part] }),
      ...(severity === undefined ? {} : { severity }),
      ...(size === undefined || !present ? {} : { size: { value: size, unit: 'cm' } }),
    };
  })
  .filter((said) => !isExcepted(said));

/** An examination in which no two statements contradict each other: the first word on a thing stands. */
const examination = fc
  .array(statement, { minLength: 1, maxLength: 30 })
  .map((said) =>
    said
      .filter(
        (one, index) =>
          !said
            .slice(0, index)
            .some(
              (other) =>
                other.site === one.site && other.finding === one.finding && other.present !== one.present,
            ),
      )
      .map((one, index) => made(`e${index}`, one)),
  );

/** What an examination states: both sides of a place are its left and its right. */
const parted = (keys: Iterable<string>): ReadonlySet<string> =>
  new Set(
    [...keys].flatMap((key) =>
      key.includes(' both ') ? [key.replace(' both ', ' left '), key.replace(' both ', ' right ')] : [key],
    ),
  );

/** The same examinations in every run; a failure can be repeated by whoever reads of it. */
/** Another may be tried: `ROUND_TRIP_SEED=7 npx vitest run tests/handoff/round-trip.test.ts`. */
const SEED = Number(process.env.ROUND_TRIP_SEED ?? 20260503);

/** Read once as a look and not as the list's second place (found at random). */
const BEHIND_THE_EAR = (
  [
    ['head', null],
    ['behind-ear', 'left'],
    ['buttock', 'left'],
  ] as const
).map(([site, side], index) =>
  made(`e${index}`, { kind: 'finding', site, side, finding: 'burn', present: false }),
);

test('the findings of an examination, told together, are read as they were told', () => {
  fc.assert(
    fc.property(examination, (entries) => {
      const said = parted(entries.map((entry) => (entry.kind === 'finding' ? keyOf(entry) : '')));
      expect(
        [...parted(readAgain(entries))].sort(),
        soap(input(entries))
          .lines.map(({ text }) => text)
          .join('\n'),
      ).toEqual([...said].sort());
    }),
    { numRuns: 200, seed: SEED },
  );
});

test('what is said of findings on the radio, in short and in full, is read as it was told', () => {
  fc.assert(
    fc.property(examination, (entries) => {
      const said = parted(entries.map((entry) => (entry.kind === 'finding' ? keyOf(entry) : '')));
      const chunks = [...radio(input(entries)).chunks, ...radioDetails(input(entries)).chunks];
      const sentences = chunks.flatMap(
        ({ text }) => text.replace(/ (?:break|over)$/, '').match(/[^.]+\./g) ?? [],
      );
      const read = new Set(
        sentences.flatMap((text) =>
          entriesOf(reader, [text]).flatMap((entry) =>
            entry.kind === 'finding' && stands(entry) ? [keyOf(entry)] : [],
          ),
        ),
      );
      expect([...parted(read)].sort(), chunks.map(({ text }) => text).join('\n')).toEqual([...said].sort());
    }),
    { numRuns: 100, seed: SEED, examples: [[BEHIND_THE_EAR]] },
  );
});
