// Sentences about care given, with its site, its drug and its time.

import { withoutDoubles } from './findings.ts';
import type { Phrase, Sampler } from './sampler.ts';
import { HEARD_AT, type Sentence, stating } from './sentence.ts';
import { sayClock } from './spoken-number.ts';

// Care of the whole patient has no site of its own.
const OF_THE_WHOLE = new Set([
  'spine-protection',
  'oxygen',
  'airway-opened',
  'recovery-position',
  'warming',
  'fluids',
  'food',
  'medication',
  'cpr',
  'pelvic-binder',
  'collar',
]);
const SITE_WORD =
  /\b(eyes?|chest|shoulder|finger|kneecap|patella|knee|leg|arm|ankle|limb|hands|feet|wound|cut|burn|side)\b/;

const given = (phrase: Phrase): Readonly<Record<string, unknown>> => ({
  kind: 'care',
  care: phrase.tag('care'),
});

function applied(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const phrase = say('care.care', () => ({ liters: chance.whole(2, 15) }));
  const rule = 'care.care';
  if (
    phrase.tag('takes') !== null ||
    OF_THE_WHOLE.has(phrase.tag('care') ?? '') ||
    SITE_WORD.test(phrase.text)
  ) {
    const put = phrase.tag('noun') !== null && phrase.tag('on') === null;
    // "With a litre of saline": what something was done with is no fluid that was given.
    const text = phrase.tag('care') === 'fluids' ? phrase.text.replace(/^(?:with )+/, '') : phrase.text;
    return { rule, lines: [`${text}${put ? ' on' : ''}`], wants: [stating(given(phrase))] };
  }
  const side = chance.pick(['left', 'right'] as const);
  const site = chance.pick(['thigh', 'forearm', 'knee', 'ankle'] as const);
  // "Left knee is dressed", "covered the graze on the left knee": what it is said of stands before it, or is named behind it.
  if (phrase.tag('of-site') !== null)
    return {
      rule,
      lines: [`the ${side} ${site} ${phrase.text}`],
      wants: [stating({ ...given(phrase), site, side })],
    };
  if (phrase.tag('of-wound') !== null)
    return {
      rule,
      lines: [`${phrase.text} graze on the ${side} ${site}`],
      wants: [stating({ ...given(phrase), site, side })],
    };
  const line = / (on|over|around|under|round)$/.test(phrase.text)
    ? `${phrase.text} the ${side} ${site}`
    : withoutDoubles(`${phrase.text} on the ${side} ${site}`);
  return { rule, lines: [line], wants: [stating({ ...given(phrase), site, side })] };
}

function drugged(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const phrase = say('care.medication', () => ({ dose: chance.pick([2, 4, 10, 50, 100, 400, 500]) }));
  const takes = phrase.tag('takes') !== null;
  const text = takes ? { text: 'ramipril' } : {};
  // "Second dose" alone may be one that is due.
  const named = phrase.tag('noun') !== null && phrase.tag('on') === null ? ' given' : '';
  return {
    rule: 'care.medication',
    lines: [`${phrase.text}${takes ? ' ramipril' : named}`],
    wants: [stating({ kind: 'care', care: 'medication', ...text })],
  };
}

const MINUTE = 60_000;

/** A tourniquet with a spoken time. The talk is heard at 14:32. */
function timed(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const ago = chance.whole(2, 25);
  const [hour, minute] = chance.pick([
    [14, 14],
    [14, 5],
    [13, 48],
    [13, 0],
  ] as const);
  const relative = chance.maybe(0.4);
  const time = relative ? `${ago} minutes ago` : sayClock(hour, minute, chance);
  const at = relative ? HEARD_AT - ago * MINUTE : Date.UTC(2026, 4, 3, hour + 6, minute, 0);
  const when = say('times.when', undefined, time);
  // Without a word that leads to it only "ago" makes a time: "about fourteen twenty" may be anything.
  const wants = when.tag('ago-only') !== null && !relative ? {} : { at };
  return {
    rule: 'times.when',
    lines: [`tourniquet on the left thigh ${when.text}`],
    wants: [stating({ kind: 'care', care: 'tourniquet', site: 'thigh', side: 'left' }, wants)],
  };
}

/** Care that was ended is kept in words; worn things taken off are no care at all. */
function ended(sampler: Sampler): Sentence {
  const word = sampler.say('care.removal');
  const way = word.tag('removal');
  const lines = {
    before: `${word.text} the tourniquet on the left thigh`,
    after: `tourniquet on the left thigh ${word.text}`,
    worn: word.text,
    again: word.text,
  };
  return {
    rule: 'care.removal',
    lines: [lines[way as keyof typeof lines]],
    wants: [stating({ kind: 'note' })],
    never: [stating({ kind: 'care' }), stating({ kind: 'visit' })],
  };
}

/** Care that was there before: its words go with it, and when that was is asked. */
function before(sampler: Sampler): Sentence {
  const { text } = sampler.say('care.earlier');
  const care = { kind: 'care', care: 'tourniquet', site: 'thigh', side: 'left', text };
  return {
    rule: 'care.earlier',
    lines: [`tourniquet on the left thigh ${text}`],
    wants: [stating(care)],
  };
}

/** Care that waits is kept in words. */
const waiting = (sampler: Sampler): Sentence => ({
  rule: 'care.waiting',
  lines: [sampler.say('care.waiting').text],
  wants: [stating({ kind: 'note' })],
  never: [stating({ kind: 'care' })],
});

/** Food that is joined to a drink was given as well, and joined to a finding it was not. */
function joined(sampler: Sampler): Sentence {
  const phrase = sampler.say('care.joined');
  return {
    rule: 'care.joined',
    lines: [`gave her sips of water ${phrase.text}`],
    wants: [stating({ kind: 'care', care: 'fluids' }), stating(given(phrase))],
  };
}

/** The sentences about care. */
export const careSentences = (sampler: Sampler): readonly Sentence[] => [
  ...Array.from({ length: 760 }, () => applied(sampler)),
  ...Array.from({ length: 160 }, () => drugged(sampler)),
  ...Array.from({ length: 80 }, () => timed(sampler)),
  ...Array.from({ length: 160 }, () => ended(sampler)),
  ...Array.from({ length: 60 }, () => before(sampler)),
  ...Array.from({ length: 60 }, () => joined(sampler)),
  ...Array.from({ length: 40 }, () => waiting(sampler)),
];
