// Keeps the sound of utterances after their words: never before an event, never in the place of one, and none once it is full.

import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { type Clip, dropClips, keepClip, readClip, type Shelf, soundKept } from '../../record/store/index.ts';
import type { Door } from '../records/door.ts';
import type { Keeper } from '../records/keeper.ts';
import type { SoundChoice } from './choice.ts';

export interface Sounds {
  /** utterances of the open record that can be heard again */
  readonly there: ReadonlySignal<ReadonlySet<string>>;
  /** a sentence where sound is not kept though it should be, else null */
  readonly fault: Signal<string | null>;
  /** keeps the sound of an utterance (the id of its event), unless none is wanted; returns at once */
  keep(record: string, utterance: string, clip: Clip): void;
  /** null where there is none or it cannot be read */
  read(record: string, utterance: string): Promise<Clip | null>;
  /** lets the sound of a record go */
  drop(record: string): Promise<void>;
  /** settles when what was handed over so far is kept, or cannot be kept now */
  settled(): Promise<void>;
  /** lets some sound go, that of other records than the open one first; gives of how many utterances */
  makeRoom(): Promise<number>;
  /** the open record, or null */
  look(record: string | null): Promise<void>;
}

export interface SoundsParts {
  readonly shelf: Shelf;
  readonly door: Pick<Door, 'now' | 'keys'>;
  readonly keeper: Pick<Keeper, 'unwritten' | 'settled'>;
  readonly choice: ReadonlySignal<SoundChoice>;
  /** bytes that may still be used, or null where the browser does not tell */
  readonly room: () => Promise<number | null>;
}

/** Sound leaves this much to words, bytes: an examination of a day takes a tenth of it. Our choice, no source. */
export const LEFT_TO_WORDS = 50_000_000;
/** What waits to be kept is held in memory; beyond so many the oldest goes. */
const MOST_WAITING = 100;
/** So many are let go at once when words need their room. */
const STEP = 50;

const NO_ROOM =
  'The device is nearly full: words are kept, and their sound is not. Free some room to keep sound again.';
const LET_GO =
  'The device is full: sound that was kept before was let go, so that words could be kept. Free some room.';
const NOT_WRITTEN = 'The sound of what was said last could not be kept. Its words are.';

interface Waiting {
  readonly record: string;
  readonly utterance: string;
  readonly clip: Clip;
}

export function createSounds({ shelf, door, keeper, choice, room }: SoundsParts): Sounds {
  const there = signal<ReadonlySet<string>>(new Set());
  const fault = signal<string | null>(null);
  let waiting: readonly Waiting[] = [];
  let open: string | null = null;
  let pumping: Promise<void> | null = null;

  const put = async (one: Waiting): Promise<void> => {
    const keys = door.keys();
    if (keys === null) return;
    const left = await room();
    if (left !== null && left < LEFT_TO_WORDS) {
      fault.value = NO_ROOM;
      return;
    }
    try {
      await keepClip(shelf, keys, one.record, one.utterance, one.clip);
      fault.value = null;
    } catch {
      fault.value = NOT_WRITTEN;
    }
  };
  const forget = (gone: (one: Waiting) => boolean): void => {
    waiting = waiting.filter((one) => !gone(one));
  };
  const lacks = (record: string, utterance: string): void => {
    if (record === open) there.value = new Set([...there.peek()].filter((one) => one !== utterance));
  };
  const pump = async (): Promise<void> => {
    for (;;) {
      await keeper.settled();
      const [next] = waiting;
      // Words first: as long as any is not on the disk, no sound goes there.
      if (next === undefined || keeper.unwritten.peek() > 0 || door.keys() === null) return;
      await put(next);
      forget((one) => one === next);
      if (fault.peek() !== null) lacks(next.record, next.utterance);
    }
  };
  const run = (): Promise<void> => {
    pumping ??= pump().finally(() => {
      pumping = null;
      // What came while it ended must not wait for the next.
      if (waiting.length > 0 && keeper.unwritten.peek() === 0 && door.keys() !== null) void run();
    });
    return pumping;
  };
  keeper.unwritten.subscribe((events) => {
    if (events === 0 && waiting.length > 0) void run();
  });
  door.now.subscribe(({ state }) => {
    if (state === 'locked') [waiting, there.value] = [[], new Set()];
  });

  return {
    there,
    fault,
    keep: (record, utterance, clip) => {
      if (choice.peek() === 'off') return;
      waiting = [...waiting, { record, utterance, clip }];
      const [oldest] = waiting;
      if (waiting.length > MOST_WAITING && oldest !== undefined) {
        forget((one) => one === oldest);
        lacks(oldest.record, oldest.utterance);
      }
      if (record === open) there.value = new Set([...there.peek(), utterance]);
      void run();
    },
    read: async (record, utterance) => {
      const held = waiting.find((one) => one.record === record && one.utterance === utterance);
      const keys = door.keys();
      return held?.clip ?? (keys === null ? null : readClip(shelf, keys, record, utterance));
    },
    drop: async (record) => {
      forget((one) => one.record === record);
      await pumping;
      await dropClips(shelf, record);
      if (record === open) there.value = new Set();
    },
    settled: async () => {
      while (pumping !== null) await pumping;
    },
    makeRoom: async () => {
      const all = await soundKept(shelf);
      const others = all.filter((one) => one.record !== open);
      const gone = [...others, ...all.filter((one) => one.record === open)].slice(0, STEP);
      if (gone.length > 0) {
        await shelf.write({ remove: gone.map(({ key }) => key) });
        fault.value = LET_GO;
      }
      for (const { record, utterance } of gone) lacks(record, utterance);
      return gone.length;
    },
    look: async (record) => {
      if (record === open) return;
      [open, there.value] = [record, new Set()];
      if (record === null) return;
      const found = (await soundKept(shelf, record)).map(({ utterance }) => utterance);
      const held = waiting.filter((one) => one.record === record).map(({ utterance }) => utterance);
      if (record === open) there.value = new Set([...found, ...held, ...there.peek()]);
    },
  };
}
