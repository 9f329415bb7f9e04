// A phone's session against a server in memory: what its own disk refuses is not sent, and a cut loses nothing.

import { describe, expect, it } from 'vitest';
import {
  chainOf,
  createMemoryLedger,
  hashOf,
  importKey,
  type Ledger,
  type Message,
  open,
  random,
  readMessage,
  readRecordSubject,
  seal,
  startSession,
  wordSubject,
} from '../../src/link/index.ts';
import { inventedEvent } from '../post/scene.ts';
import { createMemoryServer } from './memory-server.ts';

const [INCIDENT, DEVICE] = ['invented', 'ada-1'];
const FACTS = { id: 'rec', kind: 'live', title: '', startedAt: '2031-04-05T10:00:00Z' } as const;
const events = (count: number) =>
  Array.from({ length: count }, (_, index) => inventedEvent('page-a', index + 1, FACTS.startedAt));

async function scene(ledger: Ledger = createMemoryLedger('install')) {
  const server = createMemoryServer();
  const key = await importKey(random(32));
  const post = server.line();
  const line = server.line();
  const came: Message[] = [];
  const word = async (clock = 0, upTo = came.length) => {
    const hashes = await Promise.all(came.slice(0, upTo).map(hashOf));
    return seal(key, wordSubject(INCIDENT, DEVICE), {
      v: 1,
      install: 'install',
      upTo,
      hash: hashes.at(-1) ?? (await chainOf(INCIDENT, DEVICE)),
      beyond: [],
      spoiled: [],
      troubles: [],
      clock,
      questions: [],
      passed: [],
      mates: [],
    });
  };
  post.hear(`ask.${INCIDENT}.${DEVICE}`, async ({ reply }) => {
    if (reply !== null) post.tell(reply, await word());
  });
  server.stream.follow(null, async ({ subject, bytes }) => {
    const opened = await open(key, subject, bytes);
    const read =
      opened.kind === 'value' ? readMessage(opened.value, readRecordSubject(subject)?.seq ?? 0) : null;
    if (read?.kind === 'message') came.push(read.message);
    post.tell(wordSubject(INCIDENT, DEVICE), await word());
  });
  const begin = () =>
    startSession({
      incident: INCIDENT,
      device: DEVICE,
      key,
      line,
      ledger,
      read: async () => ({ facts: FACTS, events: events(20) }),
      clock: Date.now,
      pace: { hello: 100, patience: 500, again: 50 },
    });
  const tell = async (clock: number, upTo: number) =>
    post.tell(wordSubject(INCIDENT, DEVICE), await word(clock, upTo));
  return { server, line, came, begin, tell };
}

describe('a session', () => {
  it('sends each event once and in order, each following the one before', async () => {
    const { came, begin } = await scene();
    const session = await begin();
    session.offer(FACTS, events(5));
    session.offer(FACTS, events(8));
    session.offer(FACTS, events(8));
    await expect.poll(() => session.state().tally).toMatchObject({ made: 8, atPost: 8 });
    expect(came.map(({ event }) => event.id)).toEqual(events(8).map(({ id }) => id));
    let before = await chainOf(INCIDENT, DEVICE);
    for (const message of came) {
      expect(message.before).toBe(before);
      before = await hashOf(message);
    }
    await session.end();
  });

  it('believes no word of the post that a later one overtook, and believes a post whose clock was set back', async () => {
    const { came, begin, tell } = await scene();
    const session = await begin();
    session.offer(FACTS, events(5));
    await expect.poll(() => session.state().tally).toMatchObject({ made: 5, atPost: 5 });
    const atPost: number[] = [];
    session.watch(({ tally }) => atPost.push(tally.atPost));
    await tell(5_000, 5);
    await expect.poll(() => session.state().word?.clock).toBe(5_000);
    await tell(4_000, 2);
    await tell(5_001, 5);
    await expect.poll(() => session.state().word?.clock).toBe(5_001);
    expect(atPost.every((count) => count === 5)).toBe(true);
    expect(came).toHaveLength(5);
    await tell(-20_000, 2);
    await expect.poll(() => atPost.includes(2)).toBe(true);
    await session.end();
  });

  it('sends nothing that its own disk did not take into the book, says so, and sends it once the disk does', async () => {
    const memory = createMemoryLedger('install');
    let isFull = true;
    const { came, begin } = await scene({
      ...memory,
      add: async (row) => {
        if (isFull) throw new Error('full');
        await memory.add(row);
      },
    });
    const session = await begin();
    session.offer(FACTS, events(3));
    await expect.poll(() => session.state().troubles.join()).toContain('disk does not take the list');
    expect(came).toEqual([]);
    isFull = false;
    session.offer(FACTS, events(4));
    await expect.poll(() => came.length).toBe(4);
    await expect.poll(() => session.state()).toMatchObject({ troubles: [], tally: { atPost: 4 } });
    await session.end();
  });

  it('goes on after a restart with the numbers it had, from its log alone', async () => {
    const ledger = createMemoryLedger('install');
    const { came, begin, line } = await scene(ledger);
    const first = await begin();
    await expect.poll(() => first.state().wordAt).not.toBeNull();
    line.cut();
    first.offer(FACTS, events(6));
    await first.settled();
    expect(first.state().tally).toMatchObject({ made: 6, atPost: 0, waiting: 6 });
    // Ended without a word to the server, as a killed page is; the line lives on for the next.
    const next = await begin();
    line.join();
    next.offer(FACTS, events(7));
    await expect.poll(() => next.state().tally).toMatchObject({ made: 7, atPost: 7 });
    expect(came.map(({ seq }) => seq)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    await next.end();
    await first.end();
  });
});
