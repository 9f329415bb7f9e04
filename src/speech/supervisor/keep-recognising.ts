// Keeps the browser's recognition going while it is wanted: one session at a time, begun again only when the one before has
// ended, renewed on a pause before it stalls, given up only where a person must do something.

import { createReplays, faultOf, type HeardEvent, NO_PHRASES, type Recognition } from '../browser/index.ts';
import type { EarNow, Gap } from './now.ts';

export interface HeardWords {
  readonly text: string;
  /** 0 to 1; 0 where the browser gives none */
  readonly confidence: number;
  readonly alternatives: readonly string[];
  /** when the first of it was shown, epoch ms */
  readonly from: number;
}

export interface RecogniserParts {
  /** a session that is set up and not started */
  make(): Recognition;
  /** the browser refused the phrases: what `make` gives from now on must have none */
  phrasesRefused(): void;
  /** wall clock, epoch ms */
  clock(): number;
  /** the browser gives the next place the words of the one before and more */
  readonly grows: boolean;
  now(state: EarNow): void;
  /** words that are not settled yet; to be shown and never recorded */
  unsettled(text: string): void;
  heard(words: HeardWords): void;
  gap(gap: Gap): void;
}

export interface Recogniser {
  start(): void;
  stop(): void;
  /** while it is deaf there is no session */
  deaf(isDeaf: boolean): void;
  /** to be called about four times a second */
  check(): void;
}

/** Browsers stall after about a minute: a session this old, ms, is renewed at the next pause, and at last without one. */
const OLD = 45_000;
const VERY_OLD = 90_000;
/** A pause: nothing is unsettled and nothing came for this long, ms. */
const PAUSE = 1500;
/** Nothing at all came for this long, ms: the session has stalled. */
const STALLED = 30_000;
/** After `stop` or `abort` the end must come within this, ms, or the session is left behind. */
const ENDING = 3000;
/** Times before a new session, ms, by how many in a row heard nothing and failed or ended at once. */
const WAITS = [100, 250, 1000, 2000, 4000, 8000, 15_000] as const;
/** A session that lasted this long, ms, was a good one. */
const GOOD = 5000;
const SHORTEST_GAP = 1000;

interface Session {
  readonly recognition: Recognition;
  readonly begun: number;
  lastNews: number;
  /** when it was asked to end, or null */
  ending: number | null;
}

export function keepRecognising(parts: RecogniserParts): Recogniser {
  const { clock } = parts;
  const replays = createReplays(parts.grows);
  let wanted = false;
  let isDeaf = false;
  /** counts sessions: news of an older one change nothing */
  let turn = 0;
  let session: Session | null = null;
  let [failures, nextTry] = [0, 0];
  let fault: string | null = null;
  let open: { readonly text: string; readonly from: number } | null = null;
  /** since when nobody hears, or null while somebody does or nobody did yet */
  let deafSince: number | null = null;

  const show = (text: string): void => {
    open = text === '' ? null : { text, from: open?.from ?? clock() };
    parts.unsettled(text);
  };

  // Words that the browser showed and never settled are still words that were said.
  const keepUnsettled = (): void => {
    if (open !== null) parts.heard({ text: open.text, confidence: 0, alternatives: [], from: open.from });
    show('');
  };

  const onResult = (mine: Session, { resultIndex, results }: HeardEvent): void => {
    mine.lastNews = clock();
    if (isDeaf) return;
    failures = 0;
    let unsettled = '';
    for (let place = resultIndex; place < results.length; place += 1) {
      const result = results[place];
      const best = result?.[0];
      if (result === undefined || best === undefined) continue;
      if (!result.isFinal) unsettled += best.transcript;
      else {
        const from = open?.from ?? clock();
        const text = replays.take(place, best.transcript.trim(), clock());
        open = null;
        if (text === null) continue;
        const whole = text === best.transcript.trim();
        const others = Array.from(result, ({ transcript }) => transcript.trim()).slice(1);
        parts.heard({ text, confidence: best.confidence, alternatives: whole ? others : [], from });
      }
    }
    show(unsettled.trim());
  };

  const finish = (state: EarNow): void => {
    wanted = false;
    turn += 1;
    session?.recognition.abort();
    session = null;
    keepUnsettled();
    nameGap();
    deafSince = null;
    parts.now(state);
  };

  const nameGap = (): void => {
    const to = clock();
    if (deafSince !== null && to - deafSince > SHORTEST_GAP)
      parts.gap({ from: deafSince, to, why: 'the browser’s recognition had stopped' });
  };

  function ended(mine: Session): void {
    session = null;
    keepUnsettled();
    if (!isDeaf) deafSince ??= clock();
    if (clock() - mine.begun > GOOD && fault === null) failures = 0;
    nextTry = clock() + (WAITS[Math.min(failures, WAITS.length - 1)] ?? 0);
    failures += 1;
    if (fault !== null && deafSince !== null)
      parts.now({ state: 'deaf', why: fault.replace(/\.$/, ''), since: deafSince });
  }

  function begin(): void {
    turn += 1;
    const mine = turn;
    const recognition = parts.make();
    const made: Session = { recognition, begun: clock(), lastNews: clock(), ending: null };
    const only =
      <T extends unknown[]>(act: (...given: T) => void) =>
      (...given: T): void => {
        if (turn === mine && wanted) act(...given);
      };
    replays.begin();
    fault = null;
    recognition.onstart = only(() => {
      made.lastNews = clock();
      nameGap();
      deafSince = null;
      parts.now({ state: 'hearing' });
    });
    recognition.onresult = only((event) => onResult(made, event));
    recognition.onerror = only(({ error }) => {
      const found = faultOf(error);
      if (error === NO_PHRASES) parts.phrasesRefused();
      if (found?.blocking === true) finish({ state: 'stopped', why: found.why });
      else fault = found?.why ?? null;
    });
    recognition.onend = only(() => ended(made));
    session = made;
    try {
      recognition.start();
    } catch {
      fault = 'The browser did not start listening.';
      ended(made);
    }
  }

  function askToEnd(mine: Session, how: 'stop' | 'abort'): void {
    mine.ending = clock();
    mine.recognition[how]();
  }

  return {
    start: () => {
      if (wanted) return;
      [wanted, failures, nextTry, deafSince, fault] = [true, 0, 0, null, null];
      parts.now({ state: 'starting' });
      if (!isDeaf) begin();
    },
    stop: () => {
      if (wanted) finish({ state: 'off' });
    },
    deaf: (is) => {
      isDeaf = is;
      // What is not settled yet may be the page's own voice already; what was settled before is kept.
      if (is && session !== null && session.ending === null) askToEnd(session, 'abort');
      if (!is) nextTry = 0;
    },
    check: () => {
      if (!wanted) return;
      const time = clock();
      if (session === null) {
        if (!isDeaf && time >= nextTry) begin();
        return;
      }
      const { begun, lastNews, ending } = session;
      if (ending !== null) {
        // The end never came: its news are passed over from now on.
        if (time - ending > ENDING) {
          turn += 1;
          ended(session);
        }
        return;
      }
      const isPause = open === null && time - lastNews > PAUSE;
      if ((time - begun > OLD && isPause) || time - begun > VERY_OLD) askToEnd(session, 'stop');
      else if (time - lastNews > STALLED) askToEnd(session, 'abort');
    },
  };
}
