// "Motorcycle crash, thrown about thirty feet", "was rear-ended, got out and walked around": what happened is told in several breaths
// and is one story, to the full stop.

import type { Frame, StatementFrame } from '../../frame.ts';

/** The frames with each mechanism and what goes on with it as one, in the order given; `text` is the utterance as said. */
export function mergeMechanism(frames: readonly Frame[], text: string): readonly Frame[] {
  if (!frames.some(isMechanism)) return frames;
  // Each story stands where its first breath did.
  const stories = new Map<Frame, Frame>();
  const taken = new Set<Frame>();
  let first: Frame | null = null;
  for (const frame of frames.toSorted(bySpan)) {
    const story = first === null ? null : joined(stories.get(first) ?? first, frame, text);
    if (first === null || story === null) first = frame;
    else {
      stories.set(first, story);
      taken.add(frame);
    }
  }
  return frames.flatMap((frame) => (taken.has(frame) ? [] : [stories.get(frame) ?? frame]));
}

const bySpan = (a: Frame, b: Frame): number => a.span[0] - b.span[0];

function joined(before: Frame, next: Frame, text: string): Frame | null {
  if (!isMechanism(before) || next.frame !== 'statement') return null;
  if (!isMechanism(next) && !goesOn(next)) return null;
  // "Pinned for an hour, freed at ten": each has its own time.
  if ((next.at !== undefined && next.at !== before.at) || FREED.test(next.heard)) return null;
  const [from, to] = [before.span[0], next.span[1]];
  // Words that another frame took, or a sentence's end, part the two.
  const between = text.slice(before.span[1], next.span[0]);
  if (next.span[0] < before.span[1] || /[.?!;|]/.test(between) || !GLUE.test(between)) return null;
  // "Mechanism: fall": the heading is no part of what is told.
  const told = before.statement.kind === 'history' ? text.indexOf(before.statement.text, from) : -1;
  const said = text.slice(told < 0 ? from : told, to);
  return {
    ...before,
    statement: { kind: 'history', topic: 'mechanism', text: said },
    heard: text.slice(from, to),
    span: [from, to],
  };
}

const isMechanism = (frame: Frame): frame is StatementFrame =>
  frame.frame === 'statement' &&
  frame.statement.kind === 'history' &&
  frame.statement.topic === 'mechanism' &&
  frame.statement.present !== false;

const FREED = /^(freed|released|extricated|rescued)\b/i;

// A note that denies something or names a side is none of the story.
const goesOn = (frame: Frame): boolean =>
  frame.frame === 'statement' &&
  frame.statement.kind === 'note' &&
  !/\b(no|not|never|nothing|none|without|left|right|both|pain|sore|hurts?|maybe|perhaps|possibly|probably|might|think|thinks|if)\b|n't\b/i.test(
    frame.statement.text,
  );

// Small words that no frame took: "got out and".
const GLUE = /^[\s,–—-]*((and|then|but|so|he|she|they|i|it|was|were|got|out|up|off|just|also)[\s,]+)*$/i;
