// "Correction, is that the left arm?" "No.": who asks whether something was wrong puts nothing right yet.

import { marked } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import type { Clause } from './clause.ts';
import { asksIfHeard } from './late-question.ts';

/** The clauses, where each correction that ends as a question is only supposed, unless a "yes" follows in the same breath. */
export const withAskedCorrections = (
  clauses: readonly Clause[],
  tokens: readonly Token[],
): readonly Clause[] =>
  clauses.map((clause, i) => {
    const { mood, pause, pieces } = clause;
    if (mood !== 'correction' && mood !== 'strike') return clause;
    // "Correction, pulse seventy, okay?" asks only whether it was heard.
    if (pause !== 'ask' || asksIfHeard(pieces, tokens)) return clause;
    const [next] = clauses[i + 1]?.pieces ?? [];
    return next !== undefined && marked(next, 'answer', 'yes') ? clause : { ...clause, mood: 'supposing' };
  });
