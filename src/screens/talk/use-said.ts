// The last utterances as they are shown: what a finger is on stays in its place, while what a hand did shows at once.

import { useTools } from '../frame/tools.ts';
import { useHeld } from '../steady/hold.ts';
import { type Became, lastSaid } from './became.ts';

/** More of the talk is in the timeline. */
const SHOWN = 12;
/** While the list is held, no more utterances than these are looked through for the one it was held at. */
const MOST_NEWER = 60;

export interface Said {
  /** latest first */
  readonly said: readonly Became[];
  /** how many came since the list was held */
  readonly newer: number;
  readonly hasEarlier: boolean;
}

/** The last utterances of the open record; null where none is open. */
export function useSaid(): Said | null {
  const { desk, hold } = useTools();
  const record = desk.record.value;
  const all = record?.exam.state.utterances ?? [];
  const now = { record: record?.facts.id ?? null, newest: all.at(-1)?.id ?? null };
  const held = useHeld(now, hold.value && record !== null);
  if (record === null) return null;
  const { events, state } = record.exam;
  const last = lastSaid(events, state, SHOWN + (held.newest === now.newest ? 0 : MOST_NEWER));
  const from = held.record === now.record ? last.findIndex(({ id }) => id === held.newest) : 0;
  const newer = Math.max(0, from);
  const said = last.slice(newer, newer + SHOWN);
  return { said, newer, hasEarlier: all.length > newer + said.length };
}
