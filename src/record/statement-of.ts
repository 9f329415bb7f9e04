// The statement in an entry, without when and by whom it was said.

import type { Statement, StatementKind } from '../terms/index.ts';
import type { EntryFacts } from './entry.ts';

type StatementOf<K extends StatementKind> = Extract<Statement, { kind: K }>;

/** What the entry states; its times, words and state are left off. */
export function statementOf<K extends StatementKind>(entry: EntryFacts & StatementOf<K>): StatementOf<K> {
  const { id, at, heardAt, firstHeardAt, heard, state, known, doubt, replacedBy, ...statement } = entry;
  return statement as unknown as StatementOf<K>;
}
