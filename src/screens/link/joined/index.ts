// Promises that a page in an incident sends what it keeps, says what the post has, and takes over or hands on a record.

import { effect, type ReadonlySignal, type Signal, signal, untracked } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import {
  importKey,
  inboxOf,
  type JoinCode,
  type Session,
  type SessionState,
  startSession,
} from '../../../link/index.ts';
import { dialPost } from '../../../link/page/index.ts';
import { newName } from '../../../record/store/index.ts';
import type { Tools } from '../../frame/tools.ts';
import { whyNot } from '../../records/words.ts';
import { Bar } from './Bar.tsx';
import { offerKept, readShared } from './feed.ts';
import { createHanding, type Handing } from './handing.ts';
import { forgetMember, isShared, keepMember, ledgerOn, type Member, readMember } from './member.ts';
import { logQuestions } from './questions.ts';
import { View } from './View.tsx';

export interface Joined {
  readonly Bar: FunctionComponent;
  readonly View: FunctionComponent<{ readonly close: () => void }>;
  /** null where the page is in no incident, or is locked */
  readonly member: Signal<Member | null>;
  readonly state: ReadonlySignal<SessionState | null>;
  /** null while the link does not run */
  readonly handing: ReadonlySignal<Handing | null>;
  /** how the carrier of a device is called */
  nameOf(device: string): string;
  /** what stands in the way of the link itself, or null */
  readonly fault: Signal<string | null>;
  /** joins, and sends the open record too where wished; gives what is in the way, or null */
  join(code: JoinCode, withOpen: boolean): Promise<string | null>;
  /** sends a record that is older than the joining too */
  share(record: string): Promise<void>;
  leave(): Promise<void>;
}

/** The link of this page; it runs while the page writes and is not locked. */
export async function createJoined(tools: Tools): Promise<Joined> {
  const { desk, link } = tools;
  const member = signal<Member | null>(null);
  const state = signal<SessionState | null>(null);
  const fault = signal<string | null>(null);
  const handing = signal<Handing | null>(null);
  const nameOf = (device: string): string =>
    state.peek()?.word?.mates.find((mate) => mate.device === device)?.name ?? device;
  let session: Session | null = null;
  let starting: Promise<void> = Promise.resolve();

  const share = async (record: string): Promise<void> => {
    const [now, keys] = [member.value, desk.door.keys()];
    if (now === null || keys === null) return;
    const next = { ...now, shared: [...new Set([...now.shared, record])] };
    await keepMember(desk.shelf, keys, next);
    member.value = next;
    const log = await readShared(desk, record);
    if (log !== null) session?.offer(log.facts, log.events);
  };

  const end = async (): Promise<void> => {
    const was = session;
    session = null;
    state.value = null;
    handing.value?.end();
    handing.value = null;
    await was?.end();
  };
  const begin = async (now: Member): Promise<void> => {
    await end();
    try {
      const { code } = now;
      const key = await importKey(code.key);
      const line = dialPost(code.address, { seed: code.seed, inbox: inboxOf(code.device) });
      const made = await startSession({
        incident: code.incident,
        device: code.device,
        key,
        line,
        ledger: ledgerOn(desk.shelf, desk.door.keys, now.install),
        read: (record) => readShared(desk, record),
        clock: desk.clock,
      });
      session = made;
      handing.value = createHanding({ desk, member: now, key, line, share, nameOf });
      fault.value = null;
      await offerKept(desk, made, (facts) => isShared(now, facts));
      // Nothing is said of how much is at the post before all that is kept here is in the book.
      await made.settled();
      made.watch((next) => {
        if (session === made) state.value = next;
      });
    } catch (error) {
      fault.value = `The link could not begin: ${error instanceof Error ? error.message : whyNot(error)}`;
    }
  };
  const turn = (work: () => Promise<void>): Promise<void> => {
    starting = starting.then(work, work);
    return starting;
  };

  // The page that writes and is open has the link; a page that follows or is locked has none.
  effect(() => {
    const isOpen = desk.door.now.value.state === 'open';
    const writes = desk.role.value === 'writes';
    untracked(
      () =>
        void turn(async () => {
          const keys = desk.door.keys();
          if (!isOpen || !writes || keys === null) {
            await end();
            member.value = null;
            return;
          }
          member.value = await readMember(desk.shelf, keys).catch(() => null);
          if (member.value !== null) await begin(member.value);
        }),
    );
  });
  effect(() => {
    const kept = desk.keeper.kept.value;
    const record = desk.record.value;
    if (kept === null || record === null || kept.record !== record.facts.id) return;
    const now = member.value;
    if (now === null || session === null || !isShared(now, record.facts)) return;
    // What is kept is at the head of the log that is open; the rest follows with the next writing.
    session.offer(record.facts, record.exam.events.slice(0, kept.events));
  });
  effect(() => {
    const word = state.value?.word;
    if (word != null && desk.record.value !== null)
      untracked(() => {
        logQuestions(desk, word);
        handing.peek()?.learn(word);
      });
  });

  await starting;
  return {
    Bar,
    View,
    member,
    state,
    handing,
    nameOf,
    fault,
    join: async (code, withOpen) => {
      const keys = desk.door.keys();
      if (keys === null || desk.role.value !== 'writes')
        return 'This page does not record now. Take the recording over first.';
      const open = desk.record.value;
      const shared = withOpen && open !== null && open.facts.kind === 'live' ? [open.facts.id] : [];
      // A record says its start to the second: one that is begun in the very second of joining is of the incident.
      const joinedAt = new Date(Math.floor(desk.clock() / 1000) * 1000).toISOString();
      const next: Member = { code, install: newName(), joinedAt, shared };
      try {
        await end();
        await forgetMember(desk.shelf);
        await keepMember(desk.shelf, keys, next);
      } catch (error) {
        return `Not joined: ${whyNot(error)}`;
      }
      member.value = next;
      link.remember(true);
      await turn(() => begin(next));
      return null;
    },
    share,
    leave: async () => {
      await end();
      await forgetMember(desk.shelf);
      member.value = null;
      link.remember(false);
    },
  };
}
