// What the ear was unsure of becomes a doubt on each frame that rests on it: a side, a "no" or a number is asked about,
// never guessed.

import type { CorrectionFrame, Frame, StatementFrame } from '../parse/frame.ts';
import { isSmallWord } from '../speech/index.ts';

/** A word as an engine heard it, with how surely. */
export interface WordHeard {
  readonly word: string;
  /** 0 to 1; below a half the word is unsure */
  readonly confidence: number;
}

export interface Hearing {
  /** in the order of the text, which holds them all */
  readonly words?: readonly WordHeard[];
  /** why all that is made of the utterance must be asked about */
  readonly doubt?: readonly string[];
}

const UNSURE = 0.5;
/** Groups of an utterance are numbered from 0; none has so many. */
const UNUSED_GROUP = 1000;
/** What a word settles, by the name of its slot: a correction that speaks the slot settles the doubt too. */
const SLOTS: readonly (readonly [slot: string, words: ReadonlySet<string>])[] = [
  ['side', new Set('left right both bilateral bilaterally either other same'.split(' '))],
  [
    'present',
    new Set(
      "no not non without denies deny none nothing nor never isn't aren't can't cannot doesn't don't yes yeah nope unremarkable stable unstable intact absent".split(
        ' ',
      ),
    ),
  ],
];
const NUMBER =
  /^(zero|oh|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|point|\d.*)$/;

const slotOf = (word: string): string =>
  SLOTS.find(([, words]) => words.has(word))?.[0] ?? (NUMBER.test(word) ? 'value' : 'word');

interface Placed {
  readonly word: string;
  readonly start: number;
  readonly end: number;
}

function placed(text: string, words: readonly WordHeard[]): readonly Placed[] {
  const lower = text.toLowerCase();
  let at = 0;
  return words.flatMap(({ word, confidence }) => {
    const start = lower.indexOf(word.toLowerCase(), at);
    if (start === -1) return [];
    at = start + word.length;
    const isUnsure = confidence < UNSURE && !isSmallWord(word);
    return isUnsure ? [{ word, start, end: at }] : [];
  });
}

/** Another reading of the same sound, and what it would have said. */
export interface OtherReading {
  readonly text: string;
  readonly frames: readonly Frame[];
}

/** The doubt on what another reading, given in its words, says otherwise. */
export const heardOtherwise = (words: string): string => `heard in another way too: “${words}”`;

/** What a frame says, without the words it was said in. */
function saidIn(frame: Frame): string {
  const { heard: _heard, span: _span, ...said } = frame;
  if (said.frame !== 'statement') return JSON.stringify(said);
  return JSON.stringify(said.statement);
}

/** Why a frame that another reading does not have is asked about. */
function otherwiseIn(frame: Frame, others: readonly OtherReading[]): readonly string[] {
  if (frame.frame === 'statement' && frame.statement.kind === 'note') return [];
  const said = saidIn(frame);
  const other = others.find(({ frames }) => !frames.some((one) => saidIn(one) === said));
  return other === undefined ? [] : [heardOtherwise(other.text)];
}

/** The frames with what is unsure about them among their doubts. Notes keep words and state nothing. */
export function withDoubt(
  frames: readonly Frame[],
  text: string,
  hearing: Hearing,
  others: readonly OtherReading[] = [],
): readonly Frame[] {
  const unsure = placed(text, hearing.words ?? []);
  const always = hearing.doubt ?? [];
  if (unsure.length === 0 && always.length === 0 && others.length === 0) return frames;
  return frames.map((frame, index) => {
    const [from, to] = frame.span;
    const own = unsure
      .filter(({ start, end }) => start < to && end > from)
      .map(({ word }) => `heard unsurely: ${slotOf(word)} “${word}”`);
    const doubt = [...always, ...new Set(own), ...otherwiseIn(frame, others)];
    if (doubt.length === 0) return frame;
    if (!canBeDoubted(frame)) return asNote(frame, doubt, index);
    return { ...frame, doubt: [...frame.doubt, ...doubt] };
  });
}

// Striking, confirming and settling a problem are done or not done; in doubt they are not, and the words are kept.
const canBeDoubted = (frame: Frame): frame is StatementFrame | CorrectionFrame =>
  frame.frame === 'statement' || (frame.frame === 'correction' && frame.change.change !== 'strike');

/** The words of a frame as a note that is asked about. */
export const asNote = (frame: Frame, doubt: readonly string[], index: number): StatementFrame => ({
  frame: 'statement',
  statement: { kind: 'note', text: wordsOf(frame) },
  heard: frame.heard,
  span: frame.span,
  known: {},
  doubt,
  group: UNUSED_GROUP + index,
});

/** The words of the frame; those meant for another patient's record stay here, since no patient is turned to in doubt. */
const wordsOf = (frame: Frame): string =>
  frame.frame === 'command' && frame.rest !== undefined ? `${frame.heard} ${frame.rest}` : frame.heard;
