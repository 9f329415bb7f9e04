// The body panel: the outline from front or back, its parts in words, and what is left in exam order.

import { useSignal } from '@preact/signals';
import { useTools, useWorked } from '../frame/tools.ts';
import { STATE_NAMES, STATES } from './area-state.ts';
import { Figure, Pattern } from './Figure.tsx';
import { Left } from './Left.tsx';
import { VIEWS } from './outline.ts';
import { ZoneSheet } from './ZoneSheet.tsx';
import { rowsAt, tally, ZONES, type Zone } from './zones.ts';

const VIEW_NAMES = { front: 'Front', back: 'Back' } as const;

export function Body() {
  const { reckoning } = useWorked();
  const { derived, bodyView: view } = useTools();
  const zone = useSignal<Zone | null>(null);
  const { coverage } = reckoning.value;
  return (
    <>
      <div class="choices even view-ways">
        {VIEWS.map((one) => (
          <button
            key={one}
            type="button"
            class="button"
            aria-pressed={view.value === one}
            onClick={() => {
              view.value = one;
            }}
          >
            {VIEW_NAMES[one]}
          </button>
        ))}
      </div>
      <div class="figure-and-key">
        <div class="figures">
          {VIEWS.map((one) => (
            <div key={one} class={`figure-of ${one === view.value ? 'chosen' : ''}`}>
              <Figure
                view={one}
                choose={(chosen) => {
                  zone.value = chosen;
                }}
              />
            </div>
          ))}
        </div>
        <ul class="plain-list key" aria-label="What the patterns mean">
          {STATES.map((state) => (
            <li key={state}>
              <svg class="swatch" viewBox="0 0 24 24" aria-hidden="true">
                <defs>
                  <Pattern state={state} of="key" />
                </defs>
                <rect class="area" style={{ fill: `url(#${state}-key)` }} width="24" height="24" />
              </svg>{' '}
              {STATE_NAMES[state]}
            </li>
          ))}
        </ul>
      </div>
      <ul class="plain-list zones" aria-label="Parts of the body">
        {ZONES.map((one) => (
          <li key={one.id}>
            <button
              type="button"
              class="zone-way"
              onClick={() => {
                zone.value = one;
              }}
            >
              <b>{one.name}</b>
              <span class="small-print">{tally(rowsAt(one, coverage))}</span>
            </button>
          </li>
        ))}
      </ul>
      <Left />
      {zone.value !== null && (
        <ZoneSheet
          zone={zone.value}
          rows={rowsAt(zone.value, coverage)}
          entries={derived.entries.value}
          close={() => {
            zone.value = null;
          }}
        />
      )}
    </>
  );
}
