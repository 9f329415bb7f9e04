// What was found of the history: statements, or a topic that is named and still open.

import type { HistoryStatement, Topic } from '../../../terms/index.ts';
import type { Span } from '../../span.ts';
import type { HowKnown } from '../talk.ts';

export interface FoundHistory extends Span {
  readonly statement: HistoryStatement;
  readonly known: HowKnown;
}

/** A topic named without a text of its own: what follows, or the next answer, may give it. */
export interface OpenTopic extends Span {
  readonly topic: Topic;
}

/** True where a topic was named and nothing said of it yet. */
export const isOpen = (found: readonly FoundHistory[] | OpenTopic): found is OpenTopic => 'topic' in found;
