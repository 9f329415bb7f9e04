// The sound of utterances as the page keeps it: after their words, never in their place, and played with the ear deaf.

import { signal } from '@preact/signals';
import { beforeEach, describe, expect, it } from 'vitest';
import { appendToLog, emptyEnd, type Keys, openVault } from '../../src/record/store/index.ts';
import { exportRecords, readExport } from '../../src/record/store/transfer/index.ts';
import type { DoorState } from '../../src/screens/records/door.ts';
import { createKeeper } from '../../src/screens/records/keeper.ts';
import type { SoundChoice } from '../../src/screens/sound/choice.ts';
import { createPlayback, type SoundOutput } from '../../src/screens/sound/playback.ts';
import { createSounds, LEFT_TO_WORDS, type Sounds } from '../../src/screens/sound/sounds.ts';
import { compressed } from '../../src/speech/compressed/index.ts';
import { type MemoryShelf, memoryShelf } from '../record/store/memory-shelf.ts';

/** Invented. */
const clip = compressed(Float32Array.from({ length: 8000 }, (_, at) => 0.3 * Math.sin(at / 9)));
const lies = (shelf: MemoryShelf): readonly string[] =>
  [...shelf.lies.keys()].filter((key) => key.startsWith('["clip"'));

let shelf: MemoryShelf;
let keys: Keys;
let sounds: Sounds;
const unwritten = signal(0);
const choice = signal<SoundChoice>('until-closed');
const now = signal<DoorState>({ state: 'open', by: 'device' });
let room: number | null;

beforeEach(async () => {
  shelf = memoryShelf();
  const opened = await openVault(shelf);
  if (opened.kind !== 'open') throw new Error(opened.kind);
  keys = opened.keys;
  [unwritten.value, choice.value, now.value, room] = [
    0,
    'until-closed',
    { state: 'open', by: 'device' },
    null,
  ];
  sounds = createSounds({
    shelf,
    door: { now, keys: () => (now.value.state === 'open' ? keys : null) },
    keeper: { unwritten, settled: async () => undefined },
    choice,
    room: async () => room,
  });
  await sounds.look('r1');
});

describe('the sound of an utterance', () => {
  it('is kept, sealed, and read again as it was', async () => {
    sounds.keep('r1', 'd-2', clip);
    await sounds.settled();
    expect(lies(shelf)).toEqual(['["clip","r1","d-2"]']);
    const bytes = (shelf.lies.get('["clip","r1","d-2"]') as { data: Uint8Array }).data;
    expect(Buffer.from(bytes).includes('WAVE')).toBe(false);
    expect(await sounds.read('r1', 'd-2')).toEqual(clip);
    expect([...sounds.there.value]).toEqual(['d-2']);
  });

  it('waits until all words are on the disk, and can be heard meanwhile', async () => {
    unwritten.value = 1;
    sounds.keep('r1', 'd-2', clip);
    await sounds.settled();
    expect(lies(shelf)).toEqual([]);
    expect(await sounds.read('r1', 'd-2')).toEqual(clip);
    unwritten.value = 0;
    await sounds.settled();
    expect(lies(shelf)).toHaveLength(1);
  });

  it('leaves the last of the room to words, and says so', async () => {
    room = LEFT_TO_WORDS - 1;
    sounds.keep('r1', 'd-2', clip);
    await sounds.settled();
    expect(lies(shelf)).toEqual([]);
    expect(sounds.there.value.size).toBe(0);
    expect(sounds.fault.value).toContain('nearly full');
    room = LEFT_TO_WORDS;
    sounds.keep('r1', 'd-3', clip);
    await sounds.settled();
    expect(lies(shelf)).toHaveLength(1);
    expect(sounds.fault.value).toBeNull();
  });

  it('that cannot be written is said and does not keep the next from being written', async () => {
    shelf.failNext('full');
    sounds.keep('r1', 'd-2', clip);
    await sounds.settled();
    expect(sounds.fault.value).toContain('could not be kept');
    expect(sounds.there.value.size).toBe(0);
    sounds.keep('r1', 'd-3', clip);
    await sounds.settled();
    expect(lies(shelf)).toEqual(['["clip","r1","d-3"]']);
  });

  it('is not kept where none is wanted', async () => {
    choice.value = 'off';
    sounds.keep('r1', 'd-2', clip);
    await sounds.settled();
    expect(lies(shelf)).toEqual([]);
  });

  it('goes with its record, what waits too, and leaves that of others', async () => {
    sounds.keep('r1', 'd-2', clip);
    sounds.keep('r2', 'e-2', clip);
    await sounds.settled();
    unwritten.value = 1;
    sounds.keep('r1', 'd-3', clip);
    await sounds.drop('r1');
    unwritten.value = 0;
    await sounds.settled();
    expect(lies(shelf)).toEqual(['["clip","r2","e-2"]']);
    expect(sounds.there.value.size).toBe(0);
  });

  it('is forgotten by a locked page', async () => {
    unwritten.value = 1;
    sounds.keep('r1', 'd-2', clip);
    now.value = { state: 'locked', hasPasskey: false };
    expect(sounds.there.value.size).toBe(0);
    expect(await sounds.read('r1', 'd-2')).toBeNull();
  });

  it('is in no export', async () => {
    const facts = { id: 'r1', kind: 'live', title: '', startedAt: '2031-04-05T10:00:00Z' } as const;
    const event = { format: 2, id: 'd-2', device: 'd', seq: 2, time: '2031-04-05T10:00:00Z' };
    const payload = { text: 'hm', heardAt: '2031-04-05T10:00:00Z', zone: 'UTC' };
    const events = [{ ...event, kind: 'utterance', payload }];
    await appendToLog(shelf, keys, await emptyEnd('r1'), { facts, summary: {}, events, open: true });
    const passphrase = 'seven marmots below the col';
    const without = await exportRecords(shelf, keys, ['r1'], passphrase);
    sounds.keep('r1', 'd-2', clip);
    await sounds.settled();
    const beside = await exportRecords(shelf, keys, ['r1'], passphrase);
    if (without.kind !== 'file' || beside.kind !== 'file') throw new Error('no file');
    expect(beside.text).toHaveLength(without.text.length);
    const read = await readExport(beside.text, passphrase);
    expect(read.kind === 'bundle' && read.records[0]?.rows.map(({ event: one }) => one)).toEqual(events);
  }, 60_000);
});

describe('a full device', () => {
  it('gives the room of sound to words, that of other records first, and loses no event', async () => {
    sounds.keep('r1', 'd-1', clip);
    for (let number = 1; number <= 50; number += 1) sounds.keep('r2', `e-${number}`, clip);
    await sounds.settled();
    // Full as long as more than one sound lies there.
    const full: MemoryShelf = {
      ...shelf,
      write: async (write) => {
        if (write.add !== undefined && lies(shelf).length > 1) shelf.failNext('full');
        await shelf.write(write);
      },
    };
    const door = { now, keys: () => keys } as unknown as Parameters<typeof createKeeper>[1];
    const keeper = createKeeper(full, door, () => true, sounds.makeRoom);
    const { beginExam } = await import('../../src/record/index.ts');
    const reader = { begin: () => ({}), read: () => ({ frames: [], context: {} }) };
    const exam = beginExam(reader as never, { device: 'd', startedAt: 0, zone: 'UTC' });
    const facts = { id: 'r1', kind: 'live', title: '', startedAt: '2031-04-05T10:00:00Z' } as const;
    keeper.keep({ facts, exam, ahead: 0 } as never);
    await keeper.settled();
    expect(keeper.fault.value).toBeNull();
    expect(keeper.kept.value).toEqual({ record: 'r1', events: 1 });
    expect((await keeper.read('r1')).events).toHaveLength(1);
    expect(lies(shelf)).toEqual(['["clip","r1","d-1"]']);
    expect(sounds.fault.value).toContain('was let go');
  });
});

describe('playing', () => {
  const begun: { stopped: boolean; onended: (() => void) | null; length: number }[] = [];
  const output = (): SoundOutput =>
    ({
      destination: {},
      resume: async () => undefined,
      createBuffer: (_channels: number, length: number) => ({ length, copyToChannel: () => undefined }),
      createBufferSource: () => {
        const one = { stopped: false, onended: null as (() => void) | null, length: 0 };
        begun.push(one);
        return Object.assign(one, {
          connect: () => undefined,
          start(this: typeof one & { buffer: { length: number } }) {
            this.length = this.buffer.length;
          },
          stop(this: typeof one) {
            this.stopped = true;
          },
        });
      },
    }) as unknown as SoundOutput;
  const later: (() => void)[] = [];
  beforeEach(() => {
    begun.length = 0;
    later.length = 0;
  });

  it('makes whoever listens deaf from before the sound until after it has died away', async () => {
    sounds.keep('r1', 'd-2', clip);
    const playback = createPlayback(sounds, output, (run) => later.push(run));
    const playing = playback.play('r1', 'd-2');
    expect(playback.sounding.value).toBe(true);
    expect(await playing).toBe(true);
    expect(begun.map(({ length }) => length)).toEqual([8000]);
    begun[0]?.onended?.();
    expect([playback.playing.value, playback.sounding.value]).toEqual([null, true]);
    for (const run of later) run();
    expect(playback.sounding.value).toBe(false);
  });

  it('of another utterance ends the one before, whose late end changes nothing', async () => {
    sounds.keep('r1', 'd-2', clip);
    sounds.keep('r1', 'd-3', clip);
    const playback = createPlayback(sounds, output, (run) => later.push(run));
    await playback.play('r1', 'd-2');
    await playback.play('r1', 'd-3');
    expect(begun.map(({ stopped }) => stopped)).toEqual([true, false]);
    begun[0]?.onended?.();
    for (const run of later) run();
    expect([playback.playing.value, playback.sounding.value]).toEqual(['d-3', true]);
  });

  it('of what has no sound says so and leaves nobody deaf', async () => {
    const playback = createPlayback(sounds, output, (run) => later.push(run));
    expect(await playback.play('r1', 'd-9')).toBe(false);
    for (const run of later) run();
    expect(playback.sounding.value).toBe(false);
  });
});
