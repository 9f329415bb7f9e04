// Field triage at both edges of every number, against the published criteria; all patients are invented.
// Source: National guideline for the field triage of injured patients, 2021 (Newgard CD et al. J Trauma Acute Care
// Surg 2022;93(2):e49-e60), criteria read in NEMSIS v3.5.1 eInjury_v3.xsd; the edge rows are computed from them.

import { describe, expect, it } from 'vitest';
import { CRITERIA, flags } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import {
  age,
  avpu,
  breaths,
  cared,
  clock,
  csm,
  csmAllFour,
  denied,
  entry,
  found,
  gcs,
  pressure,
  pulse,
  saturation,
  told,
  vital,
} from '../clinical/build.ts';

const stateOf = (rule: string, entries: readonly Entry[]): string | undefined =>
  flags(entries, { now: clock(30) }).find((flag) => flag.rule === rule)?.state;

type Row = readonly [string, readonly Entry[], 'met' | 'not-met' | 'unknown'];
const check = (rule: string, rows: readonly Row[]): void => {
  describe(`the criterion ${rule}`, () => {
    it.each(rows)('%s', (_, entries, state) => {
      expect(stateOf(rule, entries)).toBe(state);
    });
  });
};

describe('the criteria', () => {
  it('are the 17 red and 15 yellow codes that NEMSIS v3.5.1 keeps active, each once', () => {
    // Read: NEMSIS v3.5.1 eInjury types TraumaTriageCriteriaSteps1and2 and 3and4.
    const red =
      '2903015 2903009 2903039 2903005 2903013 2903021 2903003 2903001 2903023 2903041 2903037 2903033 2903035 2903029 2903031 2903025 2903027';
    const yellow =
      '2904009 2904011 2904007 2904029 2904013 2904035 2904001 2904031 2904033 2904019 2904039 2904037 2904021 2904027 2904023';
    expect(
      CRITERIA.filter((each) => each.level === 'red')
        .map((each) => each.code)
        .sort(),
    ).toEqual(red.split(' ').sort());
    expect(
      CRITERIA.filter((each) => each.level === 'yellow')
        .map((each) => each.code)
        .sort(),
    ).toEqual(yellow.split(' ').sort());
  });

  it('are all unknown before anything is said, and each says what would decide it', () => {
    for (const flag of flags([], { now: clock(0) })) {
      expect([flag.rule, flag.state]).toEqual([flag.rule, 'unknown']);
      expect(flag.missing.length).toBeGreaterThan(0);
    }
  });

  it('name no destination', () => {
    const words = flags([pressure(60, 40), age(30), pulse(140)], { now: clock(0) })
      .map((flag) => flag.text)
      .join(' ');
    expect(words).not.toMatch(/hospital|trauma cent(er|re)|transport to/i);
  });
});

check('systolic-child', [
  ['age 9, 87 is under 88', [age(9), pressure(87, 50)], 'met'],
  ['age 9, 88 is not', [age(9), pressure(88, 50)], 'not-met'],
  ['age 0, 69 is under 70', [age(0), pressure(69, 50)], 'met'],
  ['age 0, 70 is not', [age(0), pressure(70, 50)], 'not-met'],
  ['age 10 is another line', [age(10), pressure(60, 50)], 'not-met'],
  ['no age, 87', [pressure(87, 50)], 'unknown'],
  ['no age, but 88 is over every line of these ages', [pressure(88, 50)], 'not-met'],
  ['no pressure', [age(9)], 'unknown'],
]);
check('systolic-10-to-64', [
  ['age 10, 89', [age(10), pressure(89, 50)], 'met'],
  ['age 10, 90', [age(10), pressure(90, 50)], 'not-met'],
  ['age 64, 90', [age(64), pressure(90, 50)], 'not-met'],
  ['age 64, 89', [age(64), pressure(89, 50)], 'met'],
  ['age 65 is another line', [age(65), pressure(80, 50)], 'not-met'],
  ['age 9 is another line', [age(9), pressure(80, 50)], 'not-met'],
  ['by palpation 80', [age(30), pressure(80, null)], 'met'],
]);
check('systolic-65-up', [
  ['age 65, 109', [age(65), pressure(109, 50)], 'met'],
  ['age 65, 110', [age(65), pressure(110, 50)], 'not-met'],
  ['age 64, 109', [age(64), pressure(109, 50)], 'not-met'],
  ['no age, 109', [pressure(109, 50)], 'unknown'],
  ['no age, 110', [pressure(110, 50)], 'not-met'],
]);
check('pulse-over-systolic', [
  ['100 over 100 is not over', [age(30), pulse(100), pressure(100, 60)], 'not-met'],
  ['101 over 100', [age(30), pulse(101), pressure(100, 60)], 'met'],
  ['101 over 100 at 10', [age(10), pulse(101), pressure(100, 60)], 'met'],
  ['101 over 100 at 9', [age(9), pulse(101), pressure(100, 60)], 'not-met'],
  ['no age', [pulse(101), pressure(100, 60)], 'unknown'],
  ['no pulse', [age(30), pressure(100, 60)], 'unknown'],
  ['taken half an hour apart', [age(30), pulse(120, 0), pressure(100, 60, 30)], 'unknown'],
  [
    'over the pressure of another set only',
    [age(30), pulse(110, 0), pressure(112, 70, 0), pulse(80, 10), pressure(100, 60, 10)],
    'not-met',
  ],
  [
    'over the last pressure, which was not taken again',
    [age(30), pulse(90, 0), pressure(100, 60, 0), pulse(120, 9)],
    'met',
  ],
]);
check('breathing-rate', [
  ['9', [breaths(9)], 'met'],
  ['10', [breaths(10)], 'not-met'],
  ['29', [breaths(29)], 'not-met'],
  ['30', [breaths(30)], 'met'],
  ['once 32, then 20', [breaths(32, 0), breaths(20, 10)], 'met'],
  ['no rate', [], 'unknown'],
]);
check('room-air-saturation', [
  ['89 on room air', [saturation(89, false)], 'met'],
  ['90 on room air', [saturation(90, false)], 'not-met'],
  ['89 on oxygen', [saturation(89, true)], 'unknown'],
  ['97 on oxygen', [saturation(97, true)], 'unknown'],
  ['97, air not said', [saturation(97)], 'unknown'],
  ['85, air not said', [saturation(85)], 'unknown'],
]);
check('commands', [
  ['motor 5', [gcs(4, 5, 5)], 'met'],
  ['motor 6', [gcs(4, 5, 6)], 'not-met'],
  ['motor NT', [gcs(4, 5, 'NT')], 'unknown'],
  ['eye NT, motor 6', [gcs('NT', 5, 6)], 'not-met'],
  ['unresponsive', [avpu('U')], 'met'],
  ['alert says nothing of commands', [avpu('A')], 'unknown'],
]);
check('penetrating-injury', [
  ['a puncture of the chest', [found('ribs', 'left', 'puncture')], 'met'],
  ['a puncture of the thigh', [found('thigh', 'right', 'puncture')], 'met'],
  ['a puncture of the forearm is not proximal', [found('forearm', 'right', 'puncture')], 'unknown'],
  ['a puncture of the arm, where not said', [found('arm', 'right', 'puncture')], 'unknown'],
  ['no puncture of the chest alone', [denied('chest', null, 'puncture')], 'unknown'],
  [
    'no puncture anywhere that counts',
    [
      ...(['head', 'neck', 'chest', 'abdomen', 'pelvis', 'back'] as const).map((site) =>
        denied(site, null, 'puncture'),
      ),
      ...(['shoulder', 'upper-arm', 'thigh'] as const).map((site) => denied(site, 'both', 'puncture')),
    ],
    'not-met',
  ],
  [
    'the same without the right thigh',
    [
      ...(['head', 'neck', 'chest', 'abdomen', 'pelvis', 'back'] as const).map((site) =>
        denied(site, null, 'puncture'),
      ),
      ...(['shoulder', 'upper-arm'] as const).map((site) => denied(site, 'both', 'puncture')),
      denied('thigh', 'left', 'puncture'),
    ],
    'unknown',
  ],
]);
check('skull-deformity', [
  ['deformity of the skull', [found('skull', null, 'deformity')], 'met'],
  ['bruising behind the ear', [found('behind-ear', 'left', 'contusion')], 'met'],
  ['fluid from the nose asks', [found('nose', null, 'fluid')], 'unknown'],
  ['deformity of the jaw is not the skull', [found('jaw', null, 'deformity')], 'unknown'],
  ['no deformity of the skull alone', [denied('skull', null, 'deformity')], 'unknown'],
  [
    'no deformity, no fluid from the ears, no bruising behind them',
    [
      denied('skull', null, 'deformity'),
      denied('ear', 'both', 'fluid'),
      denied('behind-ear', 'both', 'contusion'),
    ],
    'not-met',
  ],
  ['no tenderness of the skull says nothing of deformity', [denied('skull', null, 'tenderness')], 'unknown'],
]);
check('spinal-injury-with-loss', [
  [
    'tender neck and numb feet',
    [found('cervical-spine', null, 'tenderness'), csm('foot', 'both', 'sensation', false)],
    'met',
  ],
  ['tender neck alone', [found('cervical-spine', null, 'tenderness')], 'unknown'],
  ['tender neck, all four intact', [found('cervical-spine', null, 'tenderness'), ...csmAllFour()], 'not-met'],
  ['numb feet, spine not said', [csm('foot', 'both', 'sensation', false)], 'unknown'],
  [
    'tender neck, one numb hand below a deformed wrist',
    [
      found('cervical-spine', null, 'tenderness'),
      found('wrist', 'left', 'deformity'),
      csm('hand', 'left', 'sensation', false),
    ],
    'unknown',
  ],
  [
    'no tenderness along the spine does not rule it out',
    (['cervical-spine', 'thoracic-spine', 'lumbar-spine'] as const).map((site) =>
      denied(site, null, 'tenderness'),
    ),
    'unknown',
  ],
]);
check('chest-wall', [
  ['unstable ribs', [found('ribs', 'left', 'instability')], 'met'],
  ['paradoxical motion', [found('chest', null, 'paradoxical-motion')], 'met'],
  ['tender ribs', [found('ribs', 'left', 'tenderness')], 'unknown'],
  ['crepitus asks', [found('ribs', 'left', 'crepitus')], 'unknown'],
  [
    'stable, no deformity',
    [denied('chest', null, 'instability'), denied('chest', null, 'deformity')],
    'not-met',
  ],
  [
    'one side stable',
    [denied('ribs', 'left', 'instability'), denied('ribs', 'left', 'deformity')],
    'unknown',
  ],
]);
check('pelvic-fracture', [
  ['unstable pelvis', [found('pelvis', null, 'instability')], 'met'],
  [
    'a binder on a tender pelvis',
    [found('pelvis', null, 'tenderness'), cared('pelvic-binder', 'pelvis', null)],
    'met',
  ],
  ['a binder', [cared('pelvic-binder', 'pelvis', null)], 'met'],
  ['tender pelvis asks', [found('pelvis', null, 'tenderness')], 'unknown'],
  [
    'stable and not tender',
    [denied('pelvis', null, 'instability'), denied('pelvis', null, 'tenderness')],
    'not-met',
  ],
  ['stable, tenderness not said', [denied('pelvis', null, 'instability')], 'unknown'],
]);
check('proximal-long-bones', [
  ['both thighs', [found('thigh', 'both', 'deformity')], 'met'],
  [
    'a thigh and an upper arm',
    [found('thigh', 'left', 'deformity'), found('upper-arm', 'right', 'crepitus')],
    'met',
  ],
  ['one thigh', [found('thigh', 'left', 'deformity')], 'unknown'],
  [
    'one thigh, the others denied',
    [
      found('thigh', 'left', 'deformity'),
      denied('thigh', 'right', 'deformity'),
      denied('upper-arm', 'both', 'deformity'),
    ],
    'not-met',
  ],
  [
    'two findings on one thigh are one bone',
    [found('thigh', 'left', 'deformity'), found('thigh', 'left', 'crepitus')],
    'unknown',
  ],
  ['two forearms are not proximal', [found('forearm', 'both', 'deformity')], 'unknown'],
]);
check('ruined-extremity', [
  ['crushed as said', [found('hand', 'left', 'deformity', {}, { quality: ['crushed'] })], 'met'],
  ['no radial pulse', [csm('hand', 'left', 'circulation', false, {}, { pulse: 'radial' })], 'met'],
  ['slow refill asks', [csm('hand', 'left', 'circulation', false, {}, { capRefillSeconds: 4 })], 'unknown'],
  [
    'no pulse below a tourniquet asks for the pulse before it',
    [
      cared('tourniquet', 'upper-arm', 'left', 0),
      csm('hand', 'left', 'circulation', false, {}, { pulse: 'radial' }),
    ],
    'unknown',
  ],
  [
    'pulses in all four, limbs not deformed',
    [...csmAllFour(), denied('arm', 'both', 'deformity'), denied('leg', 'both', 'deformity')],
    'not-met',
  ],
  ['pulses in all four alone', csmAllFour(), 'unknown'],
]);
check('amputation', [
  ['at the forearm', [found('forearm', 'left', 'amputation')], 'met'],
  ['of a finger', [found('index-finger', 'left', 'amputation'), ...csmAllFour()], 'not-met'],
  [
    'of a hand asks, whatever else is intact',
    [found('hand', 'left', 'amputation'), ...csmAllFour()],
    'unknown',
  ],
  ['at the wrist asks', [found('wrist', 'left', 'amputation')], 'unknown'],
  ['hands and feet intact', csmAllFour(), 'not-met'],
  ['hands intact alone', csmAllFour().slice(0, 6), 'unknown'],
]);
check('active-bleeding', [
  ['a tourniquet', [cared('tourniquet', 'thigh', 'left')], 'met'],
  ['packing', [cared('wound-packing', 'groin', 'left')], 'met'],
  ['a dressing alone', [cared('dressing', 'thigh', 'left')], 'unknown'],
  ['bleeding asks', [found('thigh', 'left', 'bleeding')], 'unknown'],
  ['no bleeding of the head alone', [denied('head', null, 'bleeding')], 'unknown'],
]);
check('respiratory-distress', [
  ['laboured', [breaths(24, 0, ['labored'])], 'met'],
  ['easy', [breaths(16, 0, ['easy'])], 'not-met'],
  ['a rate alone', [breaths(16)], 'unknown'],
  ['no breathing at all', [vital({ vital: 'respirations', value: { quality: ['apneic'] } })], 'met'],
  ['bagged as noted asks', [entry({ kind: 'note', text: 'assisted with bag valve mask' })], 'unknown'],
  ['short of breath as told', [told('symptoms', 'short of breath')], 'unknown'],
]);

const ten = 'fell ten feet off a ladder';
check('fall-over-10-feet', [
  ['ten feet', [told('mechanism', ten)], 'not-met'],
  ['eleven feet', [told('mechanism', 'fell eleven feet off a ladder')], 'met'],
  ['20 ft', [told('mechanism', 'fall of about 20 ft')], 'met'],
  ['three metres is under', [told('mechanism', 'fell three metres')], 'not-met'],
  ['four metres', [told('mechanism', 'fell four metres')], 'met'],
  ['how far not said', [told('mechanism', 'fell off a rock')], 'unknown'],
  ['from standing', [told('mechanism', 'fell from standing')], 'not-met'],
  ['from standing, off a ledge', [told('mechanism', 'fell from standing off a ledge')], 'unknown'],
  ['tripped and fell down the bank, how far not said', [told('mechanism', 'fell down the bank')], 'unknown'],
  ['did not fall', [told('mechanism', 'did not fall')], 'not-met'],
  ['another mechanism', [told('mechanism', 'hit by a falling branch thirty feet long')], 'unknown'],
]);
check('low-fall-head', [
  ['age 65, head struck', [age(65), told('mechanism', 'slipped and hit his head')], 'met'],
  ['age 64', [age(64), told('mechanism', 'slipped and hit his head')], 'not-met'],
  ['age 5', [age(5), told('mechanism', 'fell and hit her head')], 'met'],
  ['age 6', [age(6), told('mechanism', 'fell and hit her head')], 'not-met'],
  ['no age', [told('mechanism', 'fell and hit her head')], 'unknown'],
  ['age 70, no head injury', [age(70), told('mechanism', 'fell from standing, no head injury')], 'not-met'],
  ['age 70, head not said', [age(70), told('mechanism', 'fell')], 'unknown'],
]);
check('ejection', [
  ['ejected', [told('mechanism', 'ejected from the truck')], 'met'],
  ['not ejected', [told('mechanism', 'rollover, not ejected')], 'not-met'],
  ['not said', [told('mechanism', 'rollover')], 'unknown'],
  ['only in a note', [{ ...told('mechanism', ''), kind: 'note', text: 'maybe ejected' } as Entry], 'unknown'],
]);
check('intrusion', [
  ['19 inches', [told('mechanism', 'nineteen inches of intrusion')], 'met'],
  ['18 inches asks where', [told('mechanism', '18 inches of intrusion')], 'unknown'],
  ['cut out', [told('mechanism', 'had to be extricated')], 'met'],
  ['not said', [told('mechanism', 'car crash')], 'unknown'],
]);
check('intrusion', [
  [
    'over 12 inches where the patient sat cannot be told from elsewhere',
    [told('mechanism', '13 inches of intrusion')],
    'unknown',
  ],
  ['12 inches leave the extrication open', [told('mechanism', 'twelve inches of intrusion')], 'unknown'],
  ['12 inches and none', [told('mechanism', 'twelve inches of intrusion, not extricated')], 'not-met'],
  ['13 inches and none', [told('mechanism', '13 inches of intrusion, not extricated')], 'unknown'],
  ['30 cm, just under 12 inches', [told('mechanism', 'intrusion of 30 cm, not entrapped')], 'not-met'],
  ['46 cm, just over 18 inches', [told('mechanism', 'intrusion of 46 centimetres')], 'met'],
  ['entrapped', [told('mechanism', 'pinned in the car')], 'met'],
]);
check('death-in-vehicle', [
  ['the driver died', [told('mechanism', 'car crash, the driver died')], 'met'],
  ['nobody said', [told('mechanism', 'car crash')], 'unknown'],
]);
check('vehicle-telemetry', [
  ['what it said is for the responder', [told('mechanism', 'telemetry sent by the car')], 'unknown'],
  ['not said', [], 'unknown'],
]);
check('child-abuse', [
  ['suspected in a child', [age(4), told('events', 'possible child abuse')], 'met'],
  ['in an adult it is another matter', [age(18), told('events', 'abused')], 'not-met'],
  ['not said', [age(4)], 'unknown'],
]);
check('special-needs', [
  ['a home ventilator', [told('past-history', 'on a home ventilator')], 'met'],
  ['dialysis', [told('past-history', 'dialysis three times a week')], 'met'],
  ['not said', [], 'unknown'],
]);
check('own-judgement', [['is never decided here', [pressure(60, 40), age(30)], 'unknown']]);
check('unrestrained-child', [
  ['age 9 unrestrained', [age(9), told('mechanism', 'car crash, unrestrained in the back')], 'met'],
  ['age 10 unrestrained', [age(10), told('mechanism', 'car crash, unrestrained in the back')], 'not-met'],
  ['age 4, no car seat', [age(4), told('mechanism', 'car crash, no car seat')], 'met'],
  ['age 4, buckled in', [age(4), told('mechanism', 'car crash, buckled in')], 'not-met'],
]);
check('rider-separated', [
  ['thrown from a horse', [told('mechanism', 'thrown from her horse')], 'met'],
  ['fell off a horse asks', [told('mechanism', 'fell off her horse')], 'unknown'],
  ['a fall on foot', [told('mechanism', 'thrown by a wave')], 'unknown'],
]);
check('pedestrian-or-cyclist', [
  ['run over', [told('mechanism', 'pedestrian run over by a car')], 'met'],
  ['over the bars', [told('mechanism', 'went over the handlebars of his mountain bike')], 'met'],
  ['struck asks', [told('mechanism', 'cyclist struck by a car')], 'unknown'],
  ['a motorcycle is not a bicycle', [told('mechanism', 'thrown from his motorbike')], 'unknown'],
]);
check('anticoagulant', [
  ['warfarin', [told('medications', 'takes warfarin')], 'met'],
  ['no blood thinners', [told('medications', 'no blood thinners')], 'not-met'],
  ['another medicine', [told('medications', 'lisinopril')], 'unknown'],
  ['an allergy is none', [told('allergies', 'heparin')], 'unknown'],
  ['no medications', [told('medications', 'no medications', false)], 'not-met'],
]);
check('pregnancy-over-20-weeks', [
  ['21 weeks', [told('past-history', '21 weeks pregnant')], 'met'],
  ['20 weeks', [told('past-history', 'twenty weeks pregnant')], 'not-met'],
  ['weeks not said', [told('past-history', 'pregnant')], 'unknown'],
  ['not pregnant', [told('past-history', 'not pregnant')], 'not-met'],
  ['male', [told('sex', 'male')], 'not-met'],
  ['female', [told('sex', 'female')], 'unknown'],
]);
check('burns-with-trauma', [
  ['burn and laceration', [found('arm', 'left', 'burn'), found('leg', 'left', 'laceration')], 'met'],
  ['burn alone', [found('arm', 'left', 'burn')], 'unknown'],
]);
