// What a sampled sentence must give: patterns that a frame must fit, and patterns that none may fit.

import type { Frame, Reader } from '../../../src/parse/index.ts';

/** Part of a frame: every value given must be there; a list must hold every item given, and a `text` the words given. */
export type Pattern = { readonly [key: string]: unknown };

export interface Sentence {
  /** the rule that was sampled for it */
  readonly rule: string;
  readonly lines: readonly string[];
  readonly wants: readonly Pattern[];
  readonly never?: readonly Pattern[];
}

/** The moment at which every line is said, and its zone: an invented afternoon. */
export const HEARD_AT = Date.UTC(2026, 4, 3, 20, 32, 0);
export const ZONE = '-06:00';

export function fits(wanted: unknown, there: unknown): boolean {
  if (Array.isArray(wanted))
    return Array.isArray(there) && wanted.every((item) => there.some((one) => fits(item, one)));
  if (typeof wanted !== 'object' || wanted === null) return Object.is(wanted, there);
  if (typeof there !== 'object' || there === null) return false;
  return Object.entries(wanted).every(([key, value]) => {
    const one = (there as Record<string, unknown>)[key];
    return key === 'text' && typeof one === 'string' ? one.includes(String(value)) : fits(value, one);
  });
}

/** A statement frame that says this much. */
export const stating = (statement: Pattern, more: Pattern = {}): Pattern => ({
  frame: 'statement',
  statement,
  ...more,
});

export interface Misread {
  readonly sentence: Sentence;
  readonly missing: readonly Pattern[];
  readonly unwanted: readonly Frame[];
  readonly frames: readonly Frame[];
}

/** Reads the lines of a sentence one after another; null where everything came as it must. */
export function misread(reader: Reader, sentence: Sentence): Misread | null {
  let context = reader.begin();
  const frames: Frame[] = [];
  for (const text of sentence.lines) {
    const reading = reader.read({ text, heardAt: HEARD_AT, zone: ZONE }, context);
    frames.push(...reading.frames);
    context = reading.context;
  }
  const missing = sentence.wants.filter((wanted) => !frames.some((frame) => fits(wanted, frame)));
  const unwanted = frames.filter((frame) => (sentence.never ?? []).some((never) => fits(never, frame)));
  return missing.length + unwanted.length === 0 ? null : { sentence, missing, unwanted, frames };
}

/** One line for a person: what was said, what should have come, what came. */
export function explain({ sentence, missing, unwanted, frames }: Misread): string {
  const brief = (frame: Frame) =>
    JSON.stringify(frame.frame === 'statement' ? frame.statement : frame).slice(0, 200);
  return [
    `${sentence.rule}: “${sentence.lines.join(' / ')}”`,
    ...missing.map((wanted) => `    missing  ${JSON.stringify(wanted.statement ?? wanted)}`),
    ...unwanted.map((frame) => `    unwanted ${brief(frame)}`),
    ...frames.map((frame) => `    came     ${brief(frame)}`),
  ].join('\n');
}
