// Talk that finds nothing, and talk around what is found: each must leave alone what stands beside it.

import type { Sampler } from './sampler.ts';
import { type Pattern, type Sentence, stating } from './sentence.ts';

const FOUND: Pattern = { kind: 'finding', site: 'knee', side: 'left', finding: 'swelling', present: true };
const SAID = 'swelling of the left knee';
const NO_ENTRY = ['finding', 'csm', 'vital', 'care', 'history'].map((kind) => stating({ kind }));

type Built = Omit<Sentence, 'rule'>;
const nothing = (line: string): Built => ({ lines: [line], wants: [], never: NO_ENTRY });
const found = (line: string): Built => ({ lines: [line], wants: [stating(FOUND)] });

const ASIDES: Readonly<Record<string, (text: string, answer: string | null) => Built>> = {
  'talk.filler': (text) => found(`${text} ${SAID}`),
  'talk.courtesy': (text) => ({ ...found(`${text}. ${SAID}`), never: [stating({ kind: 'note' })] }),
  'talk.introduction': (text) => ({ ...found(`${text}. ${SAID}`), never: [stating({ kind: 'note' })] }),
  'talk.idiom': (text) => nothing(text),
  'talk.instruction': (text) => nothing(`${text} your left foot`),
  'talk.intention': (text) => ({
    lines: [`${text} the left knee`],
    wants: [stating({ kind: 'visit', site: 'knee', side: 'left' })],
    never: NO_ENTRY,
  }),
  'talk.supposing': (text) =>
    nothing(/ (for|of|about|to|out)$/.test(text) ? `${text} ${SAID}` : `${text} the left knee is swollen`),
  'talk.plan': (text) => nothing(`${text} a splint on the left knee`),
  'talk.later': (text) => nothing(`left knee ${text}`),
  'talk.others': (text) => nothing(`${text} has swelling of the left knee`),
  'talk.witness': (text) => found(`${text} there is ${SAID}`),
  // "My back is killing me" is the patient's own pain; who says it, the reader cannot know.
  'talk.own': (text) => (text === 'killing me' ? found(SAID) : nothing(`${text} ${SAID}`)),
  'talk.past': (text) => ({
    ...nothing(`${text} swelling of the left knee`),
    never: NO_ENTRY.slice(0, -1),
  }),
  'talk.textbook': (text) => nothing(`${text} swelling of the left knee`),
  'talk.opening': (text) => found(`${text} ${SAID}`),
  'talk.tag': (text) => nothing(`you have no pain in your left knee, ${text}?`),
  'talk.asking': (text) => nothing(`${text} pain in the left knee?`),
  'talk.answer': (text, answer) => ({
    lines: ['any pain in the left knee?', text],
    wants:
      answer === 'unsure'
        ? []
        : [
            stating({
              kind: 'finding',
              site: 'knee',
              side: 'left',
              finding: 'pain',
              present: answer === 'yes',
            }),
          ],
    never: [stating({ kind: 'finding', present: answer !== 'yes' })],
  }),
  'small.small': (text) => nothing(text),
  'small.figure': (text) => ({
    lines: [`pulse, um, ${text}`],
    wants: [stating({ kind: 'vital', vital: 'pulse' })],
  }),
};

/** The sentences with asides, as many of each kind. */
export const asideSentences = (sampler: Sampler): readonly Sentence[] =>
  Object.entries(ASIDES).flatMap(([rule, build]) =>
    Array.from({ length: 40 }, () => {
      const phrase = sampler.say(rule, () => ({ figure: sampler.chance.whole(50, 140) }));
      return { rule, ...build(phrase.text, phrase.tag('answer')) };
    }),
  );
