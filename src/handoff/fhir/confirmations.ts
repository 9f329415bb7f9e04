// Who confirmed what and when, as the log has it.

import type { RecordEvent } from '../../record/index.ts';
import type { Confirmation } from './input.ts';

/** The confirmations of a log, in its order. */
export const confirmationsOf = (events: readonly RecordEvent[]): readonly Confirmation[] =>
  events.flatMap((event) =>
    event.kind === 'confirmed'
      ? [{ entries: event.payload.entries, by: event.payload.by, at: event.time }]
      : [],
  );
