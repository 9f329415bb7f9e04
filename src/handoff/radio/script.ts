// A radio report that can be read aloud as it stands: who, the headline, then the order chosen, as far as the words go;
// at the end what to read back. What it leaves out is in the further details.

import { stands } from '../../record/entry.ts';
import { type Day, dayOf, perThing } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { isOutOfTheOrdinary, oddIds } from './abnormal.ts';
import { type Chunk, chunks, wordsInChunks } from './chunks.ts';
import { headlineOf } from './headline.ts';
import { CLEAN_WORDS, KEEPS, type Keep, RADIO_ORDERS, type RadioOrder, wordBudget } from './keep.ts';
import { leftOut, NOT_WHOLE } from './left-out.ts';
import { bare, lineOf, type RadioLine } from './line.ts';
import { candidates, shortWho } from './short.ts';
import { shortProblems } from './short-problems.ts';

/** Problems that count as the worst; the others come after the mechanism and the breathing. */
const WORST = 2;

interface Item {
  readonly keep: Keep;
  readonly line: RadioLine;
  /** fewer words of the same, said until the line finds room */
  readonly brief?: RadioLine;
}

interface Parts {
  readonly opening: readonly RadioLine[];
  readonly items: readonly Item[];
  readonly closing: readonly RadioLine[];
}

const item =
  (keep: Keep) =>
  (line: RadioLine): Item => ({ keep, line });

const dayIn = ({ startedAt }: HandoffInput): Day => dayOf(startedAt);
const problemsIn = perThing((input: HandoffInput) => shortProblems(input, dayIn(input)));
const candidatesIn = perThing((input: HandoffInput) => candidates(input, dayIn(input)));
const partsIn = perThing(partsOf);

/**
 * What a report of a very long record is made of, in pieces that can be worked out one at a time before it is asked for:
 * each is remembered with the input.
 */
export const RADIO_STEPS: readonly ((input: HandoffInput) => unknown)[] = [problemsIn, candidatesIn, partsIn];

/** Where no place has a finding: beside signs out of the ordinary it must not sound as if nothing were wrong. */
const nothingFound = (input: HandoffInput): string =>
  isOutOfTheOrdinary(input) ? 'No finding recorded besides the signs' : 'No present finding recorded';

function partsOf(input: HandoffInput): Parts {
  const { red, tourniquets, critical, gcsParts, readBack } = headlineOf(input);
  // Where nothing is serious, a lesser injury is more news than how the patient breathes.
  const isCalm = wordBudget(input) === CLEAN_WORDS;
  const who = shortWho(input.entries);
  const out = leftOut(input);
  const problems = problemsIn(input).map(
    ({ full, brief }, index): Item => ({
      keep: index < WORST ? 'worst' : 'problem',
      line: lineOf(full),
      brief: lineOf(brief),
    }),
  );
  const none = problems.length === 0 ? [item('worst')(bare(nothingFound(input)))] : [];
  return {
    opening: [...(who === null ? [] : [lineOf(who)]), ...red, ...tourniquets, ...critical],
    items: [
      ...none,
      ...problems,
      ...candidatesIn(input).map(
        ({ keep, told, brief }): Item => ({
          keep: isCalm && keep === 'breathing' ? 'trend' : keep,
          line: lineOf(told),
          ...(brief === undefined ? {} : { brief: lineOf(brief) }),
        }),
      ),
      ...gcsParts.map(item('gcs-parts')),
      ...(out === null ? [] : [item('not-examined')(NOT_WHOLE), item('gaps')(out)]),
    ],
    closing: readBack,
  };
}

const FURTHER = bare('Further details on request');
/** Said in place of it where findings are among what was left out. */
const FURTHER_FINDINGS = bare('More findings, details on request');
/** Said where what may never be left out takes more words than a report should have. */
const LONG = bare('Long report');

const isInjury = (keep: Keep): boolean => keep === 'worst' || keep === 'problem';

/** What was found, or is out of the ordinary. */
const BAD: readonly Keep[] = ['worst', 'problem', 'grave-sign', 'sign'];

const isNever = (keep: Keep): boolean => KEEPS.some((row) => row.keep === keep && row.never);

/** What was found and stands, with the signs out of the ordinary: a report in which some of it is not told says that there are more findings. */
const foundIds = (input: HandoffInput): readonly string[] => [
  ...input.entries
    .filter(
      (entry) =>
        stands(entry) && (entry.kind === 'finding' ? entry.present : entry.kind === 'csm' && !entry.present),
    )
    .map(({ id }) => id),
  ...oddIds(input),
];

/** Whether some of these are told by none of the lines that are said. */
function moreThan(found: readonly string[], items: readonly Item[]): (said: readonly RadioLine[]) => boolean {
  const lines = items.flatMap(({ line, brief }) => (brief === undefined ? [line] : [line, brief]));
  const tellers = new Map<string, readonly number[]>(found.map((id) => [id, []]));
  for (const [index, { entries }] of lines.entries())
    for (const id of entries) {
      const before = tellers.get(id);
      if (before !== undefined) tellers.set(id, [...before, index]);
    }
  // Of a long record many are told by the same lines: each such set is asked for once.
  const sets = new Map([...tellers.values()].map((set) => [set.join(), set]));
  return (said) => {
    const told = new Set(said);
    return [...sets.values()].some((set) => !set.some((index) => told.has(lines[index] as RadioLine)));
  };
}

export interface Script {
  readonly chunks: readonly Chunk[];
  /** the lines that were said, in the order said */
  readonly said: readonly RadioLine[];
  readonly words: number;
  /** the words that it should have; more only where what may never be left out takes more */
  readonly budget: number;
}

/** The line that is said of each item that is kept. */
type Kept = ReadonlyMap<Item, RadioLine>;

/** The script, and what went into it. */
export function scriptOf(input: HandoffInput, order: RadioOrder = 'atmist'): Script {
  const { opening, items, closing } = partsIn(input);
  const places: readonly Keep[] = RADIO_ORDERS[order];
  const budget = wordBudget(input);
  const isMore = moreThan(foundIds(input), items);
  const assemble = (kept: Kept, long: boolean): readonly RadioLine[] => {
    const named = items.some((one) => one.keep === 'gaps' && kept.has(one));
    const body = items
      .filter((one) => kept.has(one) && !(named && one.keep === 'not-examined'))
      .sort((a, b) => places.indexOf(a.keep) - places.indexOf(b.keep))
      .flatMap((one) => kept.get(one) ?? []);
    return [
      ...(long ? [LONG] : []),
      ...opening,
      ...body,
      isMore(body) ? FURTHER_FINDINGS : FURTHER,
      ...closing,
    ];
  };
  const must = new Map(items.filter(({ keep }) => isNever(keep)).map((one) => [one, one.brief ?? one.line]));
  const over = wordsInChunks(assemble(must, false)) > budget;
  const kept = over ? must : filled(items, must, (trial) => wordsInChunks(assemble(trial, false)) <= budget);
  const lines = assemble(kept, over);
  return { chunks: chunks(lines), said: lines, words: wordsInChunks(lines), budget };
}

/**
 * What is kept, with whatever still fits added in the order of the table. Once an injury does not, none after it is taken
 * in its stead: a lesser one is never told in place of a worse one. Injuries are told by their worst finding until the
 * table comes to the rest of them.
 */
function filled(items: readonly Item[], must: Kept, fits: (trial: Kept) => boolean): Kept {
  const kept = new Map(must);
  const isOut = (keep: Keep): boolean => items.some((one) => one.keep === keep && !kept.has(one));
  const take = (one: Item, line: RadioLine): boolean => {
    const does = fits(new Map([...kept, [one, line]]));
    if (does) kept.set(one, line);
    return does;
  };
  for (const { keep, never } of KEEPS) {
    if (keep === 'more') for (const [one] of [...kept]) take(one, one.line);
    if (never || (keep === 'problem' && isOut('worst'))) continue;
    // That nothing was found somewhere is not said in the room of what was found and did not fit.
    if (keep === 'denial' && BAD.some(isOut)) continue;
    for (const one of items.filter((each) => each.keep === keep))
      if (!take(one, one.brief ?? one.line) && isInjury(keep)) break;
  }
  return kept;
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
