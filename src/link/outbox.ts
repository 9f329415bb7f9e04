// The phone's book of what it sent: which message waits, which a server has, which the post has written; it forgets nothing.

import { inRuns, type Word } from './word.ts';

/** Some events of one record, numbered one after another; kept on the phone's disk before any of them is sent. */
export interface Row {
  /** the number of the first */
  readonly from: number;
  readonly record: string;
  /** ids of the events */
  readonly events: readonly string[];
  /** the hash before the first, and after the last */
  readonly before: string;
  readonly after: string;
}

/** What the phone keeps of the post's word, so that it is still known after a restart without a connection. */
export interface Got {
  readonly upTo: number;
  readonly beyond: Word['beyond'];
}

export const NOTHING_GOT: Got = { upTo: 0, beyond: [] };

export type Where =
  | { readonly at: 'phone' }
  /** `by`: the vehicle whose server has it, or null */
  | { readonly at: 'server'; readonly by: string | null; readonly since: number };

export interface Tally {
  /** messages made so far */
  readonly made: number;
  /** written at the post */
  readonly atPost: number;
  /** on a server, and not yet known to be written at the post */
  readonly onServer: number;
  /** of those, on a vehicle's own server */
  readonly onVehicle: number;
  readonly vehicle: string | null;
  /** only on this phone */
  readonly waiting: number;
}

export type Heard = 'fine' | 'other-history';

export interface Outbox {
  readonly rows: () => readonly Row[];
  readonly made: () => number;
  readonly end: () => string;
  add(row: Row): void;
  /** a server's answer; `at` in epoch ms */
  stored(seq: number, by: string | null, at: number): void;
  /** the post's word: `other-history` where what it has up to there is not what this phone sent */
  heard(word: Word): Heard;
  got(): Got;
  /** numbers to be sent, lowest first: those that wait, and those a server has had for longer than `patience` ms */
  toSend(now: number, patience: number, most: number): readonly number[];
  /** events whose message was spoiled on its way and that were not sent anew yet */
  takeSpoiled(): readonly { readonly record: string; readonly event: string }[];
  tally(): Tally;
  rowOf(seq: number): Row | null;
}

/** An outbox as it was kept; `hashAt` gives the hash after one of this phone's own messages, or null where not known. */
export function createOutbox(begin: string, kept: readonly Row[], before: Got): Outbox {
  const rows: Row[] = [...kept].sort((a, b) => a.from - b.from);
  const open = new Map<number, Where>();
  const anew = new Set<number>();
  let spoiled: number[] = [];
  let got = before;

  const made = (): number => {
    const last = rows.at(-1);
    return last === undefined ? 0 : last.from + last.events.length - 1;
  };
  const isAtPost = (seq: number): boolean => seq <= got.upTo || inRuns(got.beyond, seq);
  const rowOf = (seq: number): Row | null => {
    let [low, high] = [0, rows.length - 1];
    while (low <= high) {
      const middle = (low + high) >> 1;
      const row = rows[middle];
      if (row === undefined) return null;
      if (seq < row.from) high = middle - 1;
      else if (seq >= row.from + row.events.length) low = middle + 1;
      else return row;
    }
    return null;
  };
  const openUp = (from: number): void => {
    for (let seq = from; seq <= made(); seq += 1) if (!isAtPost(seq)) open.set(seq, { at: 'phone' });
  };
  openUp(1);

  return {
    rows: () => rows,
    made,
    end: () => rows.at(-1)?.after ?? begin,
    rowOf,
    add: (row) => {
      rows.push(row);
      openUp(row.from);
    },
    stored: (seq, by, at) => {
      if (open.has(seq)) open.set(seq, { at: 'server', by, since: at });
    },
    heard: (word) => {
      // The hash can be compared where a row of ours ends there; elsewhere the next word will tell.
      const mine = word.upTo === 0 ? begin : endingAt(rows, word.upTo);
      if (word.upTo > made() || (mine !== null && mine !== word.hash)) return 'other-history';
      got = { upTo: word.upTo, beyond: word.beyond };
      for (const seq of open.keys()) if (isAtPost(seq)) open.delete(seq);
      // A post that lost its disk has less than it had: what it lacks is sent again.
      for (let seq = word.upTo + 1; seq <= made(); seq += 1)
        if (!isAtPost(seq) && !open.has(seq)) open.set(seq, { at: 'phone' });
      for (const seq of word.spoiled)
        if (!anew.has(seq) && rowOf(seq) !== null) {
          anew.add(seq);
          spoiled.push(seq);
        }
      return 'fine';
    },
    got: () => got,
    toSend: (now, patience, most) => {
      const due: number[] = [];
      for (const [seq, where] of [...open].sort(([a], [b]) => a - b)) {
        if (due.length === most) break;
        if (where.at === 'phone' || now - where.since > patience) due.push(seq);
      }
      return due;
    },
    takeSpoiled: () => {
      const taken = spoiled.flatMap((seq) => {
        const row = rowOf(seq);
        const event = row?.events[seq - row.from];
        return row === null || event === undefined ? [] : [{ record: row.record, event }];
      });
      spoiled = [];
      return taken;
    },
    tally: () => {
      const away = [...open.values()].flatMap((where) => (where.at === 'server' ? [where] : []));
      const onVehicle = away.filter(({ by }) => by !== null);
      return {
        made: made(),
        atPost: made() - open.size,
        onServer: away.length,
        onVehicle: onVehicle.length,
        vehicle: onVehicle.at(-1)?.by ?? null,
        waiting: open.size - away.length,
      };
    },
  };
}

const endingAt = (rows: readonly Row[], seq: number): string | null =>
  rows.find((row) => row.from + row.events.length - 1 === seq)?.after ?? null;
