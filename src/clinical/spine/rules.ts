// The items of NEXUS and of the Canadian C-spine rule, in their order, each with what was said of it.

import type { Entry } from '../../record/entry.ts';
import { type Answer, any, no, unknown, yes } from '../answer.ts';
import type { Chart, Rule } from '../chart.ts';
import { foundAt } from '../said.ts';
import type { Source } from '../source.ts';
import { fallIn } from '../told/fall.ts';
import { answerOf, EVENT_TOPICS, mentionOf } from '../told/mention.ts';
import { NUMBER, numberIn } from '../told/number.ts';
import { ejection } from '../triage/mechanism.ts';
import { ageBetween } from '../triage/readings.ts';
import { type SpineItem, spineItem } from './item.ts';
import * as sign from './signs.ts';

export const NEXUS_SOURCE: Source = {
  cite: 'NEXUS: Hoffman JR et al. N Engl J Med 2000;343:94-99; definitions Ann Emerg Med 1998;32:461-469',
  mark: 'read',
};

export const CANADIAN_SOURCE: Source = {
  cite: 'Canadian C-spine rule: Stiell IG et al. JAMA 2001;286:1841-1848',
  mark: 'read',
  note: 'figure as quoted in N Engl J Med 2003;349:2510-2518; who it applies to from memory',
};

const told =
  (pattern: RegExp, question: string, because: string): Rule<Answer> =>
  (chart) =>
    answerOf(mentionOf(chart, EVENT_TOPICS, pattern), question, because);

const STAIRS = new RegExp(`(${NUMBER})\\s*(?:stairs?|steps)\\b`, 'gi');
const FALL_STAIRS = 5;
const SPEED = new RegExp(
  `(${NUMBER})\\s*(miles (?:an|per) hour|mph|m p h|km ?/ ?h|kph|k p h|kilomet(?:re|er)s? (?:an|per) hour)`,
  'gi',
);
const FAST_KM_H = 100;
const KM_PER_MILE = 1.609344;

const textOf = (entry: Entry): string => ('text' in entry && entry.text !== undefined ? entry.text : '');

/** The greatest number that the pattern finds, each through `value`; null where it finds none. */
function greatest(text: string, pattern: RegExp, value: (n: number, unit: string) => number): number | null {
  const found = [...text.matchAll(pattern)].flatMap(([, n, unit]) => {
    const number = numberIn(n ?? '');
    return number === null ? [] : [value(number, unit ?? '')];
  });
  return found.length === 0 ? null : Math.max(...found);
}

const stairsIn = (text: string): number => greatest(text, STAIRS, (n) => n) ?? 0;
const speedIn = (text: string): number =>
  greatest(text, SPEED, (n, unit) => (/^m/i.test(unit) ? n * KM_PER_MILE : n)) ?? 0;

const FALL = /\b(?:fall(?:en|s)?|fell)\b/;
const FALL_FEET = 3;
const DANGEROUS =
  /\b(?:diving|dived|dove|head ?first|axial|landed on (?:his|her|their|my|the) head|roll(?:ed)?[- ]?over|atv|quad(?: bike)?|four[- ]wheeler|snow ?(?:mobile|machine)|jet ski|dirt bike|moped|motor ?(?:cycle|bike)|bicycles?|bik(?:e|es|er|ing)|cycl(?:ist|ing)|(?:handle ?|over the )bars)\b/;

/** Fall of 3 feet or 5 stairs, axial load, fast crash, rollover, ejection, motorised recreation, bicycle. */
function dangerousMechanism(chart: Chart): Answer {
  const fall = mentionOf(chart, EVENT_TOPICS, FALL);
  const high = fall.said.filter((entry) => {
    const told = fallIn(textOf(entry));
    return (
      told?.ofPatient === true &&
      ((told.feet ?? 0) >= FALL_FEET - 1e-6 || stairsIn(textOf(entry)) >= FALL_STAIRS)
    );
  });
  const question = 'whether the mechanism was dangerous (a fall of 3 feet, a load on the head, a fast crash)';
  const fell: Answer =
    high.length > 0
      ? { truth: 'yes', evidence: high, missing: [], because: ['fall'] }
      : unknown([question], fall.said);
  const events = EVENT_TOPICS.flatMap((topic) => chart.told(topic)).filter(
    (entry) => entry.present !== false,
  );
  const fast = events.filter((entry) => speedIn(entry.text) > FAST_KM_H);
  const speed: Answer = fast.length > 0 ? yes(fast, 'over 100 km/h') : unknown([question]);
  return any([fell, speed, told(DANGEROUS, question, 'mechanism')(chart), ejection(chart)]);
}

const flip = (answer: Answer): Answer => ({
  ...answer,
  truth: answer.truth === 'yes' ? 'no' : answer.truth === 'no' ? 'yes' : 'unknown',
});

/** Turning the neck 45 degrees both ways is the rule's last step: only what was found against it can be known here. */
function canRotate(chart: Chart): Answer {
  const stiff = foundAt(chart, ['neck', 'cervical-spine'], ['limited-motion']);
  return stiff.length > 0
    ? no(stiff, 'limited')
    : unknown(['whether the neck turns 45 degrees left and right']);
}

/** Pushed into oncoming traffic, hit by a bus or large truck, rolled over or hit at high speed: no simple one. */
const NOT_SIMPLE =
  /\b(?:oncoming|bus|coach|lorry|truck|semi|eighteen wheeler|roll(?:ed)?[- ]?over|high[- ]speed|at speed)\b/;

function simpleRearEnd(chart: Chart): Answer {
  const question = 'whether it was a simple rear-end crash';
  const mention = mentionOf(chart, EVENT_TOPICS, /\brear[- ]end(?:ed)?\b/);
  const answer = answerOf(mention, question, 'as told');
  const worse = answer.evidence.filter((entry) => NOT_SIMPLE.test(textOf(entry).toLowerCase()));
  return answer.truth === 'yes' && worse.length > 0 ? no(worse, 'not a simple one as told') : answer;
}

type Item = readonly [item: string, decide: Rule<Answer>];

const as =
  (set: SpineItem['set'], step: string, source: Source) =>
  ([item, decide]: Item): Rule<SpineItem> =>
  (chart) =>
    spineItem(set, step, item, decide(chart), source);

/** Low risk by the rule only if all five are absent. */
const NEXUS: readonly Item[] = [
  ['posterior midline cervical tenderness', sign.midlineTenderness],
  ['focal neurological deficit', sign.focalDeficit],
  ['altered alertness', sign.alteredAlertness],
  ['intoxication', sign.intoxication],
  ['painful distracting injury', sign.distractingInjury],
];

const APPLIES: readonly Item[] = [
  ['age 16 or over', (chart) => ageBetween(chart, 16, Number.POSITIVE_INFINITY)],
  ['alert (GCS 15)', (chart) => flip(chart.ask(sign.alteredAlertness))],
];

const HIGH_RISK: readonly Item[] = [
  ['age 65 or over', (chart) => ageBetween(chart, 65, Number.POSITIVE_INFINITY)],
  ['dangerous mechanism', dangerousMechanism],
  ['paraesthesias in extremities', sign.paraesthesia],
];

const LOW_RISK: readonly Item[] = [
  ['simple rear-end crash', simpleRearEnd],
  ['sitting position in the emergency department', () => unknown(['it can only be seen in the department'])],
  [
    'walking at any time since',
    told(
      /\b(?:walk(?:ed|ing)|ambulat\w+|got up and|hiked out)\b/,
      'whether walking at any time since',
      'as told',
    ),
  ],
  [
    'delayed onset of neck pain',
    told(
      /\b(?:neck)\b[^.]*\b(?:later|afterwards|hours? after|next day)\b/,
      'whether neck pain came on late',
      'as told',
    ),
  ],
  ['no midline tenderness', (chart) => flip(chart.ask(sign.midlineTenderness))],
];

/** The items of NEXUS, then those of the Canadian rule, which is for those of 16 and over who are alert. */
export const SPINE_RULES: readonly Rule<SpineItem>[] = [
  ...NEXUS.map(as('nexus', 'low-risk criterion', NEXUS_SOURCE)),
  ...APPLIES.map(as('canadian', 'applies to', CANADIAN_SOURCE)),
  ...HIGH_RISK.map(as('canadian', 'high-risk factor', CANADIAN_SOURCE)),
  ...LOW_RISK.map(as('canadian', 'low-risk factor', CANADIAN_SOURCE)),
  as('canadian', 'movement', CANADIAN_SOURCE)(['turns the neck 45 degrees left and right', canRotate]),
];
