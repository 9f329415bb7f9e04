// The numbered messages of a phone: made of events, held until the post has them, and made again from the log where they are not.

import type { RecordFacts } from '../record/store/index.ts';
import { type EventText, hashOf, type Message } from './message.ts';
import type { Outbox, Row } from './outbox.ts';
import type { ReadRecord } from './session-parts.ts';

export interface Messages {
  /** the next messages, of these events of one record in order, and their row of the book; neither is kept yet */
  make(
    record: RecordFacts,
    events: readonly EventText[],
  ): Promise<{ readonly row: Row; readonly made: readonly Message[] }>;
  /** holds messages whose row is in the book */
  hold(made: readonly Message[]): void;
  /** the message with this number; null where its record is no longer on this phone */
  at(seq: number): Promise<Message | null>;
  /** lets go of all up to this number */
  forget(upTo: number): void;
}

export function createMessages(outbox: Outbox, read: ReadRecord): Messages {
  const held = new Map<number, Message>();
  return {
    make: async (record, events) => {
      const before = outbox.end();
      const from = outbox.made() + 1;
      let after = before;
      const made: Message[] = [];
      for (const [index, event] of events.entries()) {
        const message: Message = { v: 1, seq: from + index, before: after, record, event };
        after = await hashOf(message);
        made.push(message);
      }
      return { row: { from, record: record.id, events: events.map(({ id }) => id), before, after }, made };
    },
    hold: (made) => {
      for (const message of made) held.set(message.seq, message);
    },
    at: async (seq) => {
      const here = held.get(seq);
      const row = here === undefined ? outbox.rowOf(seq) : null;
      if (here !== undefined || row === null) return here ?? null;
      const log = await read(row.record).catch(() => null);
      if (log === null) return null;
      const byId = new Map(log.events.map((event) => [event.id, event]));
      let before = row.before;
      for (const [index, id] of row.events.entries()) {
        const event = byId.get(id);
        if (event === undefined) return held.get(seq) ?? null;
        const message: Message = { v: 1, seq: row.from + index, before, record: log.facts, event };
        before = await hashOf(message);
        held.set(message.seq, message);
      }
      return held.get(seq) ?? null;
    },
    forget: (upTo) => {
      for (const seq of held.keys()) if (seq <= upTo) held.delete(seq);
    },
  };
}
