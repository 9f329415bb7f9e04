// Which question between entries a word is an answer to: the one that was read aloud last, or the only one on the screen; a
// word never settles one of several, nor one that nobody was shown.

import type { Conflict } from '../../clinical/index.ts';
import type { Entry } from '../../record/index.ts';
import { nameOf } from '../entries/settled.ts';
import { aloud, entryAloud } from './echo.ts';

export type Meant =
  | { readonly kind: 'none' }
  | { readonly kind: 'one'; readonly question: Conflict }
  /** the only one, and neither read aloud nor on the screen: it is to be read first */
  | { readonly kind: 'unseen'; readonly question: Conflict }
  | { readonly kind: 'several' };

/** `open`: the questions as they stand on the screen. */
export function questionMeant(
  open: readonly Conflict[],
  readAloud: string | null,
  isOnScreen: boolean,
): Meant {
  const [only, ...others] = open;
  if (only === undefined) return { kind: 'none' };
  const read = open.find((one) => nameOf(one) === readAloud);
  if (read !== undefined) return { kind: 'one', question: read };
  if (others.length > 0) return { kind: 'several' };
  return { kind: isOnScreen ? 'one' : 'unseen', question: only };
}

/** The question after the one that was read aloud last, and after the last the first again; null where none is open. */
export function questionAfter(open: readonly Conflict[], readAloud: string | null): Conflict | null {
  const at = open.findIndex((one) => nameOf(one) === readAloud);
  return open[(at + 1) % Math.max(1, open.length)] ?? null;
}

/** The entries at odds, in the order spoken, which is that of the screen: "the first" is the first of them. */
export const entriesAtOdds = ({ evidence }: Conflict, entries: readonly Entry[]): readonly Entry[] =>
  entries.filter(({ id }) => evidence.includes(id));

const NUMBERS = ['One', 'Two', 'Three'] as const;
const ORDINALS = ['first', 'second', 'third'] as const;

/** The words that answer a question between so many entries. */
export function waysToAnswer(many: number): string {
  const misheard =
    many === 1
      ? '“it was misheard”'
      : ORDINALS.slice(0, many)
          .map((nth) => `“the ${nth} was misheard”`)
          .join(' or ');
  // The recogniser hears the longer words surest.
  return `If ${many === 1 ? 'it holds' : many === 2 ? 'both hold' : 'all of it holds'}, say “settle the question”; else ${misheard}.`;
}

/** More than so many are counted: nobody keeps a longer list in the ear. Our choice, no source. */
const MOST = 3;

/** The question with its entries one by one, each with its side, its yes or no and its number. */
export function questionAloud(question: Conflict, entries: readonly Entry[]): string {
  const atOdds = entriesAtOdds(question, entries);
  const listed =
    atOdds.length < 2
      ? ''
      : NUMBERS.flatMap((number, at) => {
          const entry = atOdds[at];
          return entry === undefined ? [] : [`${number}: ${entryAloud(entry, 'short')}.`];
        }).join(' ');
  return [aloud(question.question), listed, waysToAnswer(atOdds.length)]
    .filter((part) => part !== '')
    .join(' ');
}

/** Which questions there are, where a word might mean any of them. */
export function severalAloud(open: readonly Conflict[]): string {
  const listed = open.slice(0, MOST).map(({ question }, at) => `${NUMBERS[at]}: ${aloud(question)}`);
  const more = open.length > MOST ? ` And ${open.length - MOST} more.` : '';
  return `Nothing was settled: ${open.length} questions are open. ${listed.join(' ')}${more} Say “next question”, and answer it when it was read.`;
}
