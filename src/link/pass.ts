// Hands a record from one device to another: the giver writes it until the taker says that it is on the taker's own disk.

import type { RecordFacts } from '../record/store/index.ts';
import { type EventText, factsOf } from './message.ts';
import type { Heard, Line } from './port.ts';
import { open, seal } from './seal.ts';
import { NAME, passSubject } from './subjects.ts';

/** A whole record on its way, with how its patient is called. */
export interface Handed {
  readonly facts: RecordFacts;
  readonly who: string;
  readonly events: readonly EventText[];
}

export interface Offer extends Handed {
  readonly id: string;
  /** the device that offers it */
  readonly from: string;
}

export type Offered =
  /** it is shown there, and waits for a person */
  { readonly kind: 'shown' } | { readonly kind: 'nobody'; readonly why: string };

export interface PassParts {
  readonly incident: string;
  readonly device: string;
  readonly key: CryptoKey;
  readonly line: Line;
  readonly newId: () => string;
  /** an offer has come whole; a later one of the same device takes its place */
  readonly offered: (offer: Offer) => void;
  /** what this device offered was taken over, or was not wanted */
  readonly settled: (record: string, to: string, how: 'taken' | 'declined') => void;
}

export interface Pass {
  offer(to: string, record: Handed): Promise<Offered>;
  /** tells the giver; tried again until the giver has heard it or the page goes */
  settle(offer: Offer, how: 'taken' | 'declined'): void;
  end(): void;
}

const WITHIN = 6_000;
const AGAIN = 3_000;
/** Characters in one message: well under what the server takes, sealed. */
const PIECE = 300_000;
const MOST = 200;

interface Coming {
  readonly id: string;
  readonly of: number;
  readonly parts: Map<number, string>;
}

const text = (value: unknown): value is string => typeof value === 'string';

function readHanded(json: string): Handed | null {
  try {
    const { facts, who, events } = JSON.parse(json) as Readonly<Record<string, unknown>>;
    const checked = factsOf(facts);
    return typeof checked === 'string' || !text(who) || !Array.isArray(events)
      ? null
      : { facts: checked, who: who.slice(0, 200), events: events as readonly EventText[] };
  } catch {
    return null;
  }
}

/** Offers and takes records over the line; nothing passes through the post, so it works in a vehicle that is cut off too. */
export function createPass({ incident, device, key, line, newId, offered, settled }: PassParts): Pass {
  const coming = new Map<string, Coming>();
  const mine = new Map<string, { readonly record: string; readonly to: string }>();
  let over = false;

  const say = async (to: string, message: unknown): Promise<'heard' | 'nobody'> => {
    const subject = passSubject(incident, to, device);
    const asked = await line.ask(subject, await seal(key, subject, message), WITHIN);
    if (asked.kind !== 'answer') return 'nobody';
    const opened = await open(key, `${subject} answer`, asked.bytes);
    return opened.kind === 'value' ? 'heard' : 'nobody';
  };

  const take = (from: string, message: Readonly<Record<string, unknown>>): void => {
    const { t, id } = message;
    if (!text(id)) return;
    if (t === 'part') {
      const { part, of, text: piece } = message;
      if (typeof part !== 'number' || typeof of !== 'number' || !text(piece) || of > MOST || part > of)
        return;
      const before = coming.get(from);
      const now =
        before?.id === id && before.of === of ? before : { id, of, parts: new Map<number, string>() };
      coming.set(from, now);
      now.parts.set(part, piece);
      if (now.parts.size < of) return;
      coming.delete(from);
      const pieces = Array.from({ length: of }, (_, index) => now.parts.get(index + 1) ?? '');
      const handed = readHanded(pieces.join(''));
      if (handed !== null) offered({ ...handed, id, from });
      return;
    }
    const offer = mine.get(id);
    // Only whom it was offered to can take it.
    if (offer === undefined || offer.to !== from || (t !== 'taken' && t !== 'declined')) return;
    mine.delete(id);
    settled(offer.record, offer.to, t);
  };

  const heard = async ({ subject, bytes, reply }: Heard): Promise<void> => {
    const [, , , from = ''] = subject.split('.');
    const opened = await open(key, subject, bytes);
    if (opened.kind !== 'value' || !NAME.test(from) || over) return;
    if (reply !== null) line.tell(reply, await seal(key, `${subject} answer`, { heard: true }));
    if (typeof opened.value === 'object' && opened.value !== null)
      take(from, opened.value as Readonly<Record<string, unknown>>);
  };
  const stop = line.hear(passSubject(incident, device, '*'), (one) => void heard(one));

  return {
    offer: async (to, record) => {
      const id = newId();
      const json = JSON.stringify(record);
      const of = Math.max(1, Math.ceil(json.length / PIECE));
      mine.set(id, { record: record.facts.id, to });
      for (let part = 1; part <= of; part += 1) {
        const piece = json.slice((part - 1) * PIECE, part * PIECE);
        if ((await say(to, { t: 'part', id, part, of, text: piece })) === 'heard') continue;
        mine.delete(id);
        return { kind: 'nobody', why: 'It did not reach that device; the record stays with you.' };
      }
      return { kind: 'shown' };
    },
    settle: ({ id, from }, how) => {
      const tell = async (): Promise<void> => {
        while (!over && (await say(from, { t: how, id })) === 'nobody')
          await new Promise((resolve) => setTimeout(resolve, AGAIN));
      };
      void tell();
    },
    end: () => {
      over = true;
      stop();
    },
  };
}
