// A bar that fills as fast as the piece should be read; it begins after the moment that a radio needs to open.

import { useEffect, useState } from 'preact/hooks';
import { LEAD_MS } from './pace.ts';

/** How often the bar moves on, ms; it tells a pace and is no animation. */
const STEP = 250;

/** `length` in ms; give it a new key to begin anew. */
export function PaceBar({ length }: { readonly length: number }) {
  const [passed, setPassed] = useState(-LEAD_MS);
  useEffect(() => {
    const timer = setInterval(() => setPassed((before) => Math.min(length, before + STEP)), STEP);
    return () => clearInterval(timer);
  }, [length]);
  const words =
    passed < 0
      ? 'Press, wait a moment, then read'
      : passed >= length
        ? 'End of the piece'
        : 'Keep with the bar';
  return (
    <div class="pace">
      <progress max={length} value={Math.max(0, passed)} aria-label="Pace" />
      <p class="small-print">{words}</p>
    </div>
  );
}
