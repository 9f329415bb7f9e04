// Keeps sound coming while it is wanted: notices when it stops, says why, tries again, and names the gap with its times.

import type { EarNow, Gap } from './now.ts';

/** An open microphone with an ear behind it. */
export interface Source {
  readonly kind: 'open';
  /** asks the device to go on, where it paused the sound by itself */
  wake(): void;
  close(): void;
}

/** What befalls a source. */
export interface SourceNews {
  /** it is gone; `why` is a clause */
  lost(why: string): void;
  muted(isMuted: boolean): void;
  paused(isPaused: boolean): void;
}

export interface KeeperParts {
  open(
    news: SourceNews,
  ): Promise<Source | { readonly kind: 'refused'; readonly why: string; readonly passing: boolean }>;
  /** wall clock, epoch ms */
  clock(): number;
  /** told whenever it changes */
  now(state: EarNow): void;
  gap(gap: Gap): void;
}

export interface Keeper {
  start(): void;
  stop(): void;
  /** true while a source is open */
  isOpen(): boolean;
  /** sound arrived that was recorded from `from` to `to`; `peak` is 0 where it is nothing but zeros */
  sound(sound: { readonly from: number; readonly to: number; readonly peak: number }): void;
  hidden(isHidden: boolean): void;
  /** to be called about twice a second, and when the page is shown again or a device appears */
  check(): void;
}

/** Sound that is missing for less than this, ms, is no gap: words can be lost from about here on. */
const SHORTEST_GAP = 1000;
/** After this long without sound, ms, the page says so; blocks come every 100 ms. */
const PATIENCE = 2500;
/** The recogniser may load for this long before its first sound, ms. */
const START_PATIENCE = 20_000;
/** A microphone that gives nothing but zeros for this long, ms, is switched off or given away; a quiet room is never zero. */
const DEAD_SILENCE = 10_000;
/** Times between two tries to open it again, ms. */
const TRIES = [0, 1000, 2000, 4000, 8000, 15_000] as const;

const TAKEN = 'another app or the device took the microphone';
const PAUSED = 'the device paused the sound';
const HIDDEN = 'the page was hidden';
const NOTHING = 'no sound came from the microphone';
const ZEROS = 'the microphone gave only silence: switched off, or given to another app';

export function keepHearing({ open, clock, now, gap }: KeeperParts): Keeper {
  let wanted = false;
  /** counts what was opened, so that news of an older source change nothing */
  let turn = 0;
  let source: Source | null = null;
  let isOpening = false;
  let [tries, nextTry, startedAt] = [0, 0, 0];
  /** wall clock up to which sound was heard; null before the first */
  let until: number | null = null;
  let zeros: number | null = null;
  let [isMuted, isPaused, isHidden, wasHidden] = [false, false, false, false];
  let noticed: string | null = null;
  let state: EarNow = { state: 'off' };

  const become = (next: EarNow): void => {
    if (JSON.stringify(next) === JSON.stringify(state)) return;
    state = next;
    now(next);
  };
  const reason = (): string =>
    isMuted ? TAKEN : (noticed ?? (isPaused ? PAUSED : wasHidden ? HIDDEN : NOTHING));

  const nameGap = (to: number): void => {
    if (until !== null && to - until > SHORTEST_GAP) gap({ from: until, to, why: reason() });
  };

  const drop = (): void => {
    turn += 1;
    isOpening = false;
    source?.close();
    source = null;
    [isMuted, isPaused] = [false, false];
  };

  const end = (next: EarNow): void => {
    nameGap(clock());
    wanted = false;
    drop();
    become(next);
  };

  const deaf = (): void => {
    if (until !== null) become({ state: 'deaf', why: reason(), since: until });
  };

  function tryToOpen(): void {
    drop();
    isOpening = true;
    const mine = turn;
    nextTry = clock() + (TRIES[Math.min(tries, TRIES.length - 1)] ?? 0) + PATIENCE;
    tries += 1;
    const only =
      <T extends unknown[]>(act: (...given: T) => void) =>
      (...given: T): void => {
        if (turn === mine && wanted) act(...given);
      };
    const news: SourceNews = {
      lost: only((why) => {
        noticed = why;
        drop();
        nextTry = clock();
        deaf();
      }),
      muted: only((is) => {
        if (is) noticed = TAKEN;
        isMuted = is;
      }),
      paused: only((is) => {
        if (is) noticed ??= isHidden ? HIDDEN : PAUSED;
        isPaused = is;
      }),
    };
    void open(news).then((opened) => {
      if (turn !== mine || !wanted) {
        if (opened.kind === 'open') opened.close();
        return;
      }
      isOpening = false;
      if (opened.kind === 'open') source = opened;
      else if (!opened.passing) end({ state: 'stopped', why: opened.why });
      else become({ state: 'deaf', why: opened.why, since: until ?? startedAt });
    });
  }

  function check(): void {
    if (!wanted) return;
    const time = clock();
    const silent = time - (until ?? startedAt);
    if (source !== null && silent > PATIENCE) {
      source.wake();
      deaf();
    }
    const isStuck = source !== null && !isMuted && silent > (until === null ? START_PATIENCE : 2 * PATIENCE);
    if (!isOpening && (source === null || isStuck) && time >= nextTry) tryToOpen();
  }

  return {
    check,
    isOpen: () => source !== null,
    start: () => {
      if (wanted) return;
      [wanted, tries, nextTry] = [true, 0, 0];
      [until, zeros, noticed] = [null, null, null];
      startedAt = clock();
      wasHidden = isHidden;
      become({ state: 'starting' });
      tryToOpen();
    },
    stop: () => {
      if (wanted) end({ state: 'off' });
      else become({ state: 'off' });
    },
    sound: ({ from, to, peak }) => {
      if (!wanted || isMuted) return;
      zeros = peak > 0 ? null : (zeros ?? from);
      if (zeros !== null && to - zeros > DEAD_SILENCE) {
        until = Math.min(until ?? zeros, zeros);
        noticed = ZEROS;
        deaf();
        return;
      }
      nameGap(from);
      [until, noticed, tries] = [to, null, 0];
      wasHidden = isHidden;
      become({ state: 'hearing' });
    },
    hidden: (is) => {
      isHidden = is;
      wasHidden ||= is;
      if (!is) check();
    },
  };
}
