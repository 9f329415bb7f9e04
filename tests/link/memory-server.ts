// A messaging server in memory: one message on each subject, permissions by subject, questions with answers, and cuts.

import type { Asked, Heard, KeptMessage, Line, LineState, Stored, Stream } from '../../src/link/index.ts';

export interface Permissions {
  readonly publish: readonly string[];
  readonly hear: readonly string[];
}

export interface MemoryServer {
  /** a connection; without permissions everything is allowed */
  line(permissions?: Permissions): Line & { cut(): void; join(): void; putOut(): void };
  readonly stream: Stream;
}

/** NATS's own rule: `*` is one part, `>` all that follow. */
export function matches(pattern: string, subject: string): boolean {
  const [wanted, parts] = [pattern.split('.'), subject.split('.')];
  for (const [index, want] of wanted.entries()) {
    if (want === '>') return parts.length > index;
    if (parts[index] === undefined || (want !== '*' && want !== parts[index])) return false;
  }
  return parts.length === wanted.length;
}

const allows = (patterns: readonly string[] | undefined, subject: string): boolean =>
  patterns === undefined || patterns.some((pattern) => matches(pattern, subject));

export function createMemoryServer(): MemoryServer {
  const kept: KeptMessage[] = [];
  const hearers = new Set<{
    readonly pattern: string;
    readonly heard: (heard: Heard) => void;
    readonly isOn: () => boolean;
  }>();
  const followers = new Set<(message: KeptMessage) => void>();
  let inboxes = 0;

  const spread = (heard: Heard): number => {
    const all = [...hearers].filter(({ pattern, isOn }) => isOn() && matches(pattern, heard.subject));
    for (const one of all) queueMicrotask(() => one.heard(heard));
    return all.length;
  };

  return {
    stream: {
      made: 'memory',
      follow: (after, took) => {
        const holds = kept.some(({ place, subject }) => place === after?.place && subject === after.subject);
        const from = holds ? (after?.place ?? 0) : 0;
        for (const one of kept.filter(({ place }) => place > from)) queueMicrotask(() => took(one));
        followers.add(took);
        return () => followers.delete(took);
      },
      find: async (subject) => kept.find((one) => one.subject === subject) ?? null,
    },
    line: (permissions) => {
      let state: LineState = { state: 'connected' };
      const watchers = new Set<(state: LineState) => void>();
      const become = (next: LineState): void => {
        state = next;
        for (const watcher of watchers) watcher(next);
      };
      const isOn = (): boolean => state.state === 'connected';
      return {
        store: async (subject, bytes): Promise<Stored> => {
          if (!isOn()) return { kind: 'not-reached' };
          if (!allows(permissions?.publish, subject))
            return { kind: 'refused', why: 'this device may not publish there' };
          if (kept.some((one) => one.subject === subject)) return { kind: 'there-already' };
          const message = { subject, bytes, place: kept.length + 1 };
          kept.push(message);
          spread({ subject, bytes, reply: null });
          for (const took of followers) queueMicrotask(() => took(message));
          return { kind: 'stored', by: null };
        },
        tell: (subject, bytes) => {
          if (isOn()) spread({ subject, bytes, reply: null });
        },
        ask: (subject, bytes, within) =>
          new Promise<Asked>((resolve) => {
            if (!isOn() || !allows(permissions?.publish, subject)) return resolve({ kind: 'not-reached' });
            inboxes += 1;
            const reply = `answer.${inboxes}`;
            const late = setTimeout(() => resolve({ kind: 'not-reached' }), within);
            const mark = {
              pattern: reply,
              isOn: () => true,
              heard: (answer: Heard) => {
                clearTimeout(late);
                hearers.delete(mark);
                resolve({ kind: 'answer', bytes: answer.bytes, subject: answer.subject });
              },
            };
            hearers.add(mark);
            if (spread({ subject, bytes, reply }) > 0) return;
            clearTimeout(late);
            hearers.delete(mark);
            resolve({ kind: 'nobody' });
          }),
        hear: (pattern, heard) => {
          const mark = { pattern, heard, isOn: () => isOn() && allows(permissions?.hear, pattern) };
          hearers.add(mark);
          return () => hearers.delete(mark);
        },
        watch: (changed) => {
          watchers.add(changed);
          changed(state);
          return () => watchers.delete(changed);
        },
        close: async () => become({ state: 'closed' }),
        cut: () => become({ state: 'cut' }),
        join: () => become({ state: 'connected' }),
        putOut: () => become({ state: 'put-out' }),
      };
    },
  };
}
