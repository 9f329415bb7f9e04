// Whether what is said at a place of a clause is stated as there or as not there, by the reach of the negations around it.

import { type NegationKind, negatedSpans, possibleSpans } from '../../negation.ts';
import type { Span } from '../../span.ts';
import type { Token } from '../../token.ts';
import type { Item } from '../sites/item.ts';
import { marksIn } from './marks.ts';

export type Polarity = 'stated' | 'negated' | 'possible';

export interface Reach {
  /** for what is said from this token on; an adjective is out of reach of a bare "no" */
  readonly polarity: (from: number, adjective: boolean) => Polarity;
  /** the negation's own words, for the words that an entry came from; null where nothing negates it */
  readonly span: (at: number, adjective: boolean) => Span | null;
  readonly kind: (at: number, adjective: boolean) => NegationKind | null;
}

/** The reach of the negations in a clause's items. `end` is past the clause's last token. */
export function reachIn(items: readonly Item[], tokens: readonly Token[], end: number): Reach {
  const found = marksIn(items, tokens);
  const marks = found.map(({ mark }) => mark);
  const nouns = new Set(found.filter((one) => one.nouns).map(({ mark }) => mark.start));
  const negated = negatedSpans(marks, end);
  const possible = possibleSpans(marks, end);
  const over = (at: number, adjective: boolean) =>
    negated.find(
      ({ start, end: past, by }) =>
        at >= start && at < past && !(adjective && by.kind === 'before' && nouns.has(by.start)),
    )?.by ?? null;
  return {
    polarity: (from, adjective) => {
      if (over(from, adjective) !== null) return 'negated';
      return possible.some((span) => from >= span.start && from < span.end) ? 'possible' : 'stated';
    },
    span: (at, adjective) => {
      const by = over(at, adjective);
      return by === null ? null : { from: by.start, to: by.end };
    },
    kind: (at, adjective) => over(at, adjective)?.kind ?? null,
  };
}
