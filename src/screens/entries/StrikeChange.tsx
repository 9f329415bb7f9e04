// Taking an entry out: it is asked once more, and the entry stays in the record as struck.

import { useState } from 'preact/hooks';
import type { Entry } from '../../record/index.ts';
import { strike } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';

interface Props {
  readonly entry: Entry;
  readonly close: () => void;
}

export function StrikeChange({ entry, close }: Props) {
  const { desk } = useTools();
  const [striking, setStriking] = useState(false);
  return (
    <fieldset>
      <legend>Take it out</legend>
      {striking ? (
        <div class="choices even">
          <button
            type="button"
            class="button danger"
            onClick={() => {
              strike(desk, [entry.id]);
              close();
            }}
          >
            Yes, strike it
          </button>
          {/* A key that is held down must not go on to strike. */}
          <button type="button" class="button big" data-focus-first onClick={() => setStriking(false)}>
            Keep it
          </button>
        </div>
      ) : (
        <button type="button" class="button danger wide" onClick={() => setStriking(true)}>
          Strike
        </button>
      )}
    </fieldset>
  );
}
