// The radio script one piece at a time; it holds still while it is being read, and says when the record has moved on.

import { useState } from 'preact/hooks';
import { radio } from '../../handoff/index.ts';
import { useTools } from '../frame/tools.ts';

export function RadioScript() {
  const { derived } = useTools();
  const fresh = radio(derived.report.value).chunks.map(({ text }) => text);
  const [reading, setReading] = useState<readonly string[] | null>(null);
  const [place, setPlace] = useState(0);
  const script = reading ?? fresh;
  const at = Math.min(place, script.length - 1);
  const moved = reading !== null && reading.join('\n') !== fresh.join('\n');
  const go = (to: number) => {
    setReading(to === 0 ? null : script);
    setPlace(to);
  };
  return (
    <section class="radio" aria-labelledby="radio-title">
      <h3 id="radio-title">
        Radio script, piece {at + 1} of {script.length}
      </h3>
      <p class="radio-text" aria-live="polite">
        {script[at]}
      </p>
      {moved && (
        <p class="notice">
          The record has changed since you began to read.{' '}
          <button type="button" class="button" onClick={() => go(0)}>
            Begin again with the new script
          </button>
        </p>
      )}
      <div class="choices">
        <button type="button" class="button big" disabled={at === 0} onClick={() => go(at - 1)}>
          Back
        </button>
        <button
          type="button"
          class="button primary"
          disabled={at === script.length - 1}
          onClick={() => go(at + 1)}
        >
          Next piece
        </button>
      </div>
    </section>
  );
}
