// The criteria that the guideline leaves to the responder's judgement, as far as what was told decides them.

import { type Answer, all, no, unknown, yes } from '../answer.ts';
import { isBreak } from '../broken.ts';
import type { Chart } from '../chart.ts';
import { deniedInAll } from '../said.ts';
import { answerOf, EVENT_TOPICS, mentionOf } from '../told/mention.ts';
import { BODY } from '../zones.ts';
import { ageBetween } from './readings.ts';

/** From memory: oral and injected anticoagulants, by generic and by the names people use. Aspirin is none. */
const ANTICOAGULANT =
  /\b(?:anti-?coagula\w+|blood thinners?|warfarin|coumadin|apixaban|eliquis|rivaroxaban|xarelto|dabigatran|pradaxa|edoxaban|lixiana|heparin|enoxaparin|lovenox|dalteparin)\b/;

/** Anticoagulants as told under medications or past history; allergies do not count. */
export function anticoagulant(chart: Chart): Answer {
  const told = answerOf(
    mentionOf(chart, ['medications', 'past-history'], ANTICOAGULANT),
    'whether on an anticoagulant',
    'anticoagulant',
  );
  if (told.truth !== 'unknown' || told.evidence.length > 0) return told;
  // "No medications" denies all of them, but only where no medication was told elsewhere.
  const none = chart.told('medications').filter((entry) => entry.present === false);
  const some = chart.told('medications').filter((entry) => entry.present !== false);
  const denied = none.filter((entry) =>
    /^\W*(?:no\b|none|nil|nothing|denies|medications?|meds|any)/i.test(entry.text),
  );
  return denied.length > 0 && some.length === 0 ? no(denied, 'no medications') : told;
}

export const childAbuse = (chart: Chart): Answer =>
  all([
    ageBetween(chart, 0, 17),
    answerOf(
      mentionOf(chart, EVENT_TOPICS, /\b(?:child abuse|abused?|non-?accidental)\b/),
      'whether child abuse is suspected',
      'abuse suspected',
    ),
  ]);

export const specialNeeds = (chart: Chart): Answer =>
  answerOf(
    mentionOf(
      chart,
      ['past-history', 'symptoms', 'events'],
      /\b(?:tracheostomy|home ventilator|ventilator|dialysis|feeding tube|special needs|special care)\b/,
    ),
    'whether there are special, high-resource needs',
    'special needs',
  );

const TRAUMA = [
  'deformity',
  'contusion',
  'abrasion',
  'puncture',
  'laceration',
  'crepitus',
  'instability',
  'avulsion',
  'amputation',
  'impaled-object',
  'paradoxical-motion',
] as const;

/** A burn together with another injury. */
export function burnsWithTrauma(chart: Chart): Answer {
  const burns = chart.found('burn');
  const injuries = [
    ...TRAUMA.flatMap((finding) => chart.found(finding)),
    ...chart.found('abnormality').filter(isBreak),
  ];
  const burned = burns.length > 0 ? yes(burns, 'burn') : deniedInAll(chart, BODY, ['burn']);
  const injured = injuries.length > 0 ? yes(injuries, 'other injury') : unknown(['other injuries']);
  return all([burned, injured]);
}

/** Nobody but the responder can say. */
export const ownJudgement = (): Answer => unknown(["the responder's own judgement"]);
