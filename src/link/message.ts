// One message is one event of a record, with its place in all that its device has sent: nothing can be left out unseen.

import { beginChain, linkAfter } from '../record/chain/index.ts';
import type { RecordFacts } from '../record/store/index.ts';
import { sha256 } from './bytes.ts';

export interface Message {
  readonly v: 1;
  /** the same number as in its subject */
  readonly seq: number;
  /** the hash of the device's message before this one */
  readonly before: string;
  readonly record: RecordFacts;
  /** as it stands in the device's own log */
  readonly event: EventText;
}

/** What of an event the link itself looks at. */
export interface EventText {
  readonly id: string;
  readonly device: string;
  readonly seq: number;
  readonly kind: string;
}

/** The hash before a device's first message: it binds the chain to incident and device. */
export const chainOf = (incident: string, device: string): Promise<string> =>
  beginChain(`${incident}/${device}`, sha256);

/** The hash after a message. */
export const hashOf = ({ before, seq, record, event }: Message): Promise<string> =>
  linkAfter(before, { seq, record, event }, sha256);

export type MessageRead =
  | { readonly kind: 'message'; readonly message: Message }
  | { readonly kind: 'refused'; readonly why: string };

const refused = (why: string): MessageRead => ({ kind: 'refused', why });

const RECORD = /^[\w.-]{1,100}$/;
const KINDS: readonly unknown[] = ['live', 'invented', 'opened'];

/** The facts of a record, or which of them is wrong. */
export function factsOf(value: unknown): RecordFacts | string {
  if (typeof value !== 'object' || value === null) return 'record';
  const { id, kind, title, startedAt } = value as Readonly<Record<string, unknown>>;
  if (typeof id !== 'string' || !RECORD.test(id)) return 'record.id';
  if (!KINDS.includes(kind)) return 'record.kind';
  if (typeof title !== 'string') return 'record.title';
  if (typeof startedAt !== 'string' || Number.isNaN(Date.parse(startedAt))) return 'record.startedAt';
  return { id, kind: kind as RecordFacts['kind'], title, startedAt };
}

/** What was opened on the subject with this number; the event's own shape is judged where it is taken in. */
export function readMessage(value: unknown, seq: number): MessageRead {
  if (typeof value !== 'object' || value === null) return refused('it is no message');
  const { v, seq: own, before, record, event } = value as Readonly<Record<string, unknown>>;
  if (v !== 1) return refused(`it is of version ${String(v)}, which this post does not know`);
  if (own !== seq) return refused(`it calls itself number ${String(own)}`);
  if (typeof before !== 'string' || !/^[0-9a-f]{64}$/.test(before))
    return refused('it names no message before');
  const facts = factsOf(record);
  if (typeof facts === 'string') return refused(`its ${facts} is wrong`);
  if (typeof event !== 'object' || event === null) return refused('it holds no event');
  const { id, device, seq: number, kind } = event as Partial<EventText>;
  if (typeof device !== 'string' || typeof kind !== 'string' || id !== `${device}-${number}`)
    return refused('its event is not named by its device and number');
  return { kind: 'message', message: { v: 1, seq, before, record: facts, event: event as EventText } };
}
