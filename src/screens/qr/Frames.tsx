// The symbols in turn, again and again; those that the receiver still lacks can be shown alone.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { COARSE_BYTES, FRAME_BYTES, framesOf, partsInWords, readParts } from '../../handoff/index.ts';
import { drawSymbol, squaresOf } from './symbol.ts';

/** Symbols in a second; a camera needs to see each whole. Our choice. */
const SPEEDS = [1, 2, 4, 8] as const;
const USUAL = 2;

export function Frames({ bytes }: { readonly bytes: Uint8Array }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [coarse, setCoarse] = useState(false);
  const [speed, setSpeed] = useState(USUAL);
  const [paused, setPaused] = useState(false);
  const [wanted, setWanted] = useState('');
  const [turn, setTurn] = useState(0);
  const texts = useMemo(() => framesOf(bytes, coarse ? COARSE_BYTES : FRAME_BYTES), [bytes, coarse]);
  const drawn = useMemo(() => new Map<number, ReturnType<typeof squaresOf>>(), [texts]);
  const chosen = wanted.trim() === '' ? null : readParts(wanted, texts.length);
  const parts = chosen ?? texts.map((_, index) => index + 1);
  const part = parts[turn % parts.length] ?? 1;

  useEffect(() => {
    if (paused) return;
    const timer = setInterval(() => setTurn((before) => before + 1), 1000 / (SPEEDS[speed] ?? 4));
    return () => clearInterval(timer);
  }, [paused, speed]);
  useEffect(() => {
    const text = texts[part - 1];
    if (canvas.current === null || text === undefined) return;
    const squares = drawn.get(part) ?? squaresOf(text);
    drawn.set(part, squares);
    drawSymbol(canvas.current, squares, window.devicePixelRatio);
  }, [texts, part, drawn]);

  return (
    <section class="frames" aria-label="Symbols">
      <canvas ref={canvas} class="symbol" role="img" aria-label={`Part ${part} of ${texts.length}`} />
      <p class="frame-place">
        Part <b>{part}</b> of {texts.length}
        {chosen === null ? '' : `; showing only ${partsInWords(chosen)}`}
      </p>
      <div class="choices even">
        <button type="button" class="button" disabled={speed === 0} onClick={() => setSpeed(speed - 1)}>
          Slower
        </button>
        <button type="button" class="button big" aria-pressed={paused} onClick={() => setPaused(!paused)}>
          Hold still
        </button>
        <button
          type="button"
          class="button"
          disabled={speed === SPEEDS.length - 1}
          onClick={() => setSpeed(speed + 1)}
        >
          Faster
        </button>
      </div>
      <div class="choices even">
        <button type="button" class="button" onClick={() => setTurn(turn + parts.length - 1)}>
          Part before
        </button>
        <button type="button" class="button" onClick={() => setTurn(turn + 1)}>
          Next part
        </button>
      </div>
      <label class="field-name" for="wanted-parts">
        Only these parts (the receiver names those that are missing)
      </label>
      <input
        id="wanted-parts"
        value={wanted}
        inputMode="numeric"
        autocomplete="off"
        placeholder="3, 7-9"
        onInput={(event) => {
          setWanted(event.currentTarget.value);
          setTurn(0);
        }}
      />
      {wanted.trim() !== '' && chosen === null && (
        <p role="alert">No part of these {texts.length} has such a number; all are shown.</p>
      )}
      <button type="button" class="button wide" aria-pressed={coarse} onClick={() => setCoarse(!coarse)}>
        Larger squares, for a camera that has trouble (the receiver begins anew)
      </button>
    </section>
  );
}
