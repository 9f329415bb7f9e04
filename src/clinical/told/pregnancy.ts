// Pregnancy as told, with its weeks where they were said.

import type { Topic } from '../../terms/index.ts';
import { type Answer, no, unknown, yes } from '../answer.ts';
import type { Chart } from '../chart.ts';
import { answerOf, mentionOf } from './mention.ts';
import { NUMBER, numberIn } from './number.ts';
import { sexOf } from './sex.ts';

const TOPICS: readonly Topic[] = [
  'past-history',
  'symptoms',
  'events',
  'chief-complaint',
  'sex',
  'mechanism',
];
const PREGNANT = /\bpregnan(?:t|cy)\b/;
const WEEKS = new RegExp(`(${NUMBER})[\\s-]*(weeks?|months?)`, 'i');
const WEEKS_PER_MONTH = 4.345;
const LIMIT_WEEKS = 20;

/** Whether the patient is pregnant: said, denied, ruled out by a male sex as told, or unknown. */
export function pregnancyOf(chart: Chart): Answer {
  const told = answerOf(mentionOf(chart, TOPICS, PREGNANT), 'whether pregnant', 'pregnant');
  const { sex, entries } = chart.ask(sexOf);
  return told.truth === 'unknown' && told.evidence.length === 0 && sex === 'male'
    ? no(entries, 'male')
    : told;
}

/** Whether pregnant for more than 20 weeks. */
export function pregnantOver20Weeks(chart: Chart): Answer {
  const pregnant = chart.ask(pregnancyOf);
  if (pregnant.truth !== 'yes') return pregnant;
  const weeks = pregnant.evidence.flatMap((entry) => {
    const match = 'text' in entry && entry.text !== undefined ? WEEKS.exec(entry.text) : null;
    const value = match === null ? null : numberIn(match[1] ?? '');
    if (value === null) return [];
    return [/^month/i.test(match?.[2] ?? '') ? value * WEEKS_PER_MONTH : value];
  });
  if (weeks.length === 0) return unknown(['how many weeks pregnant'], pregnant.evidence, 'pregnant');
  const most = Math.max(...weeks);
  const because = `pregnant, about ${Math.round(most)} weeks`;
  return most > LIMIT_WEEKS ? yes(pregnant.evidence, because) : no(pregnant.evidence, because);
}
