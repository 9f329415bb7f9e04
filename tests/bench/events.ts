// Invented talk as events: an utterance and the entry that it became, by turns.

import { type EventFacts, FORMAT, type RecordEvent } from '../../src/record/index.ts';

/** So many events, after so many others of the same device. */
export function eventsOf(count: number, after = 0): readonly RecordEvent[] {
  const time = '2031-04-05T10:00:00Z';
  return Array.from({ length: count }, (_, index): RecordEvent => {
    const seq = after + index + 1;
    const id = `bench-${seq}`;
    const facts: EventFacts = { format: FORMAT, id, device: 'bench', seq, time };
    const heard = 'left wrist swelling';
    if (seq % 2 === 1)
      return { ...facts, kind: 'utterance', payload: { text: heard, heardAt: time, zone: 'UTC' } };
    const statement = {
      kind: 'finding',
      site: 'wrist',
      side: 'left',
      finding: 'swelling',
      present: true,
    } as const;
    const utterance = `bench-${seq - 1}`;
    const told = { at: time, heardAt: time, heard, known: {}, doubt: [], utterance, group: utterance };
    return { ...facts, kind: 'entered', payload: { id, statement, ...told } };
  });
}
