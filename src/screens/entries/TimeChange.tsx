// The time at which an entry was so, put right by minutes with large buttons; it changes when that is asked for.

import { useState } from 'preact/hooks';
import { formatIso } from '../../parse/times/index.ts';
import { clock, dayOf } from '../../timeline/index.ts';
import { retime } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import type { Part } from './part.ts';

const STEPS: readonly (readonly [minutes: number, shown: string, name: string])[] = [
  [-1, '− 1', '1 minute earlier'],
  [1, '+ 1', '1 minute later'],
  [-10, '− 10', '10 minutes earlier'],
  [10, '+ 10', '10 minutes later'],
];

export function TimeChange({ entry, tell }: Part) {
  const { desk, derived } = useTools();
  const was = Date.parse(entry.at);
  const [at, setAt] = useState(was);
  const zone = desk.record.value?.exam.zone ?? desk.zone;
  const shown = at === was ? entry.at : formatIso(at, zone);
  return (
    <fieldset>
      <legend>Time, in minutes</legend>
      <p class="time-now" role="status">
        {clock(shown, dayOf(derived.startedAt.value))}
      </p>
      <div class="choices pairs">
        {STEPS.map(([minutes, step, name]) => (
          <button
            key={minutes}
            type="button"
            class="button big"
            aria-label={name}
            onClick={() => setAt(at + minutes * 60_000)}
          >
            {step}
          </button>
        ))}
      </div>
      <button type="button" class="button big wide" onClick={() => tell(retime(desk, entry.id, at))}>
        Change the time
      </button>
    </fieldset>
  );
}
