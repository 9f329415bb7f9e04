// One piece at a time in large letters; a piece counts as sent when the one who read it says so, and is then in the log.

import type { Signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { passOn } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { PaceBar } from './PaceBar.tsx';
import { timeFor, wordCount } from './pace.ts';
import { ReadAloud } from './ReadAloud.tsx';
import { type MadeReport, REPORT_NAMES } from './reports.ts';

interface Props {
  readonly report: MadeReport;
  readonly pace: Signal<number>;
  /** the last piece was sent */
  readonly done: () => void;
  readonly leave: () => void;
}

export function Pieces({ report: { part, pieces, made }, pace, done, leave }: Props) {
  const { desk, reading, speaker } = useTools();
  const [place, setPlace] = useState(0);
  const [round, setRound] = useState(0);
  // The device cannot know whether its voice was heard: a person says so, and only then it counts as sent.
  const [byDevice, setByDevice] = useState(false);
  const piece = pieces[place];
  const text = piece?.text ?? '';
  const isLast = place === pieces.length - 1;

  const go = (to: number) => {
    speaker.hush();
    setByDevice(false);
    setPlace(to);
    setRound((before) => before + 1);
  };
  const sent = () => {
    const by = byDevice ? 'device' : 'person';
    const { entries = [] } = piece ?? {};
    passOn(desk, { step: 'sent', part, piece: place + 1, of: pieces.length, text, entries, by, made });
    if (isLast) done();
    else go(place + 1);
  };
  // Voice commands come from outside of the view, and must meet it as it stands now.
  const now = useRef({ sent, go, place });
  now.current = { sent, go, place };
  useEffect(() => {
    reading.value = {
      next: () => now.current.sent(),
      back: () => now.current.go(Math.max(0, now.current.place - 1)),
      again: () => now.current.go(now.current.place),
    };
    return () => {
      reading.value = null;
      speaker.hush();
    };
  }, [reading, speaker]);

  const words = text.split(' ');
  return (
    <section class="reader" aria-label={REPORT_NAMES[part]}>
      <h3>
        {REPORT_NAMES[part]}, piece {place + 1} of {pieces.length}
      </h3>
      <p class="reader-text" aria-live="polite">
        {words.slice(0, -1).join(' ')} <b class="proword">{words.at(-1)}</b>
      </p>
      <PaceBar key={`${place}-${round}`} length={timeFor(wordCount(text), pace.value)} />
      <button type="button" class="button primary wide" onClick={sent}>
        {isLast
          ? part === 'details'
            ? 'Said, that was the last'
            : 'Said: now their read-back'
          : 'Said: next piece'}
      </button>
      <div class="choices even">
        <button type="button" class="button big" disabled={place === 0} onClick={() => go(place - 1)}>
          Piece before
        </button>
        <button type="button" class="button big" onClick={() => go(place)}>
          Again
        </button>
        <button type="button" class="button big" onClick={leave}>
          Leave
        </button>
      </div>
      <ReadAloud key={`aloud-${place}`} text={text} pace={pace.value} said={() => setByDevice(true)} />
      {byDevice && <p role="status">The device has read it. If it was heard whole, go on.</p>}
      <p class="small-print">
        By voice: “next piece”, “one piece back”, “say again”. Nothing else is taken down here.
      </p>
    </section>
  );
}
