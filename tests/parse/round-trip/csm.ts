// Sentences about circulation, sensation and motion at the end of a limb.

import { ASPECTS } from '../../../src/terms/index.ts';
import type { Phrase, Sampler } from './sampler.ts';
import { type Pattern, type Sentence, stating } from './sentence.ts';

// The rules with many phrases come more often.
const RULES: Readonly<Record<string, number>> = {
  all: 60,
  'distal-pulse': 140,
  'cap-refill': 100,
  circulation: 40,
  warmth: 60,
  sensation: 100,
  'both-ways': 10,
  motion: 160,
  'pinks-up': 20,
};
const LEG_PULSES = new Set(['femoral', 'posterior-tibial', 'dorsalis-pedis']);

/** The limb's end that the phrase can be about: a grip is a hand's, a pedal pulse a foot's. */
function endOf(phrase: Phrase, sampler: Sampler): 'hand' | 'foot' {
  const own = phrase.tag('end');
  if (own === 'hand' || own === 'foot') return own;
  const pulse = phrase.tag('pulse');
  if (pulse !== null) return LEG_PULSES.has(pulse) ? 'foot' : 'hand';
  return sampler.chance.pick(['hand', 'foot']);
}

function secondsOf(phrase: Phrase): number | undefined {
  const said = phrase.numbers.seconds;
  return said !== undefined && phrase.text.endsWith('and a half') ? said + 0.5 : said;
}

/** What the phrase says, or null where it only names the thing. */
function presentOf(phrase: Phrase): boolean | null {
  const seconds = secondsOf(phrase);
  // Schriger DL, Baraff L. Ann Emerg Med 1988;17:932-935: two seconds as the upper limit of normal.
  if (seconds !== undefined) return seconds <= 2;
  // Medical Research Council, Memorandum No. 45, 1976: what has no contraction, or a flicker of one, does not move.
  const { strength } = phrase.numbers;
  if (strength !== undefined && strength <= 1) return false;
  const warmth = phrase.tag('warmth');
  if (warmth !== null) return warmth === 'warm';
  if (phrase.tag('csm-warmth') !== null) return true;
  const said = phrase.tag('present');
  return said === null ? null : said === 'yes';
}

const aspectsOf = (phrase: Phrase): readonly string[] =>
  phrase.tags('aspect').length > 0 ? phrase.tags('aspect') : ['circulation'];

function details(phrase: Phrase): Pattern {
  const all = {
    pulse: phrase.tag('pulse'),
    warmth: phrase.tag('warmth'),
    capRefillSeconds: secondsOf(phrase) ?? null,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== null));
}

function atOneEnd(sampler: Sampler, name: string): Sentence {
  const { chance, say } = sampler;
  const rule = `csm.${name}`;
  const phrase = say(rule, () => ({ seconds: chance.whole(1, 6), strength: chance.whole(0, 5) }));
  const site = endOf(phrase, sampler);
  const side = chance.pick(['left', 'right'] as const);
  const where = `${side} ${site}`;
  const said = presentOf(phrase);
  const present = said ?? true;
  // "Which foot can not you feel": it asks, and a side answers.
  if (phrase.tag('asked') !== null)
    return {
      rule,
      lines: [`which ${site} ${phrase.text}`, `the ${side}`],
      wants: aspectsOf(phrase).map((aspect) => stating({ kind: 'csm', site, side, aspect, present })),
    };
  const text = said === null ? `${phrase.text} is intact` : phrase.text;
  const heading = phrase.tag('refill') !== null && said === null;
  const line = heading
    ? `${phrase.text} in the ${where}, two seconds`
    : / (in|on|of)$/.test(text)
      ? `${text} the ${where}`
      : chance.pick([`${text} in the ${where}`, `${where}, ${text}`]);
  return {
    rule,
    lines: [line],
    wants: aspectsOf(phrase).map((aspect) =>
      stating({ kind: 'csm', site, side, aspect, present, ...details(phrase) }),
    ),
    never: [stating({ kind: 'csm', present: !present })],
  };
}

/** "C S M intact in all four" gives twelve entries. */
function atAllEnds(sampler: Sampler): Sentence {
  const limbs = sampler.say('csm.limbs');
  const good = sampler.chance.pick([
    'c s m intact',
    'c s m good',
    'circulation sensation and movement intact',
  ]);
  const ends = ['hand', 'foot'].flatMap((site) => ['left', 'right'].map((side) => ({ site, side })));
  return {
    rule: 'csm.limbs',
    lines: [`${good} ${limbs.text}`],
    wants: ends.flatMap((end) =>
      ASPECTS.map((aspect) => stating({ kind: 'csm', ...end, aspect, present: true })),
    ),
  };
}

/** A question about a limb's end, and its answer. */
function asked(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const question = say('csm.ask');
  const side = chance.pick(['left', 'right'] as const);
  const yes = chance.maybe(0.7);
  const ends = question.tag('ends') === null || question.tag('hand') !== null ? '' : ' toes';
  const site = question.tag('hand') === null ? 'foot' : 'hand';
  return {
    rule: 'csm.ask',
    lines: [`${side} ${site}`, `${question.text}${ends}?`, yes ? 'yes' : 'no'],
    wants: [stating({ kind: 'csm', site, side, aspect: question.tag('ask'), present: yes })],
  };
}

/** "Toes move", "the pulse in the left foot is there": what is said stands after its limb. */
function afterItsLimb(sampler: Sampler, rule: 'csm.moves' | 'states.found'): Sentence {
  const side = sampler.chance.pick(['left', 'right'] as const);
  const said = sampler.say(rule);
  const { text } = said;
  const aspect = rule === 'csm.moves' ? 'motion' : 'circulation';
  const present = rule !== 'csm.moves' || said.tag('present') === 'yes';
  return {
    rule,
    lines: [rule === 'csm.moves' ? `${side} toes ${text}` : `pulse in the ${side} foot ${text}`],
    wants: [stating({ kind: 'csm', site: 'foot', side, aspect, present })],
  };
}

/** "Moves all four", "can not feel his toes". */
function movesAll(sampler: Sampler): Sentence {
  const ends = ['hand', 'foot'].flatMap((site) => ['left', 'right'].map((side) => ({ site, side })));
  return {
    rule: 'csm.moves-all',
    lines: [sampler.say('csm.moves-all').text],
    wants: ends.map((end) => stating({ kind: 'csm', ...end, aspect: 'motion', present: true })),
  };
}

function noFeeling(sampler: Sampler): Sentence {
  const side = sampler.chance.pick(['left', 'right'] as const);
  return {
    rule: 'csm.no-feeling',
    lines: [`${sampler.say('csm.no-feeling').text} ${side} toes`],
    wants: [stating({ kind: 'csm', site: 'foot', side, aspect: 'sensation', present: false })],
  };
}

/** A pulse on one side, and what a state word says of it on the other. */
function onTheOtherSide(sampler: Sampler): Sentence {
  const { chance, say } = sampler;
  const word = say('states.state');
  const [one, other] = chance.pick([['left', 'right'] as const, ['right', 'left'] as const]);
  const state = word.tag('state');
  const link = / (on|in)$/.test(word.text) ? '' : ' on';
  const line = chance.pick([
    `radial pulse present on the ${one}, ${word.text}${link} the ${other}`,
    `radial pulse present on the ${one} but ${word.text}${link} the ${other}`,
  ]);
  const pulse = { kind: 'csm', site: 'hand', aspect: 'circulation', pulse: 'radial' };
  return {
    rule: 'states.state',
    lines: [line],
    wants: [
      stating({ ...pulse, side: one, present: true }),
      stating({ ...pulse, side: other, present: state !== 'absent' && state !== 'none' }),
    ],
    never: [stating({ kind: 'finding' }), stating({ ...pulse, side: one, present: false })],
  };
}

/** A pulse that was there and is no more. */
function lost(sampler: Sampler): Sentence {
  const side = sampler.chance.pick(['left', 'right'] as const);
  const pulse = { kind: 'csm', site: 'hand', side, aspect: 'circulation' };
  return {
    rule: 'csm.lost',
    lines: [`${sampler.say('csm.lost').text} the ${side} radial pulse`],
    wants: [stating({ ...pulse, present: false })],
    never: [stating({ ...pulse, present: true })],
  };
}

/** A phrase that is kept as said and gives nothing else. */
const kept = (sampler: Sampler, rule: string): Sentence => ({
  rule,
  lines: [sampler.say(rule).text],
  wants: [stating({ kind: 'note' })],
  never: ['finding', 'visit', 'vital', 'csm', 'history'].map((kind) => stating({ kind })),
});

/** The sentences about limbs' ends. */
export const csmSentences = (sampler: Sampler): readonly Sentence[] => [
  ...Object.entries(RULES).flatMap(([name, length]) => Array.from({ length }, () => atOneEnd(sampler, name))),
  ...Array.from({ length: 40 }, () => atAllEnds(sampler)),
  ...Array.from({ length: 40 }, () => asked(sampler)),
  ...Array.from({ length: 80 }, () => onTheOtherSide(sampler)),
  ...Array.from({ length: 4 }, () => lost(sampler)),
  ...Array.from({ length: 20 }, () => afterItsLimb(sampler, 'csm.moves')),
  ...Array.from({ length: 4 }, () => afterItsLimb(sampler, 'states.found')),
  ...Array.from({ length: 30 }, () => movesAll(sampler)),
  ...Array.from({ length: 20 }, () => noFeeling(sampler)),
  ...Array.from({ length: 60 }, () => kept(sampler, 'states.kept')),
  ...Array.from({ length: 40 }, () => kept(sampler, 'kept.kept')),
];
