// The usual ways somebody else would take to read the same talk, for the benchmark alone: a general tagger with the words
// of the grammar added, a reader of dates, and a generated parser of the vital signs' rules.

import * as chrono from 'chrono-node';
import nlp from 'compromise/three';
import peggy from 'peggy';
import { linkGrammars } from '../../src/jsgf/index.ts';
import { grammarFiles } from '../../src/replay/grammar-files.ts';

/** Single words of the grammar's files, each with the file as its tag, as a user of a tagger would add them. */
export function lexicon(): Readonly<Record<string, string>> {
  const linked = linkGrammars(grammarFiles());
  if (linked.kind === 'errors') return {};
  const entries = grammarFiles().flatMap(({ file, text }) => {
    const tag = file.replace(/\.jsgf$/, '').replace(/^./, (first) => first.toUpperCase());
    const words = text.replace(/\/\/.*|\{[^}]*\}|<[^>]*>/g, ' ').match(/[a-z]{4,}/g) ?? [];
    return ['Findings', 'Sites', 'Vitals', 'Care'].includes(tag)
      ? words.map((word) => [word, tag] as const)
      : [];
  });
  return Object.fromEntries(entries);
}

/** Tags a line with all three tiers and that lexicon. */
export function tagger(): (line: string) => unknown {
  const words = lexicon();
  return (line) => nlp(line, words).json();
}

/** Reads the dates and times of a line. */
export const dates = (line: string): unknown => chrono.parse(line, new Date(Date.UTC(2026, 4, 3, 20, 2, 0)));

const RULES = `
line = vital|.., sep|
sep = [ ,.]+ ("and" [ ]+)?
vital = pulse / pressure / breaths / saturation
pulse = ("pulse" / "heart rate") is? n:number { return { pulse: n } }
pressure = ("blood pressure" / "pressure" / "bp") is? s:number " over " d:number { return { s, d } }
breaths = ("respirations" / "resps" / "breathing") is? n:number { return { n } }
saturation = ("saturation" / "sats" / "sat") is? n:number (" percent")? { return { n } }
is = " is" / " of" / " at" / ""
number = _ d:digits { return d } / _ w:words { return w }
digits = d:[0-9]+ { return Number(d.join("")) }
words = ten:tens one:(_ @ones)? { return ten + (one ?? 0) } / one:ones _ ten:tens two:(_ @ones)? { return one * 100 + ten + (two ?? 0) } / ones
tens = "twenty" { return 20 } / "thirty" { return 30 } / "forty" { return 40 } / "fifty" { return 50 } / "sixty" { return 60 } / "seventy" { return 70 } / "eighty" { return 80 } / "ninety" { return 90 }
ones = "one" { return 1 } / "two" { return 2 } / "three" { return 3 } / "four" { return 4 } / "five" { return 5 } / "six" { return 6 } / "seven" { return 7 } / "eight" { return 8 } / "nine" { return 9 } / "ten" { return 10 } / "eleven" { return 11 } / "twelve" { return 12 }
_ = " "
`;

/** A generated parser of four vital signs; null where the line is not wholly made of them. */
export function generated(): (line: string) => unknown {
  const parser = peggy.generate(RULES);
  return (line) => {
    try {
      return parser.parse(line.toLowerCase());
    } catch {
      return null;
    }
  };
}
