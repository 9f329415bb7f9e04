// The radio script one piece at a time; it holds still while it is being read, and says when the record has moved on.

import { useState } from 'preact/hooks';
import { RADIO_STEPS, radio, radioDetails } from '../../handoff/index.ts';
import { useWorked } from '../frame/tools.ts';
import { useAfterPaint } from '../later/after-paint.ts';

const PARTS = { script: 'Radio script', details: 'Further details' } as const;
type Part = keyof typeof PARTS;

/** The short script, or whatever it left out, for those who ask for it. */
export function RadioScript() {
  const [part, setPart] = useState<Part>('script');
  const other: Part = part === 'script' ? 'details' : 'script';
  return (
    <section class="radio" aria-label={PARTS[part]}>
      <Pieces key={part} part={part} />
      <button type="button" class="button wide" onClick={() => setPart(other)}>
        {other === 'details' ? 'Further details' : 'Back to the script'}
      </button>
    </section>
  );
}

function Pieces({ part }: { readonly part: Part }) {
  const { report } = useWorked();
  const made = useAfterPaint(
    () => (part === 'script' ? radio(report.value) : radioDetails(report.value)),
    RADIO_STEPS.map((step) => () => step(report.value)),
  );
  const fresh = made.chunks.map(({ text }) => text);
  const [reading, setReading] = useState<readonly string[] | null>(null);
  const [place, setPlace] = useState(0);
  const script = reading ?? fresh;
  const at = Math.min(place, script.length - 1);
  const moved = reading !== null && reading.join('\n') !== fresh.join('\n');
  const go = (to: number) => {
    setReading(to === 0 ? null : script);
    setPlace(to);
  };
  if (script.length === 0) return <p class="empty">{PARTS[part]}: nothing to tell.</p>;
  return (
    <>
      <h3>
        {PARTS[part]}, piece {at + 1} of {script.length}
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
    </>
  );
}
