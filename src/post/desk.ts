// The command post itself: takes in what the server has, writes it to its own disk, and only then says so to the phone.

import {
  chainOf,
  createAccount,
  hashOf,
  type KeptMessage,
  type Line,
  type Mate,
  type Message,
  open,
  type Question,
  type Reached,
  readHello,
  readMessage,
  readRecordSubject,
  type Stream,
  seal,
  type Word,
  wordSubject,
} from '../link/index.ts';
import type { Devices } from './devices.ts';
import { createIntake } from './intake.ts';
import { type Known, troublesOf, unknown } from './known.ts';
import type { Kept, Logged, PostLog, Spot } from './log.ts';
import { startMending } from './mending.ts';
import { createRecords, type Records } from './records.ts';

export interface DeskParts {
  readonly incident: string;
  readonly key: CryptoKey;
  readonly line: Line;
  readonly devices: Devices;
  /** keeps the questions over a restart; what it rejects with is said to who asked */
  readonly keepQuestions: (questions: readonly Question[]) => Promise<void>;
  readonly questions: readonly Question[];
  /** opens the log and hands over what it holds */
  readonly openLog: (each: (kept: Kept) => Promise<void>) => Promise<PostLog>;
  /** epoch ms */
  readonly clock: () => number;
  readonly newId: () => string;
}

export interface DeviceView {
  readonly device: string;
  readonly name: string;
  readonly out: boolean;
  /** epoch ms, the post's clock; null before it was heard of since the post began */
  readonly heardAt: number | null;
  /** how far the phone's clock is ahead of the post's, ms; null where it is not known */
  readonly ahead: number | null;
  /** messages that the phone says it made, and those that are here */
  readonly made: number | null;
  readonly here: number;
  /** in plain words, empty where all is well */
  readonly troubles: readonly string[];
}

export interface Desk {
  readonly records: Records;
  readonly log: PostLog;
  devices(): readonly DeviceView[];
  /** what the post itself cannot do at present, in plain words */
  troubles(): readonly string[];
  /** reads a stream of the server from where the log ends; gives what ends it */
  follow(stream: Stream): () => void;
  /** asks the responder who writes the record; false where there is no such record; rejects where it cannot be kept */
  question(record: string, text: string): Promise<boolean>;
  questions(): readonly Question[];
  /** counts what came since it began */
  readonly counts: { logged: number; again: number; foreign: number; batches: number };
  /** settles when all that came so far is written */
  settled(): Promise<void>;
  close(): Promise<void>;
}

/** Heard of within this time, a device is shown to the others as being there, ms; our choice, no source. */
const LATELY = 5 * 60_000;

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

  const openMessage = async (
    subject: string,
    bytes: KeptMessage['bytes'],
    seq: number,
  ): Promise<Message | string> => {
    const opened = await open(key, subject, bytes);
    if (opened.kind === 'altered')
      return 'it was altered on its way, or sealed with another key or for another place';
    if (opened.kind === 'not-sealed') return 'it is not sealed';
    const read = readMessage(opened.value, seq);
    return read.kind === 'message' ? read.message : read.why;
  };

  const readBack = async (spot: Spot): Promise<Message | null> => {
    const logged = await log.read(spot);
    const place = logged === null ? null : readRecordSubject(logged.subject);
    if (logged === null || place === null) return null;
    const message = await openMessage(logged.subject, logged.bytes, place.seq);
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
    const message = await openMessage(subject, bytes, seq);
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

  const wordFor = async (device: string): Promise<Word | null> => {
    const listed = devices.get(device);
    const one = known.get(device);
    if (listed === null || listed.outAt !== null || one === undefined) return null;
    const { upTo, hash, beyond, spoiled, broken } = one.account.standing();
    const lately = (at: number | null): boolean => at !== null && clock() - at < LATELY;
    return {
      v: 1,
      install: listed.install ?? '',
      upTo,
      hash,
      beyond,
      spoiled: spoiled.map(({ seq }) => seq),
      troubles: broken === null ? [] : [`message ${broken.seq} does not follow the one before it`],
      clock: clock(),
      questions: questions.filter(({ id, record }) => {
        const there = records.get(record);
        return there?.writer === device && !there.asked.has(id);
      }),
      passed: records
        .all()
        .filter(({ writer, devices: wrote }) => writer !== device && wrote.has(device))
        .map(({ facts, writer }) => ({
          record: facts.id,
          to: writer,
          name: devices.get(writer)?.name ?? writer,
        })),
      mates: devices
        .all()
        .filter(
          (mate) =>
            mate.device !== device && mate.outAt === null && lately(known.get(mate.device)?.heardAt ?? null),
        )
        .map(({ device: id, name }): Mate => ({ device: id, name })),
    };
  };
  const tell = async (device: string): Promise<void> => {
    const word = await wordFor(device);
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
    const word = await wordFor(device);
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
