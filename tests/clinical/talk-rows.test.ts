// What is reckoned from talk, from the words to the outcome, on invented patients. `met` is every criterion that is met.

import { beforeAll, describe, expect, it } from 'vitest';
import { type Reckoning, reckon } from '../../src/clinical/index.ts';
import type { Reader } from '../../src/parse/index.ts';
import { readTalk } from '../../src/record/talk/index.ts';
import { endOf, examine } from '../../src/replay/examine.ts';
import { realReader } from '../talk-case.ts';

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

const BEGINNING = { startedAt: Date.UTC(2026, 4, 3, 20, 2, 0), zone: '-06:00' };

function reckoned(lines: readonly string[]): Reckoning {
  const talk = readTalk(lines.join('\n'), BEGINNING);
  if (talk.kind === 'error') throw new Error(talk.why);
  const { state } = examine(reader, talk);
  return reckon(state.entries, { now: endOf(talk), problems: state.problemChanges });
}

interface Expected {
  readonly met?: readonly string[];
  /** criteria that must stay open, with a word of what would decide each */
  readonly open?: Readonly<Record<string, string>>;
  readonly not?: readonly string[];
  readonly burns?: string;
  readonly burnPercent?: number | null;
  /** items of the spine rules with their state */
  readonly spine?: Readonly<Record<string, string>>;
  readonly patterns?: readonly string[];
  readonly conflicts?: readonly string[];
  readonly rechecks?: readonly string[];
  readonly scores?: Partial<Reckoning['scores']>;
  /** the problems in order, as shown */
  readonly problems?: readonly string[];
}

/** The part of a reckoning that a row speaks of. */
function partOf(of: Reckoning, expected: Expected): Expected {
  const state = (wanted: string) => of.flags.filter((flag) => flag.state === wanted);
  const open = Object.keys(expected.open ?? {}).map((rule) => {
    const flag = state('unknown').find((each) => each.rule === rule);
    const word = expected.open?.[rule] ?? '';
    return [rule, flag?.missing.join('; ').includes(word) === true ? word : flag?.missing.join('; ')];
  });
  const spine = Object.keys(expected.spine ?? {}).map((item) => [
    item,
    of.spine.items.find((each) => each.item === item)?.state,
  ]);
  const all: Expected = {
    met: state('met').map(({ rule }) => rule),
    open: Object.fromEntries(open),
    not: (expected.not ?? []).filter((rule) => state('not-met').some((flag) => flag.rule === rule)),
    burns: of.burns?.text ?? 'none',
    burnPercent: of.scores.burnPercent,
    spine: Object.fromEntries(spine),
    patterns: of.patterns.map(({ pattern }) => pattern),
    conflicts: of.conflicts.map(({ conflict }) => conflict),
    rechecks: of.rechecks.map(({ text }) => text.replace(/ at \d\d:\d\d/, '')),
    scores: Object.fromEntries(
      Object.entries(of.scores).filter(([name]) => name in (expected.scores ?? {})),
    ) as Expected['scores'] & object,
    problems: of.problems.map(({ text }) => text),
  };
  return Object.fromEntries(Object.entries(all).filter(([name]) => name in expected));
}

type Row = readonly [title: string, lines: readonly string[], expected: Expected];

const BURNS: readonly Row[] = [
  [
    'a blistered arm beside a red chest',
    [
      'forty two year old male',
      'burns to the whole right arm, blistered, and the front of the chest, red only',
    ],
    { burns: 'burns: 9 % by rule of nines, 9.5 % by Lund-Browder', burnPercent: 9 },
  ],
  [
    'a scalded child, where the chart by age leads',
    [
      'three year old girl',
      'partial thickness burns to both thighs and the front of the belly',
      'full thickness burn to the left hand',
    ],
    { burns: 'burns: 29 % by rule of nines, 22 % by Lund-Browder', burnPercent: 22 },
  ],
  [
    'palms at two places',
    [
      'partial thickness burn on the left flank about three palms',
      'another burn on the right shoulder the size of two palms',
    ],
    { burns: 'burns: 5 % as told in palms or percent', burnPercent: 5 },
  ],
  [
    'a percentage said of two places at once',
    ['burns to about twenty percent of the body, arms and chest, partial thickness'],
    { burnPercent: 20 },
  ],
  ['white and leathery skin', ['burn to the left lower arm, white and leathery'], { burnPercent: 3 }],
  ['superficial redness alone', ['superficial burn on the face'], { burnPercent: 0 }],
  ['a place too small for the chart', ['burn on the tip of the nose'], { burns: 'burns: size not known' }],
  ['burns denied', ['no burns to the arms'], { burns: 'none', burnPercent: null }],
  ['a hand within a burned arm, once', ['left arm burned, the left hand full thickness'], { burnPercent: 9 }],
  [
    'burns with a broken thigh',
    ['burns to both arms partial thickness, right femur fracture, twenty two years old'],
    { met: ['burns-with-trauma'], burnPercent: 18 },
  ],
];

const CHILDREN: readonly Row[] = [
  [
    'nine years, under the line for the age',
    [
      'nine year old boy hit by a car while on his bike',
      'blood pressure eighty six over fifty, pulse one thirty',
    ],
    {
      met: ['systolic-child'],
      open: { 'pedestrian-or-cyclist': 'significant' },
      not: ['pulse-over-systolic'],
      scores: { shockIndex: 1.51, meanArterialPressure: 62 },
      spine: { 'dangerous mechanism': 'present', 'age 16 or over': 'absent' },
    },
  ],
  [
    'ten years, pulse over pressure, and a high fall',
    ['ten year old girl fell from a tree about twelve feet', 'pulse one thirty, bp one hundred over sixty'],
    { met: ['pulse-over-systolic', 'fall-over-10-feet'], not: ['systolic-child', 'systolic-10-to-64'] },
  ],
  [
    'two years, a fall down the stairs on the head',
    ['two year old boy fell down the stairs, twelve steps, bump on the forehead'],
    { met: ['low-fall-head'], open: { 'fall-over-10-feet': 'how far' } },
  ],
  [
    'eight months, off a bed',
    ['eight month old baby boy fell off the bed', 'sats ninety four on room air'],
    { met: [], open: { 'low-fall-head': 'head' }, not: ['room-air-saturation'] },
  ],
];

const SENSES: readonly Row[] = [
  [
    'a component that cannot be tested gives no sum',
    ['GCS eyes two, verbal not testable, motor four', 'pupils equal but sluggish'],
    { met: ['commands'], scores: { gcs: null } },
  ],
  [
    'an eye swollen shut leaves the motor response to decide',
    ['GCS eye not testable, swollen shut, verbal five motor six'],
    { met: [], not: ['commands'], scores: { gcs: null } },
  ],
  [
    'a falling sum, and one pupil of two',
    [
      '[00:00:00] GCS is fifteen',
      '[00:10:00] eyes three verbal four motor six',
      '[00:20:00] eyes two verbal three motor five',
      'left pupil blown and not reactive, right pupil reactive',
    ],
    { met: ['commands'], patterns: ['gcs-falling'], scores: { gcs: 10 } },
  ],
  ['no response but to pain', ['only responds to pain'], { met: ['commands'], scores: { gcs: null } }],
  ['no breathing', ['unresponsive, not breathing, no pulse'], { met: ['commands', 'respiratory-distress'] }],
  [
    'pupils called equal that are not',
    ['pupils equal and reactive, left four millimetres, right six millimetres'],
    { conflicts: ['not-equal'] },
  ],
];

const LIMBS: readonly Row[] = [
  [
    'a tourniquet on the other arm than the wound',
    ['deep laceration on the left forearm, bleeding heavily, spurting', 'tourniquet on the right upper arm'],
    {
      met: ['active-bleeding'],
      conflicts: ['care-without-finding'],
      rechecks: ['recheck the right hand since the tourniquet: circulation, sensation, motion'],
    },
  ],
  [
    'a lost fingertip with all else whole',
    ['amputated tip of the left index finger, bleeding controlled with a dressing', 'CSM intact in all four'],
    { met: [], not: ['amputation', 'spinal-injury-with-loss'] },
  ],
  [
    'a lost hand whose fingers move',
    ['left hand amputated at the wrist', 'left fingers move well'],
    { met: [], open: { amputation: 'above the wrist' }, conflicts: ['amputated'] },
  ],
  [
    'a leg crushed, without a pulse',
    ['quad bike rolled over on him', 'right leg crushed below the knee, no pulse in the right foot'],
    { met: ['ruined-extremity'], rechecks: [] },
  ],
  ['a crushed hand', ['crush injury to the right hand, fingers mangled'], { met: ['ruined-extremity'] }],
  ['a degloved foot', ['degloving injury to the left foot'], { met: ['ruined-extremity'] }],
  [
    'a pulse lost below a splint, on a cold foot',
    [
      'right ankle deformed, pedal pulse present, sensation and motion intact right foot',
      '[00:05:00] splint on the right lower leg',
      '[00:10:00] no pedal pulse in the right foot, foot is cold',
    ],
    {
      met: ['ruined-extremity'],
      patterns: ['limb-pulse-lost'],
      conflicts: ['opposite'],
      rechecks: ['recheck the right foot since the splint: sensation, motion'],
      problems: ['right foot: circulation absent, cold', 'right ankle: deformity'],
    },
  ],
  [
    'all checked again after the splint',
    [
      'left wrist deformed and swollen',
      'CSM intact left hand',
      '[00:05:00] splinted the left wrist',
      '[00:06:00] radial pulse is good, he can feel me touching, wiggles his fingers',
    ],
    { met: [], rechecks: [], conflicts: [] },
  ],
  [
    'a splint on the other wrist',
    ['right wrist swollen and deformed', 'splint applied to the left wrist'],
    { conflicts: ['care-without-finding'] },
  ],
  [
    'a tourniquet for an open fracture below it',
    ['open fracture of the right tib fib, bone showing', 'tourniquet high on the right thigh'],
    { met: ['active-bleeding'], conflicts: [] },
  ],
  [
    'both thighs and the pelvis',
    [
      'fell fifteen metres off the cliff',
      'both thighs deformed and swollen, angulated',
      'pelvis unstable',
      'respirations thirty two and laboured, sats eighty seven on room air',
    ],
    {
      met: [
        'pelvic-fracture',
        'proximal-long-bones',
        'breathing-rate',
        'respiratory-distress',
        'room-air-saturation',
        'fall-over-10-feet',
      ],
    },
  ],
  [
    'an upper arm and a thigh',
    ['right upper arm deformed, left femur deformed with shortening', 'traction splint on the left leg'],
    { met: ['proximal-long-bones'], problems: ['right upper arm: deformity', 'left thigh: deformity'] },
  ],
  [
    'a shot calf with its pulse',
    ['gunshot wound to the right calf', 'pedal pulse present and strong'],
    { met: [] },
  ],
];

const TRUNK: readonly Row[] = [
  [
    'a chest that moves the wrong way',
    ['ribs on the left are tender with crepitus, paradoxical movement on the left chest'],
    { met: ['chest-wall'] },
  ],
  ['a stable pelvis', ['pelvis stable and not tender'], { met: [], not: ['pelvic-fracture'] }],
  [
    'a stab to the chest',
    [
      'stab wound to the left upper chest, sucking',
      'chest seal applied to the left chest',
      'resps thirty four, shallow and laboured, sats eighty four percent on room air',
    ],
    {
      met: ['penetrating-injury', 'breathing-rate', 'respiratory-distress', 'room-air-saturation'],
      conflicts: [],
      problems: ['left chest: puncture'],
    },
  ],
];

const SPINE: readonly Row[] = [
  [
    'a tender level with all four whole',
    [
      'sixty six year old woman, slipped on ice from standing and hit her head',
      'midline tenderness at C five, no numbness or tingling',
      'CSM good in all four limbs',
      'alert and oriented times four, GCS fifteen',
      'she takes apixaban',
      'denies alcohol',
    ],
    {
      met: ['low-fall-head', 'anticoagulant'],
      not: ['spinal-injury-with-loss', 'commands', 'amputation'],
      spine: {
        'posterior midline cervical tenderness': 'present',
        'focal neurological deficit': 'absent',
        'altered alertness': 'absent',
        intoxication: 'absent',
        'painful distracting injury': 'unknown',
        'age 65 or over': 'present',
        'paraesthesias in extremities': 'absent',
      },
    },
  ],
  [
    'numb feet and a painful neck after a dive',
    ['dove into shallow water', 'neck pain', 'sensation absent both feet, motion absent both feet'],
    {
      met: ['spinal-injury-with-loss'],
      spine: {
        'focal neurological deficit': 'present',
        'dangerous mechanism': 'present',
        'posterior midline cervical tenderness': 'unknown',
      },
    },
  ],
  [
    'everything denied in one breath',
    [
      'no midline neck tenderness, GCS fifteen alert and oriented times four, no alcohol, no numbness, CSM intact in all four, pain zero out of ten',
      'thirty year old male',
    ],
    {
      met: [],
      not: ['commands'],
      spine: {
        'posterior midline cervical tenderness': 'absent',
        'focal neurological deficit': 'absent',
        'altered alertness': 'absent',
        intoxication: 'absent',
        'painful distracting injury': 'absent',
        'dangerous mechanism': 'unknown',
        'turns the neck 45 degrees left and right': 'unknown',
      },
    },
  ],
  [
    'a broken collarbone and a knock to the head',
    [
      'nineteen year old woman, skier collided with a tree at about thirty miles an hour',
      'GCS fourteen, eyes four verbal four motor six',
      'left clavicle deformed and tender',
      'no neck tenderness',
    ],
    {
      met: [],
      not: ['commands'],
      spine: {
        'altered alertness': 'present',
        'posterior midline cervical tenderness': 'unknown',
        'dangerous mechanism': 'unknown',
      },
    },
  ],
];

const MECHANISMS: readonly Row[] = [
  [
    'bucked off a horse, on warfarin',
    [
      'fifty eight year old woman was bucked off her horse and landed on her back',
      'lumbar spine tender at L two',
      "she's on warfarin",
    ],
    { met: ['rider-separated', 'anticoagulant'], open: { 'spinal-injury-with-loss': 'sensation' } },
  ],
  [
    'thrown from a motorcycle',
    ['motorcycle crash, thrown about thirty feet'],
    { met: ['rider-separated'], spine: { 'dangerous mechanism': 'present' } },
  ],
  [
    'off a ladder at 78',
    [
      'seventy eight year old man fell off a ladder about eight feet, hit his head on the concrete',
      'takes eliquis for atrial fibrillation',
      'blood pressure one oh eight over sixty, pulse eighty eight',
    ],
    {
      met: ['systolic-65-up', 'low-fall-head', 'anticoagulant'],
      not: ['fall-over-10-feet', 'systolic-10-to-64', 'pulse-over-systolic'],
    },
  ],
  [
    'pregnant for 24 weeks',
    ['thirty one year old, twenty four weeks pregnant, low speed car crash, wearing a seatbelt'],
    { met: ['pregnancy-over-20-weeks'] },
  ],
  [
    'pregnant for 12 weeks',
    ['twenty nine year old female, twelve weeks pregnant, slipped on ice'],
    { met: [], not: ['pregnancy-over-20-weeks'], open: { 'fall-over-10-feet': 'how far' } },
  ],
  [
    'a fall of unknown height',
    ['he fell off the wall'],
    { met: [], open: { 'fall-over-10-feet': 'how far' } },
  ],
];

const TIME: readonly Row[] = [
  [
    'pulse up and pressure down',
    [
      '[00:00:00] pulse ninety, blood pressure one thirty over eighty',
      '[00:10:00] pulse one hundred and ten, pressure one ten over seventy',
      '[00:20:00] pulse one thirty, pressure ninety over sixty',
      'age forty',
    ],
    {
      met: ['pulse-over-systolic'],
      patterns: ['pulse-up-pressure-down'],
      scores: { shockIndex: 1.44, meanArterialPressure: 70 },
    },
  ],
  [
    'a widening pulse pressure',
    [
      '[00:00:00] pulse ninety four, blood pressure one thirty over eighty, respirations sixteen regular',
      '[00:15:00] pulse fifty two, blood pressure one eighty eight over ninety, respirations irregular at ten',
    ],
    { met: [], patterns: ['pulse-pressure-widening'] },
  ],
  [
    'cooling',
    [
      'temperature thirty six point two celsius',
      '[00:20:00] temperature thirty four point one celsius, skin cool',
    ],
    { patterns: ['cooling'] },
  ],
  ['a pulse far from the last', ['pulse eighty', 'pulse one forty'], { conflicts: ['far-from-last'] }],
  [
    'a corrected pressure leaves no flag behind',
    ['age thirty', 'blood pressure eighty over fifty', 'correction, blood pressure one eighty over fifty'],
    { met: [], not: ['systolic-10-to-64'] },
  ],
  [
    'a corrected side leaves no problem behind',
    ['left knee swollen, correction, right knee'],
    { problems: ['right knee: swelling'], conflicts: [] },
  ],
  [
    'a swelling denied and then found',
    ['[00:00:10] no swelling of the left knee', '[00:05:00] left knee is swollen'],
    { conflicts: ['opposite'] },
  ],
  [
    'room air and then oxygen',
    ['sats eighty eight on room air, started oxygen', '[00:05:00] sats ninety five on six litres'],
    { met: ['room-air-saturation'] },
  ],
  [
    'a cold sleeper in the snow',
    [
      'sixty year old man',
      'temperature thirty one point five celsius, skin cold and pale',
      'responds to voice, GCS eyes three verbal four motor six',
      'pulse forty four, respirations nine',
    ],
    { met: ['breathing-rate'], not: ['commands'], scores: { gcs: 13 } },
  ],
];

const MORE: readonly Row[] = [
  [
    'buried, breathing and well but for the saturation',
    [
      'buried in an avalanche for ten minutes, twenty seven year old female',
      'breathing at twenty four, pulse one oh four, bp one eighteen over seventy four, sats ninety three percent on air',
    ],
    {
      met: [],
      not: ['breathing-rate', 'room-air-saturation', 'systolic-10-to-64', 'pulse-over-systolic'],
      scores: { shockIndex: 0.88, meanArterialPressure: 89 },
    },
  ],
  [
    'over the handlebars at twelve',
    [
      'twelve year old boy went over the handlebars, left upper quadrant tender and guarding',
      'pulse one twenty, bp ninety five over fifty five',
    ],
    {
      met: ['pulse-over-systolic', 'pedestrian-or-cyclist'],
      not: ['systolic-10-to-64'],
      spine: { 'dangerous mechanism': 'present' },
      problems: ['left upper quadrant: tenderness, guarding'],
    },
  ],
  [
    'a pressure by palpation',
    ['bp seventy by palp, age fifty five'],
    { met: ['systolic-10-to-64'], scores: { meanArterialPressure: null, shockIndex: null } },
  ],
  [
    'a saturation whose air nobody said',
    ['sats ninety eight percent', 'put him on oxygen', 'sats ninety nine percent'],
    { met: [], open: { 'room-air-saturation': 'room air' } },
  ],
  [
    'a bound pelvis',
    ['pelvis tender, pelvic binder on'],
    { met: ['pelvic-fracture'], problems: ['pelvis: tenderness'] },
  ],
  [
    'a neck without pain',
    ['no neck pain, no midline tenderness'],
    { met: [], spine: { 'posterior midline cervical tenderness': 'absent' } },
  ],
  [
    'a foot that goes numb',
    ['[00:00:00] left foot sensation intact', '[00:20:00] left foot numb'],
    { conflicts: ['opposite'], spine: { 'paraesthesias in extremities': 'present' } },
  ],
  [
    'a move to the litter',
    ['[00:00:00] CSM intact in all four', '[00:10:00] mark that, we moved him to the litter'],
    {
      rechecks: ['left hand', 'right hand', 'left foot', 'right foot'].map(
        (end) => `recheck the ${end} since the move: circulation, sensation, motion`,
      ),
    },
  ],
  ['six stairs', ['fell down six stairs'], { met: [], spine: { 'dangerous mechanism': 'present' } }],
  [
    'a lost foot, with the tourniquet above it',
    ['amputation of the left foot at the ankle, tourniquet on left lower leg'],
    { met: ['active-bleeding'], open: { amputation: 'above the wrist or ankle' }, conflicts: [] },
  ],
  [
    'no thinners, not pregnant',
    ['no blood thinners, not pregnant, thirty year old woman'],
    { met: [], not: ['anticoagulant', 'pregnancy-over-20-weeks'] },
  ],
  [
    'a low fall without a blow to the head at 81',
    ['eighty one year old woman fell from standing, no head injury', 'right hip tender'],
    { met: [], not: ['low-fall-head', 'fall-over-10-feet'], open: { 'pelvic-fracture': 'suspected' } },
  ],
  [
    'rear-ended, and walked',
    [
      'he was rear-ended at a stop light, got out and walked around',
      'his neck is sore, thirty four year old man',
    ],
    {
      met: [],
      spine: {
        'simple rear-end crash': 'present',
        'walking at any time since': 'present',
        'posterior midline cervical tenderness': 'unknown',
      },
    },
  ],
  [
    'a scalded infant',
    ['six month old girl', 'scald to the face and neck and the front of the chest, partial thickness'],
    { burns: 'burns: 14.5 % by rule of nines, 18 % by Lund-Browder', burnPercent: 18 },
  ],
];

const LISTS: readonly Row[] = [
  [
    'put first by voice',
    ['left wrist deformed', 'right knee bruised', 'top problem is the right knee'],
    { problems: ['right knee: contusion', 'left wrist: deformity'] },
  ],
  [
    'struck by voice, and added',
    [
      'left wrist deformed',
      'right knee bruised',
      'take the knee off the problem list',
      'add hypothermia to the problem list',
    ],
    { problems: ['left wrist: deformity', 'hypothermia', 'right knee: contusion'] },
  ],
  [
    'added and then struck by its words',
    ['add problem suspected hypothermia', 'strike hypothermia from the problem list'],
    { problems: ['suspected hypothermia'] },
  ],
];

describe.each([
  ['burns', BURNS],
  ['children', CHILDREN],
  ['the senses', SENSES],
  ['limbs', LIMBS],
  ['the trunk', TRUNK],
  ['the spine', SPINE],
  ['mechanisms', MECHANISMS],
  ['change over time', TIME],
  ['other things', MORE],
  ['the problem list', LISTS],
] as const)('of %s', (_, rows) => {
  it.each(rows)('%s', (_title, lines, expected) => {
    expect(partOf(reckoned(lines), expected)).toEqual(expected);
  });
});

describe('every talk above', () => {
  it('clears nothing and names no destination', () => {
    for (const [, lines] of [
      ...BURNS,
      ...CHILDREN,
      ...SENSES,
      ...LIMBS,
      ...TRUNK,
      ...SPINE,
      ...MECHANISMS,
      ...TIME,
      ...MORE,
    ])
      expect(JSON.stringify(reckoned(lines))).not.toMatch(
        /\b(?:is|was|been) cleared\b|trauma cent(?:er|re)\b|transport to/i,
      );
  });
});
