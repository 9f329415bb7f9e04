// Sentences with a sampled vital sign and numbers in range, and some with numbers that cannot be.

import { VITALS } from '../../../src/terms/index.ts';
import type { Chance } from '../../seeded.ts';
import type { Numbers, Phrase, Sampler } from './sampler.ts';
import { type Pattern, type Sentence, stating } from './sentence.ts';

const tenths = (chance: Chance, least: number, most: number): number =>
  chance.whole(least * 10, most * 10) / 10;

const RANGES: Readonly<Record<string, readonly [number, number]>> = {
  rate: [41, 160],
  systolic: [90, 200],
  diastolic: [40, 85],
  percent: [80, 100],
  score: [0, 10],
  seconds: [1, 6],
  orientation: [1, 4],
  liters: [2, 15],
  both: [2, 7],
  one: [2, 7],
  other: [2, 7],
  left: [2, 7],
  right: [2, 7],
  eye: [1, 4],
  verbal: [1, 5],
  motor: [1, 6],
  total: [3, 15],
};

/** Numbers that a patient can have, which agree with each other. */
export const inRange =
  (chance: Chance): Numbers =>
  (names, tag) => {
    const values: Record<string, number> = {};
    for (const name of names) {
      const [least, most] = RANGES[name] ?? [1, 9];
      values[name] = chance.whole(least, most);
    }
    if (tag('vital') === 'respirations' && values.rate !== undefined) values.rate = chance.whole(6, 40);
    if (values.count !== undefined) {
      values.window = chance.pick([15, 30]);
      values.count = tag('vital') === 'respirations' ? chance.whole(3, 9) : chance.whole(14, 30);
      if (values.rate !== undefined) values.rate = (values.count * 60) / values.window;
    }
    const fahrenheit = tag('unit') === 'fahrenheit' || (tag('unit') === null && chance.maybe(0.5));
    if (names.includes('degrees'))
      values.degrees = fahrenheit ? tenths(chance, 94, 104) : tenths(chance, 31, 41);
    // "Forty four" may be either; another number leaves no doubt that tenths follow.
    if (names.includes('tenths')) {
      const whole = Math.floor(values.degrees ?? 37);
      values.degrees = whole % 10 === 0 ? whole + 1 : whole;
    }
    // Two sizes agree with what is said of them.
    if (values.one !== undefined && tag('equal') === 'yes') values.other = values.one;
    if (values.one !== undefined && tag('equal') === 'no') values.other = values.one === 7 ? 2 : 7;
    // Two numbers without "over" between them must not read as one, nor lie close to each other.
    if (tag('split') !== null) values.systolic = chance.whole(101, 199);
    if (names.includes('glucose'))
      values.glucose = tag('unit') === 'mmol' ? tenths(chance, 2, 22) : chance.whole(40, 400);
    const { eye, verbal, motor } = values;
    if (eye !== undefined && verbal !== undefined && motor !== undefined && values.total !== undefined)
      values.total = eye + verbal + motor;
    // Points that were lost make the total that is said with them.
    if (tag('lost') !== null)
      values.total = Number(tag('eye') ?? 4) + Number(tag('verbal') ?? 5) + Number(tag('motor') ?? 6);
    return values;
  };

const rounded = (value: number, places: number): number => Math.round(value * 10 ** places) / 10 ** places;

function celsius(degrees: number, unit: string | null): number {
  const fahrenheit = unit === 'fahrenheit' || (unit === null && degrees >= 70);
  return rounded(fahrenheit ? ((degrees - 32) * 5) / 9 : degrees, 1);
}

const given = (pairs: Readonly<Record<string, unknown>>): Pattern =>
  Object.fromEntries(Object.entries(pairs).filter(([, value]) => value !== null && value !== undefined));

// Of words that contradict each other ("fixed, slow to react") nothing is asked.
function yes(phrase: Phrase, key: string): boolean | null {
  const said = new Set(phrase.tags(key));
  return said.size === 1 ? said.has('yes') : null;
}

const score = (phrase: Phrase, name: string): unknown =>
  phrase.tag(name) === 'NT' ? 'NT' : phrase.numbers[name];

/** The value that the numbers and tags of a phrase fix. */
function valueFor(vital: string, phrase: Phrase): Pattern {
  const n = phrase.numbers;
  const quality = phrase.tags('quality');
  const qualities = { quality: quality.length > 0 ? quality : null };
  switch (vital) {
    case 'pulse':
    case 'respirations':
      return given({
        rate: n.rate ?? ((n.count ?? Number.NaN) * 60) / (n.window ?? 1),
        ...qualities,
      });
    case 'blood-pressure':
      return given({
        systolic: n.systolic,
        diastolic: n.diastolic,
        method: phrase.tag('palpation') === null ? null : 'palpation',
      });
    case 'oxygen-saturation':
      return given({
        percent: n.percent,
        onOxygen: phrase.tag('oxygen') !== null ? true : phrase.tag('air') !== null ? false : null,
      });
    case 'temperature':
      return { celsius: celsius((n.degrees ?? 0) + (n.tenths ?? 0) / 10, phrase.tag('unit')) };
    case 'glucose': {
      const value = n.glucose ?? 0;
      return { mgPerDl: phrase.tag('unit') === 'mmol' ? Math.round(value * 18.016) : value };
    }
    case 'skin':
      return given({
        color: phrase.tag('color'),
        temperature: phrase.tag('temp'),
        moisture: phrase.tag('moisture'),
      });
    case 'pupils':
      return given({
        leftMm: n.left ?? n.both ?? (n.one === n.other ? n.one : undefined),
        rightMm: n.right ?? n.both ?? (n.one === n.other ? n.one : undefined),
        equal: n.one === undefined ? yes(phrase, 'equal') : n.one === n.other,
        round: yes(phrase, 'round'),
        reactive: yes(phrase, 'reactive'),
        leftReactive: yes(phrase, 'left-reactive'),
        rightReactive: yes(phrase, 'right-reactive'),
        ...qualities,
      });
    case 'responsiveness': {
      const said = phrase.tag('orientation');
      return given({
        avpu: phrase.tag('avpu'),
        orientation: n.orientation ?? (said ? Number(said) : null),
      });
    }
    case 'gcs':
      return given({
        eye: score(phrase, 'eye'),
        verbal: score(phrase, 'verbal'),
        motor: score(phrase, 'motor'),
        total: phrase.tags('eye').concat(phrase.tags('verbal'), phrase.tags('motor')).includes('NT')
          ? null
          : n.total,
      });
    default:
      return given({ score: n.score, seconds: n.seconds });
  }
}

// "No rate" (a pulse of which only the rhythm is said) gives its words and no number.
const withoutNaN = (value: Pattern): Pattern =>
  Object.fromEntries(Object.entries(value).filter(([, slot]) => !Number.isNaN(slot)));

function measured(sampler: Sampler, vital: string): Sentence {
  const { chance, say } = sampler;
  const rule = `vitals.${vital}`;
  const phrase = say(rule, inRange(chance));
  if (phrase.tag('heading') !== null) {
    const rate = chance.whole(50, 120);
    const named = vital === 'pulse' ? [stating({ kind: 'vital', vital, value: { rate } })] : [];
    return { rule, lines: [vital === 'pulse' ? `${phrase.text}, ${rate}` : phrase.text], wants: named };
  }
  const value = withoutNaN(valueFor(vital, phrase));
  // "Ninety seven on fifteen litres" is a saturation only behind another one.
  const before = phrase.tag('follows') === null ? '' : 'sats ninety one, ';
  // What was counted is beats or breaths by what was named.
  const named = phrase.tag('needs') === null ? [] : ['pulse'];
  return {
    rule,
    lines: [...named, `${before}${phrase.text}`],
    wants: [stating({ kind: 'vital', vital, value })],
  };
}

// Two numbers that contradict each other, or one that no patient has.
const IMPOSSIBLE: readonly (readonly [vital: string, name: string, least: number, most: number])[] = [
  ['pulse', 'rate', 400, 1900],
  ['respirations', 'rate', 110, 900],
  ['blood-pressure', 'diastolic', 201, 290],
  ['oxygen-saturation', 'percent', 101, 190],
  ['temperature', 'degrees', 140, 900],
  ['glucose', 'glucose', 1600, 4000],
  ['gcs', 'total', 16, 40],
  ['pain-score', 'score', 11, 90],
];

/** A number that cannot be makes a note and no vital of its kind. */
function impossible(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const [vital, name, least, most] = chance.pick(IMPOSSIBLE);
  for (;;) {
    const phrase = say(`vitals.${vital}`, (names, tag) => {
      const values = { ...inRange(chance)(names, tag), [name]: chance.whole(least, most) };
      return values;
    });
    const counted = phrase.tags('num').includes('count');
    if (!phrase.tags('num').includes(name) || counted || phrase.tag('unit') === 'mmol') continue;
    // "One seventy two fifty four" can be parted into two numbers that can be.
    if (phrase.tag('follows') !== null || phrase.tag('split') !== null) continue;
    return {
      rule: `vitals.${vital} impossible`,
      lines: [phrase.text],
      wants: [stating({ kind: 'note' })],
      never: [stating({ kind: 'vital', vital })],
    };
  }
}

const IN_GRAMMAR = VITALS.filter((vital) => vital !== 'capillary-refill');

/** The sentences about vital signs. */
export const vitalSentences = (sampler: Sampler): readonly Sentence[] => [
  ...IN_GRAMMAR.flatMap((vital) => Array.from({ length: 110 }, () => measured(sampler, vital))),
  ...Array.from({ length: 80 }, () => impossible(sampler)),
];
