// Of what a recogniser offers, the words that make most sense here are taken; the others stay beside them in the record, and
// where they say something else of the same thing, that is in doubt.

import type { Frame } from '../../parse/index.ts';
import { heardOtherwise } from '../../record/index.ts';
import type { Desk, TalkReader } from '../desk/index.ts';

interface Offered {
  readonly text: string;
  readonly alternatives: readonly string[];
}

/** What some words would be taken for after what was said. */
function read(reader: TalkReader, desk: Desk, text: string): readonly Frame[] {
  const context = desk.record.peek()?.exam.context ?? reader.begin();
  return reader.read({ text, heardAt: desk.clock(), zone: desk.zone }, context).frames;
}

/** How much sense they make: statements that found a place, less what did not and is in doubt. */
const sense = (frames: readonly Frame[]): number =>
  frames.reduce((sum, frame) => {
    if (frame.frame !== 'statement') return sum + 2;
    return sum + (frame.statement.kind === 'note' ? -1 : 2) - frame.doubt.length;
  }, 0);

const ABOUT = ['kind', 'site', 'finding', 'aspect', 'vital', 'care', 'topic'] as const;

/** What the statements are about, and all that each says of it: side, polarity and number among it. */
function statements(frames: readonly Frame[]): ReadonlyMap<string, readonly string[]> {
  const all = new Map<string, readonly string[]>();
  for (const frame of frames) {
    if (frame.frame !== 'statement' || frame.statement.kind === 'note') continue;
    const fields: Readonly<Record<string, unknown>> = { ...frame.statement };
    const about = ABOUT.map((name) => String(fields[name])).join(' ');
    all.set(about, [...(all.get(about) ?? []), JSON.stringify(frame.statement)]);
  }
  return all;
}

/** True where both speak of the same thing and say something else of it. */
function differ(one: readonly Frame[], other: readonly Frame[]): boolean {
  const said = statements(one);
  return [...statements(other)].some(([about, facts]) => {
    const mine = said.get(about);
    return mine !== undefined && facts.toSorted().join() !== mine.toSorted().join();
  });
}

/**
 * The best of the words offered comes first; where none makes more sense than the recogniser's own choice, that stays.
 * `doubt` says in plain words why it must be asked about.
 */
export function bestOf<T extends Offered>(desk: Desk, offered: T): T & { readonly doubt: readonly string[] } {
  const reader = desk.reader.peek();
  if (reader === null || offered.alternatives.length === 0) return { ...offered, doubt: [] };
  const all = [offered.text, ...offered.alternatives.filter((text) => text !== offered.text)];
  const scored = all.map((text) => {
    const frames = read(reader, desk, text);
    return { text, frames, score: sense(frames) };
  });
  const [best] = scored.toSorted((one, other) => other.score - one.score);
  if (best === undefined) return { ...offered, doubt: [] };
  const isOwn = best.text === offered.text;
  const rival = scored.find(({ frames }) => differ(best.frames, frames));
  const other = isOwn ? rival?.text : offered.text;
  return {
    ...offered,
    text: best.text,
    alternatives: isOwn ? offered.alternatives : all.filter((text) => text !== best.text),
    doubt: other === undefined ? [] : [heardOtherwise(other)],
  };
}
