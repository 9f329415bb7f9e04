// Of what a recogniser offers, the words that make most sense here are taken; the others stay beside them in the record.

import type { Desk, TalkReader } from '../desk/index.ts';

interface Offered {
  readonly text: string;
  readonly alternatives: readonly string[];
}

/** How much sense some words make after what was said: statements that found a place, less what did not and is in doubt. */
function sense(reader: TalkReader, desk: Desk, text: string): number {
  const context = desk.record.peek()?.exam.context ?? reader.begin();
  const { frames } = reader.read({ text, heardAt: desk.clock(), zone: desk.zone }, context);
  return frames.reduce((sum, frame) => {
    if (frame.frame !== 'statement') return sum + 2;
    return sum + (frame.statement.kind === 'note' ? -1 : 2) - frame.doubt.length;
  }, 0);
}

/** The best of the words offered comes first; where none makes more sense than the recogniser's own choice, that stays. */
export function bestOf<T extends Offered>(desk: Desk, offered: T): T {
  const reader = desk.reader.peek();
  if (reader === null || offered.alternatives.length === 0) return offered;
  const all = [offered.text, ...offered.alternatives.filter((text) => text !== offered.text)];
  const scored = all.map((text) => ({ text, score: sense(reader, desk, text) }));
  const [best] = scored.toSorted((one, other) => other.score - one.score);
  if (best === undefined || best.text === offered.text) return offered;
  return { ...offered, text: best.text, alternatives: all.filter((text) => text !== best.text) };
}
