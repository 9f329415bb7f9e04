// Sentences that turn what is said: negations, sides and parts, "the same", corrections, strikes, marks and commands.

import type { Phrase, Sampler } from './sampler.ts';
import { type Pattern, type Sentence, stating } from './sentence.ts';

const swelling = (more: Pattern = {}): Pattern => stating({ kind: 'finding', finding: 'swelling', ...more });
const LEFT_KNEE = { site: 'knee', side: 'left' };
const SAID = 'swelling of the left forearm';

const NEGATIONS: Readonly<Record<string, (text: string) => Omit<Sentence, 'rule'>>> = {
  before: (text) => ({
    lines: [`${text} swelling of the left knee`],
    wants: [swelling({ ...LEFT_KNEE, present: false })],
    never: [swelling({ present: true })],
  }),
  after: (text) => ({
    lines: [`swelling of the left knee ${text}`],
    wants: [swelling({ ...LEFT_KNEE, present: false })],
    never: [swelling({ present: true })],
  }),
  pseudo: (text) => ({
    lines: [`${text} swelling of the left knee`],
    wants: [],
    never: [swelling({ present: false })],
  }),
  stop: (text) => ({
    lines: [`no bruising ${text} swelling of the left knee`],
    wants: [swelling({ ...LEFT_KNEE, present: true })],
    never: [swelling({ present: false })],
  }),
  'possible-before': (text) => ({
    lines: [`${text} swelling of the left knee`],
    wants: [],
    never: [swelling({ present: false })],
  }),
  'possible-after': (text) => ({
    lines: [`swelling of the left knee ${text}`],
    wants: [],
    never: [swelling({ present: false })],
  }),
};

function negation({ say }: Sampler): Sentence {
  const phrase = say('negation.negation');
  const kind = phrase.tag('negation') ?? '';
  const built = NEGATIONS[kind]?.(phrase.text);
  if (built === undefined) throw new Error(`no sentence for the negation ${kind}`);
  return { rule: `negation.negation ${kind}`, ...built };
}

/** The side that a phrase names after something was said of the left. */
const sideAfterLeft = (side: string | null): string | null => (side === 'mirror' ? 'right' : side);

const SIDES: Readonly<Record<string, (text: string, side: string | null) => Omit<Sentence, 'rule'>>> = {
  'side-before': (text, side) => ({
    lines: [SAID, `${text} forearm deformity`],
    wants: [stating({ kind: 'finding', finding: 'deformity', site: 'forearm', side })],
  }),
  'side-after': (text, side) => ({
    lines: [`forearm ${text}, swelling`],
    wants: [swelling({ site: 'forearm', side })],
  }),
  mirror: (text, side) => ({
    lines: [SAID, `${text} deformity`],
    wants: [stating({ kind: 'finding', finding: 'deformity', site: 'forearm', side })],
  }),
  same: (text, side) => ({
    lines: [side === 'left' ? 'swelling of the right forearm' : SAID, text],
    wants: [swelling({ site: 'forearm', side, present: true })],
  }),
  again: (text) => ({
    lines: [SAID, `right forearm ${text}`],
    wants: [swelling({ site: 'forearm', side: 'right', present: true })],
  }),
};

function side({ say, chance }: Sampler): Sentence {
  const name = chance.pick(Object.keys(SIDES));
  const phrase = say(`sides.${name}`);
  const built = SIDES[name]?.(phrase.text, sideAfterLeft(phrase.tag('side')));
  if (built === undefined) throw new Error(`no sentence for sides.${name}`);
  return { rule: `sides.${name}`, ...built };
}

function part({ say, chance }: Sampler): Sentence {
  const name = chance.pick(['part-before', 'part-after']);
  const phrase = say(`sides.${name}`);
  const line =
    name === 'part-before' ? `${phrase.text} left forearm swelling` : `left forearm ${phrase.text}, swelling`;
  return {
    rule: `sides.${name}`,
    lines: [line],
    wants: [swelling({ site: 'forearm', side: 'left', part: phrase.tags('part') })],
  };
}

const COMMANDS: Readonly<Record<string, (text: string, named: boolean) => Omit<Sentence, 'rule'>>> = {
  correction: (text) => ({
    lines: [SAID, `${text} right forearm`],
    wants: [{ frame: 'correction', change: { side: 'right' } }],
    never: [swelling({ side: 'right' })],
  }),
  strike: (text, named) => ({
    lines: [SAID, named ? `${text} swelling` : text],
    wants: [{ frame: 'correction', change: { change: 'strike' } }],
  }),
  mark: (text) => ({ lines: [`${text} the helicopter left`], wants: [stating({ kind: 'mark' })] }),
  command: (text) => ({ lines: [text], wants: [{ frame: 'command' }] }),
};

function command({ say, chance }: Sampler): Sentence {
  const name = chance.pick(Object.keys(COMMANDS));
  const phrase = say(`commands.${name}`);
  const built = COMMANDS[name]?.(phrase.text, phrase.tags('strike').includes('named'));
  if (built === undefined) throw new Error(`no sentence for commands.${name}`);
  return { rule: `commands.${name}`, ...built };
}

const PROBLEMS: Readonly<Record<string, (phrase: Phrase) => Omit<Sentence, 'rule'>>> = {
  problem: ({ text, tag }) => ({ lines: [`${text} the left knee`], wants: [changing(tag('problem'))] }),
  ending: ({ text, tag }) => ({ lines: [`the left knee ${text}`], wants: [changing(tag('problem'))] }),
  verb: ({ text }) => ({
    lines: [`${text} the left knee at the top of the problem list`],
    wants: [changing('first')],
  }),
};

/** The change of the problem list that is asked of the left knee. */
const changing = (change: string | null): Pattern => ({
  frame: 'problem',
  change: change === 'add' ? { change, text: 'left knee' } : { change, problem: LEFT_KNEE },
});

function problem({ say, chance }: Sampler): Sentence {
  const name = chance.pick(Object.keys(PROBLEMS));
  const phrase = say(`problems.${name}`);
  const built = PROBLEMS[name]?.(phrase);
  if (built === undefined) throw new Error(`no sentence for problems.${name}`);
  const never = [stating({ kind: 'visit' }), stating({ kind: 'note' }), { frame: 'correction' }];
  return { rule: `problems.${name}`, ...built, never };
}

function patient({ say, chance }: Sampler): Sentence {
  const name = chance.pick(['switch', 'alone']);
  const phrase = say(`patients.${name}`);
  const meant = phrase.tag('switch') ?? '';
  return {
    rule: `patients.${name}`,
    lines: [phrase.text],
    wants: [{ frame: 'command', command: 'patient', patient: /\d/.test(meant) ? Number(meant) : meant }],
    never: [{ frame: 'statement' }],
  };
}

/** The sentences that turn others. */
export const turnSentences = (sampler: Sampler): readonly Sentence[] => [
  ...Array.from({ length: 240 }, () => negation(sampler)),
  ...Array.from({ length: 200 }, () => side(sampler)),
  ...Array.from({ length: 100 }, () => part(sampler)),
  ...Array.from({ length: 160 }, () => command(sampler)),
  ...Array.from({ length: 120 }, () => problem(sampler)),
  ...Array.from({ length: 80 }, () => patient(sampler)),
];
