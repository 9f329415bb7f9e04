// Sentences of history: an opening with words of our own, a denial, an age, a question with its answer.

import type { Topic } from '../../../src/terms/index.ts';
import type { Phrase, Sampler } from './sampler.ts';
import { type Pattern, type Sentence, stating } from './sentence.ts';

const RULES = [
  'allergies',
  'medications',
  'past-history',
  'last-intake',
  'mechanism',
  'events',
  'chief',
  'symptoms',
  'onset',
  'provocation',
  'quality',
  'radiation',
  'time',
  'name',
  'age',
  'sex-of',
  'weight',
];

// What may be told of each topic; all invented.
const TOLD: Partial<Record<Topic, readonly string[]>> = {
  allergies: ['penicillin', 'latex', 'walnuts'],
  // None that is given in the field too: "she took her salbutamol" is care as much as history.
  medications: ['ramipril', 'amlodipine', 'levothyroxine'],
  'past-history': ['kidney stones', 'glaucoma', 'gout'],
  'last-intake': ['porridge', 'two sandwiches', 'lentil soup'],
  mechanism: ['a snow bridge', 'the old ladder'],
  events: ['the traverse', 'a misty ridge'],
  'chief-complaint': ['trouble swallowing', 'a racing heart'],
  symptoms: ['queasiness', 'sweating'],
  onset: ['lunchtime', 'the second pitch'],
  provocation: ['lying flat'],
  quality: ['a tight band', 'squeezing'],
  radiation: ['sideways', 'in waves'],
  severity: ['unbearable'],
  time: ['all evening'],
  name: ['Tamsin', 'Ludovic', 'Wilhelmina'],
  age: ['forty one'],
  weight: ['seventy'],
};

const told = (topic: string, sampler: Sampler): string =>
  sampler.chance.pick(TOLD[topic as Topic] ?? ['gravel']);

const history = (topic: string, more: Pattern = {}): Pattern => stating({ kind: 'history', topic, ...more });

const KILOGRAMS: Readonly<Record<string, number>> = { lb: 0.45359237, stone: 6.35029318 };

function numbered(phrase: Phrase, topic: string): readonly Pattern[] | null {
  const { years, weight } = phrase.numbers;
  const sex = phrase.tag('sex');
  const also = sex === null ? [] : [history('sex', { text: sex })];
  if (years !== undefined) return [history(topic, { years }), ...also];
  if (weight !== undefined) {
    const kg = Math.round(weight * (KILOGRAMS[phrase.tag('unit') ?? ''] ?? 1) * 10) / 10;
    return [history(topic, { kg })];
  }
  return topic === 'sex' ? [history(topic, sex === null ? {} : { text: sex })] : null;
}

function opened(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const rule = `history.${chance.pick(RULES)}`;
  const numbers = () => ({
    years: chance.whole(2, 94),
    months: chance.whole(2, 30),
    weight: chance.whole(12, 24),
    weeks: chance.whole(6, 40),
  });
  const phrase = say(rule, numbers, 'half past nine');
  const topic = phrase.tag('topic') ?? '';
  const known = numbered(phrase, topic);
  if (known !== null) return { rule, lines: [phrase.text], wants: known };
  if (phrase.tag('denied') !== null)
    return {
      rule,
      lines: [phrase.text],
      wants: [history(topic, { present: false })],
      never: [history(topic, { present: true })],
    };
  if (phrase.tag('mine') !== null)
    return {
      rule,
      lines: ['what is your name?', `${phrase.text} Tamsin`],
      wants: [history(topic, { text: 'Tamsin' })],
    };
  if (phrase.tag('takes') !== null || phrase.tag('noun') !== null) {
    // A topic's name may be a question too ("any allergies", "you had something to eat"); then nothing is told.
    if (/^(what|any|you had)\b/.test(phrase.text)) return { rule, lines: [phrase.text], wants: [] };
    const text = told(topic, sampler);
    return { rule, lines: [`${phrase.text} ${text}`], wants: [history(topic, { text })] };
  }
  // "Goes up into" tells where only with a place.
  const place = phrase.tag('to-place') === null ? '' : ' the left shoulder';
  return { rule, lines: [`${phrase.text}${place}`], wants: [history(topic)] };
}

/** A question of history, and free words in answer. */
function asked(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const question = say('history.ask');
  const topic = question.tag('asks');
  const vital = question.tag('asks-vital');
  const rule = 'history.ask';
  if (topic !== null && question.tag('item') === null) {
    const text = told(topic, sampler);
    return { rule, lines: [`${question.text}?`, text], wants: [history(topic, { text })] };
  }
  if (topic !== null)
    return { rule, lines: [`${question.text}?`, 'no'], wants: [history(topic, { present: false })] };
  const value = chance.pick([3, 6, 8]);
  const wants = vital === 'pain-score' ? [stating({ kind: 'vital', vital, value: { score: value } })] : [];
  return { rule, lines: [`${question.text}?`, String(value)], wants };
}

/** The sentences of history. */
export const historySentences = (sampler: Sampler): readonly Sentence[] => [
  ...Array.from({ length: 400 }, () => opened(sampler)),
  ...Array.from({ length: 100 }, () => asked(sampler)),
];
