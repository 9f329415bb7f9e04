// A phone in an incident: what its log keeps is sent in order until the post says it is written there, however often cut.

import type { RecordFacts } from '../record/store/index.ts';
import { chainOf, type EventText } from './message.ts';
import { createMessages } from './messages.ts';
import { createOutbox, NOTHING_GOT, type Outbox } from './outbox.ts';
import type { LineState } from './port.ts';
import { open, seal } from './seal.ts';
import type { Pace, Problem, Session, SessionParts, SessionState } from './session-parts.ts';
import { askSubject, recordSubject, wordSubject } from './subjects.ts';
import { readWord, type Word } from './word.ts';

/** Our choice, no source: often enough that a gap is seen within a minute. */
const PACE: Pace = { hello: 15_000, patience: 20_000, again: 3_000 };
const WINDOW = 64;
const ASK_WITHIN = 6_000;
/** Before the post is asked again that has not said a word yet, ms. */
const SOON = 1_000;
// How much earlier a word may be that was overtaken, ms; a post whose clock was set back by more is believed.
const OVERTAKEN = 10_000;

/** Opens the book and begins. Rejects only where the ledger cannot be read. */
export async function startSession(parts: SessionParts): Promise<Session> {
  const { incident, device, key, line, ledger, clock } = parts;
  const pace = { ...PACE, ...parts.pace };
  const begin = await chainOf(incident, device);
  const { install, rows, got } = await ledger.load();
  const outbox: Outbox = createOutbox(begin, rows, got ?? NOTHING_GOT);
  const known = new Set(rows.flatMap(({ record, events }) => events.map((id) => `${record} ${id}`)));
  const messages = createMessages(outbox, parts.read);
  const watchers = new Set<(state: SessionState) => void>();
  const flying = new Set<number>();
  const troubles = new Map<string, string>();

  let accepted = got !== null;
  let state: LineState['state'] = 'connecting';
  let problem: Problem | null = null;
  let word: Word | null = null;
  let wordAt: number | null = null;
  let ended = false;
  let pumping = false;
  let restUntil = 0;
  let booking: Promise<void> = Promise.resolve();
  let keeping = false;

  const now = (): SessionState => ({
    line: state,
    tally: outbox.tally(),
    problem,
    word,
    wordAt,
    troubles: [...troubles.values()],
  });
  let telling = false;
  const changed = (): void => {
    if (telling) return;
    telling = true;
    queueMicrotask(() => {
      telling = false;
      for (const watcher of watchers) watcher(now());
    });
  };

  const book = async (record: RecordFacts, events: readonly EventText[], anew: boolean): Promise<void> => {
    const fresh = anew ? events : events.filter(({ id }) => !known.has(`${record.id} ${id}`));
    if (fresh.length === 0) return;
    const { row, made } = await messages.make(record, fresh);
    try {
      await ledger.add(row);
    } catch {
      troubles.set('book', 'This phone’s disk does not take the list of what to send; it is tried again.');
      return changed();
    }
    troubles.delete('book');
    outbox.add(row);
    messages.hold(made);
    for (const { id } of fresh) known.add(`${record.id} ${id}`);
    changed();
    void pump();
  };

  const send = async (seq: number): Promise<'on' | 'rest'> => {
    const message = await messages.at(seq);
    if (message === null) {
      troubles.set(
        'gone',
        'Some of what is to be sent can no longer be read on this phone: its record was wiped.',
      );
      return 'rest';
    }
    const subject = recordSubject(incident, device, seq);
    const bytes = await seal(key, subject, message);
    flying.add(seq);
    void line.store(subject, bytes).then((stored) => {
      flying.delete(seq);
      if (stored.kind === 'stored') outbox.stored(seq, stored.by, clock());
      else if (stored.kind === 'there-already') outbox.stored(seq, null, clock());
      else restUntil = clock() + pace.again;
      if (stored.kind === 'refused') troubles.set('server', `The server does not take it: ${stored.why}.`);
      else if (stored.kind !== 'not-reached') troubles.delete('server');
      changed();
      void pump();
    });
    return 'on';
  };

  /** Sends what is due, a window at a time and in order; called whenever something may have changed. */
  const pump = async (): Promise<void> => {
    if (pumping || ended) return;
    pumping = true;
    try {
      while (state === 'connected' && accepted && problem === null && clock() >= restUntil) {
        const patience = wordAt !== null && clock() - wordAt < 2 * pace.hello ? pace.patience : Infinity;
        const due = outbox.toSend(clock(), patience, WINDOW).filter((seq) => !flying.has(seq));
        const [next] = due;
        if (next === undefined || flying.size >= WINDOW) return;
        if ((await send(next)) === 'rest') {
          restUntil = clock() + pace.again;
          return;
        }
      }
    } finally {
      pumping = false;
    }
  };

  /** Kept now and then: an older word after a restart costs nothing but a question. */
  const keepGot = (): void => {
    if (keeping) return;
    keeping = true;
    setTimeout(() => {
      keeping = false;
      void ledger.keepGot(outbox.got()).catch(() => undefined);
    }, 300);
  };

  const heardWord = async (bytes: Parameters<typeof open>[2]): Promise<void> => {
    const opened = await open(key, wordSubject(incident, device), bytes);
    const read = opened.kind === 'value' ? readWord(opened.value) : null;
    if (read === null) {
      troubles.set('word', 'An answer came that is not the post’s; it was passed over.');
      return changed();
    }
    troubles.delete('word');
    // Two words may overtake each other on their way: the earlier one knows less, and would have things sent again.
    if (word !== null && read.clock < word.clock && word.clock - read.clock < OVERTAKEN) return changed();
    word = read;
    wordAt = clock();
    if (read.install !== install) problem = 'code-in-use';
    else if (outbox.heard(read) === 'other-history') problem = 'other-history';
    else {
      problem = null;
      accepted = true;
      messages.forget(read.upTo);
      keepGot();
      await sendAnew();
    }
    changed();
    void pump();
  };

  /** Events whose message was spoiled are sent again under new numbers. */
  const sendAnew = async (): Promise<void> => {
    for (const { record, event } of outbox.takeSpoiled()) {
      // Once: what is spoiled a second time is spoiled for another reason than its way, and would go round for ever.
      if (outbox.rows().filter((row) => row.record === record && row.events.includes(event)).length > 1)
        continue;
      const log = await parts.read(record).catch(() => null);
      const found = log?.events.find(({ id }) => id === event);
      if (log == null || found === undefined) continue;
      booking = booking.then(() => book(log.facts, [found], true));
    }
  };

  const hello = async (): Promise<void> => {
    if (state !== 'connected' || ended) return;
    const subject = askSubject(incident, device);
    const said = await seal(key, subject, { v: 1, install, clock: clock(), made: outbox.made() });
    const asked = await line.ask(subject, said, ASK_WITHIN);
    if (asked.kind === 'answer') await heardWord(asked.bytes);
    // Before the first word nothing is sent, so it is not waited for long.
    else if (wordAt === null && !ended) setTimeout(() => void hello(), Math.min(pace.again, SOON));
    void pump();
  };

  const ends = [
    line.hear(wordSubject(incident, device), ({ bytes }) => void heardWord(bytes)),
    line.watch((next) => {
      state = next.state;
      restUntil = 0;
      changed();
      if (state === 'connected') void hello();
    }),
  ];
  const beat = setInterval(() => void hello(), pace.hello);
  const tick = setInterval(() => void pump(), pace.again);

  return {
    offer: (record, events) => {
      booking = booking.then(() => book(record, events, false));
    },
    state: now,
    watch: (watcher) => {
      watchers.add(watcher);
      watcher(now());
      return () => watchers.delete(watcher);
    },
    settled: () => booking,
    end: async () => {
      ended = true;
      clearInterval(beat);
      clearInterval(tick);
      for (const stop of ends) stop();
      await line.close();
      await booking;
      if (accepted) await ledger.keepGot(outbox.got()).catch(() => undefined);
    },
  };
}
