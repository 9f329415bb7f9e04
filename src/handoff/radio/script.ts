// A radio report that can be read aloud as it stands: who, the headline, then the order chosen, as far as the words go;
// at the end what to read back. What it leaves out is in the further details.

import { type Day, dayOf } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { type Chunk, chunks, countWords } from './chunks.ts';
import { headlineOf } from './headline.ts';
import { KEEPS, type Keep, RADIO_ORDERS, type RadioOrder, wordBudget } from './keep.ts';
import { leftOut } from './left-out.ts';
import { bare, lineOf, type RadioLine } from './line.ts';
import { candidates, shortWho } from './short.ts';
import { shortProblems } from './short-problems.ts';

/** Problems that count as the worst; the others come after the mechanism and the breathing. */
const WORST = 3;

interface Item {
  readonly keep: Keep;
  readonly line: RadioLine;
}

interface Parts {
  readonly opening: readonly RadioLine[];
  readonly items: readonly Item[];
  readonly closing: readonly RadioLine[];
}

const item =
  (keep: Keep) =>
  (line: RadioLine): Item => ({ keep, line });

function partsOf(input: HandoffInput, day: Day): Parts {
  const { red, tourniquets, critical, readBack } = headlineOf(input);
  const who = shortWho(input.entries);
  const out = leftOut(input);
  const problems = shortProblems(input, day).map(lineOf);
  const none = problems.length === 0 ? [item('worst')(bare('No present finding recorded'))] : [];
  return {
    opening: [...(who === null ? [] : [lineOf(who)]), ...red, ...tourniquets, ...critical],
    items: [
      ...none,
      ...problems.map((line, index) => item(index < WORST ? 'worst' : 'problem')(line)),
      ...candidates(input, day).map(({ keep, told }) => item(keep)(lineOf(told))),
      ...(out === null ? [] : [item('not-examined')(out)]),
    ],
    closing: readBack,
  };
}

const FURTHER = bare('Further details on request');
/** Said in place of it where findings are among what was left out. */
const FURTHER_FINDINGS = bare('More findings, further details on request');
/** Said where what may never be left out takes more words than a report should have. */
const LONG = bare('Long report');

const isNever = (keep: Keep): boolean => KEEPS.some((row) => row.keep === keep && row.never);

const wordsIn = (cut: readonly Chunk[]): number => cut.reduce((sum, { text }) => sum + countWords(text), 0);

export interface Script {
  readonly chunks: readonly Chunk[];
  /** the lines of the body that were said, in the order said */
  readonly said: readonly RadioLine[];
  readonly words: number;
  /** the words that it should have; more only where what may never be left out takes more */
  readonly budget: number;
}

/** The script, and what went into it. */
export function scriptOf(input: HandoffInput, order: RadioOrder = 'atmist'): Script {
  const { opening, items, closing } = partsOf(input, dayOf(input.startedAt));
  const places: readonly Keep[] = RADIO_ORDERS[order];
  const budget = wordBudget(input);
  const assemble = (kept: ReadonlySet<Item>, long: boolean): readonly RadioLine[] => {
    const body = items
      .filter((one) => kept.has(one))
      .sort((a, b) => places.indexOf(a.keep) - places.indexOf(b.keep));
    const missed = items.some(({ keep }, index) => {
      const one = items[index];
      return (keep === 'worst' || keep === 'problem') && one !== undefined && !kept.has(one);
    });
    return [
      ...(long ? [LONG] : []),
      ...opening,
      ...body.map(({ line }) => line),
      ...closing,
      missed ? FURTHER_FINDINGS : FURTHER,
    ];
  };
  const kept = new Set(items.filter(({ keep }) => isNever(keep)));
  const over = wordsIn(chunks(assemble(kept, false))) > budget;
  if (!over) fill(items, kept, (trial) => wordsIn(chunks(assemble(trial, false))) <= budget);
  const lines = assemble(kept, over);
  const cut = chunks(lines);
  return { chunks: cut, said: lines, words: wordsIn(cut), budget };
}

/**
 * Adds to `kept`, in the order of the table, whatever still fits. Once one of a kind does not, no later one of that kind
 * is taken in its stead: a lesser injury is never told in place of a worse one.
 */
function fill(items: readonly Item[], kept: Set<Item>, fits: (trial: ReadonlySet<Item>) => boolean): void {
  for (const { keep, never } of KEEPS) {
    if (never) continue;
    if (keep === 'problem' && items.some((one) => one.keep === 'worst' && !kept.has(one))) continue;
    for (const one of items.filter((each) => each.keep === keep)) {
      if (!fits(new Set([...kept, one]))) break;
      kept.add(one);
    }
  }
}

/**
 * The short report in pieces of at most 40 words, each but the last ending in "break" and the last in "over"; whole in
 * 120 words, or 60 where nothing is serious, unless what may never be left out takes more.
 */
export const radio = (
  input: HandoffInput,
  order: RadioOrder = 'atmist',
): { readonly chunks: readonly Chunk[] } => ({
  chunks: scriptOf(input, order).chunks,
});
