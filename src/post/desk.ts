// The command post itself: takes in what the server has, writes it to its own disk, and only then says so to the phone.

import {
  chainOf,
  createAccount,
  hashOf,
  type KeptMessage,
  type Message,
  open,
  type Question,
  type Reached,
  readHello,
  readRecordSubject,
  type Stream,
  seal,
  type Word,
  wordSubject,
} from '../link/index.ts';
import type { Desk, DeskParts } from './desk-parts.ts';
import { createIntake } from './intake.ts';
import { type Known, troublesOf, unknown } from './known.ts';
import type { Kept, Logged, Spot } from './log.ts';
import { startMending } from './mending.ts';
import { openMessage } from './open-message.ts';
import { createRecords } from './records.ts';
import { wordOf } from './word-of.ts';

/** Reads the log and is then ready to follow streams. Rejects where the log cannot be read. */
export async function openDesk(parts: DeskParts): Promise<Desk> {
  const { incident, key, line, devices, clock } = parts;
  const known = new Map<string, Known>();
  /** how far each stream was read, by its name */
  const reached = new Map<string, Reached>();
  const questions: Question[] = [...parts.questions];
  const streams = new Set<Stream>();
  const counts = { logged: 0, again: 0, foreign: 0, batches: 0 };
  const records = createRecords((spot) => readBack(spot));
  let arrival = 0;
  let notTaken = 0;

  const knownOf = async (device: string): Promise<Known> => {
    const here = known.get(device);
    if (here !== undefined) return here;
    const made = unknown(createAccount(await chainOf(incident, device)));
    // Another call may have made it meanwhile.
    if (!known.has(device)) known.set(device, made);
    return known.get(device) ?? made;
  };

  const readBack = async (spot: Spot): Promise<Message | null> => {
    const logged = await log.read(spot);
    const place = logged === null ? null : readRecordSubject(logged.subject);
    if (logged === null || place === null) return null;
    const message = await openMessage(key, logged.subject, logged.bytes, place.seq);
    return typeof message === 'string' ? null : message;
  };

  /** Takes a line of the log into account; gives the device it is of, or null. */
  const takeIn = async (
    { subject, bytes, at, made, place: number }: Logged,
    spot: Spot,
  ): Promise<string | null> => {
    // What was fetched out of turn has no place.
    if (number > 0) reached.set(made, { place: number, subject });
    const place = readRecordSubject(subject);
    if (place === null || place.incident !== incident) return null;
    const { device, seq } = place;
    const one = await knownOf(device);
    const message = await openMessage(key, subject, bytes, seq);
    const before = one.account.standing();
    const came =
      typeof message === 'string'
        ? ({ kind: 'spoiled', seq, why: message } as const)
        : ({ kind: 'message', seq, before: message.before, hash: await hashOf(message) } as const);
    const taken = one.account.take(came);
    if (taken === 'contrary') one.contrary += 1;
    if (taken !== 'taken') return device;
    one.heardAt = Math.max(one.heardAt ?? 0, at);
    const after = one.account.standing();
    arrival += 1;
    if (typeof message !== 'string' && one.account.admits(seq)) {
      const inOrder = before.upTo === seq - 1 && before.beyond.length === 0;
      await records.admit(message, { device, arrival, at, spot, inOrder });
    }
    if (before.beyond.length > 0 && (after.upTo !== before.upTo || after.broken !== null))
      records.disorder(device);
    return device;
  };

  const wordFor = (device: string): Word | null =>
    wordOf(device, { devices, known, records, questions, now: clock() });
  const tell = async (device: string): Promise<void> => {
    const word = wordFor(device);
    if (word === null) return;
    const subject = wordSubject(incident, device);
    line.tell(subject, await seal(key, subject, word));
  };

  /** Takes what was just written into account, and tells the phones that it is of. */
  const wrote = async (kept: readonly Kept[]): Promise<void> => {
    const touched = new Set<string>();
    for (const { logged, spot } of kept) {
      counts.logged += 1;
      try {
        const device = await takeIn(logged, spot);
        if (device !== null) touched.add(device);
      } catch {
        // It is on the disk; the others are not to wait for it.
        notTaken += 1;
      }
    }
    await Promise.allSettled([...touched].map(tell));
  };

  const answerHello = async (
    subject: string,
    bytes: KeptMessage['bytes'],
    reply: string | null,
  ): Promise<void> => {
    const device = subject.split('.')[2] ?? '';
    const listed = devices.get(device);
    const opened = await open(key, subject, bytes);
    const hello = opened.kind === 'value' ? readHello(opened.value) : null;
    if (listed === null || listed.outAt !== null || hello === null || reply === null) return;
    const claimed = await devices.claim(device, hello.install).catch(() => null);
    // Who the code belongs to could not be written down; the phone asks again.
    if (claimed === null) return;
    const one = await knownOf(device);
    if (claimed === hello.install) {
      one.heardAt = clock();
      one.ahead = hello.clock - clock();
      one.made = hello.made;
    }
    const word = wordFor(device);
    if (word !== null) line.tell(reply, await seal(key, wordSubject(incident, device), word));
  };

  const written = new Set<string>();
  const log = await parts.openLog(async ({ logged, spot }) => {
    written.add(logged.subject);
    await takeIn(logged, spot).catch(() => {
      notTaken += 1;
    });
  });
  const intake = createIntake({ log, written, incident, clock, counts, wrote });
  const mending = startMending({ incident, known, streams, clock, take: intake.take });
  const stopHearing = line.hear(
    `ask.${incident}.*`,
    ({ subject, bytes, reply }) => void answerHello(subject, bytes, reply),
  );

  return {
    records,
    log,
    counts,
    devices: () =>
      devices.all().map(({ device, name, outAt }) => {
        const one = known.get(device);
        const { heardAt = null, ahead = null, made = null } = one ?? {};
        const here = one?.account.count() ?? 0;
        return {
          device,
          name,
          out: outAt !== null,
          heardAt,
          ahead,
          made,
          here,
          troubles: one === undefined ? [] : troublesOf(one),
        };
      }),
    troubles: () => [
      ...intake.troubles(),
      ...(notTaken === 0
        ? []
        : [`${notTaken} messages are written and are not shown: reading them failed. They stay in its log.`]),
      ...(log.unreadable === 0
        ? []
        : [
            `${log.unreadable} lines of the post’s log cannot be read; phones are asked for what is missing.`,
          ]),
    ],
    follow: (stream) => {
      streams.add(stream);
      const stop = stream.follow(reached.get(stream.made) ?? null, (message) =>
        intake.take(message, stream.made),
      );
      return () => {
        streams.delete(stream);
        stop();
      };
    },
    question: async (record, text) => {
      const there = records.get(record);
      if (there === null) return false;
      const asked = { id: parts.newId(), record, text, at: new Date(clock()).toISOString() };
      await parts.keepQuestions([...questions, asked]);
      questions.push(asked);
      void tell(there.writer);
      return true;
    },
    questions: () => questions,
    settled: intake.settled,
    close: async () => {
      mending.end();
      stopHearing();
      await intake.close();
      await log.close();
    },
  };
}
