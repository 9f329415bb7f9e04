// The command post itself: takes in what the server has, writes it to its own disk, and only then says so to the phone.

import {
  type Account,
  chainOf,
  createAccount,
  hashOf,
  type KeptMessage,
  type Line,
  type Mate,
  type Message,
  open,
  type Question,
  readHello,
  readMessage,
  readRecordSubject,
  runsInWords,
  type Stream,
  seal,
  type Word,
  wordSubject,
} from '../link/index.ts';
import type { Devices } from './devices.ts';
import type { Kept, Logged, PostLog, Spot } from './log.ts';
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
/** After a write that failed, ms. */
const AGAIN = 2_000;
const BATCH = 1_000;
/** A phone says now and then what it made; a gap that stays this long is asked of the server, ms. */
const GAP_AGE = 3_000;

interface Known {
  readonly account: Account;
  heardAt: number | null;
  ahead: number | null;
  made: number | null;
  contrary: number;
  gapSince: number | null;
}

/** Reads the log and is then ready to follow streams. Rejects where the log cannot be read. */
export async function openDesk(parts: DeskParts): Promise<Desk> {
  const { incident, key, line, devices, clock } = parts;
  const known = new Map<string, Known>();
  const places = new Map<string, number>();
  const questions: Question[] = [...parts.questions];
  const streams = new Set<Stream>();
  const counts = { logged: 0, again: 0, foreign: 0, batches: 0 };
  const records = createRecords((spot) => readBack(spot));
  let arrival = 0;
  let trouble: string | null = null;
  let queue: { readonly message: KeptMessage; readonly made: string }[] = [];
  let writing: Promise<void> | null = null;
  let over = false;

  const knownOf = async (device: string): Promise<Known> => {
    const here = known.get(device);
    if (here !== undefined) return here;
    const account = createAccount(await chainOf(incident, device));
    const made = { account, heardAt: null, ahead: null, made: null, contrary: 0, gapSince: null };
    known.set(device, made);
    return made;
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
    places.set(made, Math.max(places.get(made) ?? 0, number));
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

  const isNew = ({ subject }: KeptMessage): boolean => {
    const place = readRecordSubject(subject);
    if (place === null || place.incident !== incident) {
      counts.foreign += 1;
      return false;
    }
    return true;
  };
  /** The same bytes at the same place may come twice, from the server and from a vehicle: only one is written. */
  const written = new Set<string>();

  const write = async (): Promise<void> => {
    while (queue.length > 0 && !over) {
      const batch = queue.slice(0, BATCH);
      const seen = new Set<string>();
      const fresh = batch.filter(({ message }) => {
        if (!isNew(message)) return false;
        if (written.has(message.subject) || seen.has(message.subject)) {
          counts.again += 1;
          return false;
        }
        seen.add(message.subject);
        return true;
      });
      const at = clock();
      const logged = fresh.map(({ message, made }): Logged => ({ ...message, made, at }));
      const added = logged.length === 0 ? { kind: 'added' as const, spots: [] } : await log.add(logged);
      if (added.kind !== 'added') {
        trouble = `NOT WRITTEN at the post: ${added.why}. Phones keep everything and are told of nothing that is not written; it is tried again.`;
        await new Promise((resolve) => setTimeout(resolve, AGAIN));
        continue;
      }
      trouble = null;
      queue = queue.slice(batch.length);
      counts.batches += 1;
      const touched = new Set<string>();
      for (const [index, one] of logged.entries()) {
        const spot = added.spots[index];
        if (spot === undefined) continue;
        written.add(one.subject);
        counts.logged += 1;
        const device = await takeIn(one, spot);
        if (device !== null) touched.add(device);
      }
      await Promise.all([...touched].map(tell));
    }
  };
  const run = (): Promise<void> => {
    writing ??= write().finally(() => {
      writing = null;
    });
    return writing;
  };
  const take = (message: KeptMessage, made: string): void => {
    queue.push({ message, made });
    void run();
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

  /** Messages that are missing between others are asked of the servers by their subject. */
  const mend = async (): Promise<void> => {
    for (const [device, one] of known) {
      const { missing } = one.account.standing();
      if (missing.length === 0) {
        one.gapSince = null;
        continue;
      }
      one.gapSince ??= clock();
      if (clock() - one.gapSince < GAP_AGE) continue;
      for (const [from, to] of missing.slice(0, 20))
        for (let seq = from; seq <= Math.min(to, from + 100); seq += 1)
          for (const stream of streams) {
            const found = await stream.find(`rec.${incident}.${device}.${seq}`);
            // Its place is not moved on by what was fetched out of turn.
            if (found !== null) take({ ...found, place: 0 }, stream.made);
          }
    }
  };

  const log = await parts.openLog(async ({ logged, spot }) => {
    written.add(logged.subject);
    await takeIn(logged, spot);
  });
  const stopHearing = line.hear(
    `ask.${incident}.*`,
    ({ subject, bytes, reply }) => void answerHello(subject, bytes, reply),
  );
  const mending = setInterval(() => void mend(), GAP_AGE);

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
      ...(trouble === null ? [] : [trouble]),
      ...(log.unreadable === 0
        ? []
        : [
            `${log.unreadable} lines of the post’s log cannot be read; phones are asked for what is missing.`,
          ]),
    ],
    follow: (stream) => {
      streams.add(stream);
      const stop = stream.follow(places.get(stream.made) ?? 0, (message) => take(message, stream.made));
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
    settled: async () => {
      while (writing !== null) await writing;
    },
    close: async () => {
      over = true;
      clearInterval(mending);
      stopHearing();
      await writing?.catch(() => undefined);
      await log.close();
    },
  };
}

function troublesOf({ account, made, ahead, contrary }: Known): readonly string[] {
  const { missing, spoiled, broken, upTo } = account.standing();
  const minutes = Math.round(Math.abs(ahead ?? 0) / 60_000);
  return [
    ...(missing.length === 0
      ? []
      : [
          `Missing: message ${runsInWords(missing)}. What came after it is shown and may be corrected by it.`,
        ]),
    ...spoiled.map(({ seq, why }) => `Message ${seq} cannot be read: ${why}. It is kept and not shown.`),
    ...(broken === null
      ? []
      : [
          `Message ${broken.seq} does not follow message ${upTo}: forged, or two phones use one code. From there on nothing is taken in; give the phone a fresh code.`,
        ]),
    ...(contrary === 0
      ? []
      : [`${contrary} messages came under a number that was taken: what came first stays.`]),
    ...(minutes < 2
      ? []
      : [`Its clock is ${minutes} min ${(ahead ?? 0) > 0 ? 'ahead of' : 'behind'} the post’s.`]),
    ...(made === null || made <= account.count()
      ? []
      : [`${made - account.count()} messages are still on the phone or on their way.`]),
  ];
}
