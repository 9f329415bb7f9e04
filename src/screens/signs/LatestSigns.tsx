// The latest reading of each vital sign with its course, the earlier ones beneath it, and those that were never taken named.

import { VITALS } from '../../terms/index.ts';
import { clock, dayOf, readingText, series, vitalName } from '../../timeline/index.ts';
import { useTools, useWorked } from '../frame/tools.ts';
import { Course } from './Course.tsx';
import { MEASURES_OF } from './measures.ts';

export function LatestSigns() {
  const { derived, changing } = useTools();
  const { reckoning } = useWorked();
  const courses = reckoning.value.series;
  const day = dayOf(derived.startedAt.value);
  const all = series(derived.entries.value);
  const never = VITALS.filter((vital) => !all.some((one) => one.vital === vital)).map(vitalName);
  return (
    <section class="group" aria-label="Latest signs">
      <h3>Latest signs</h3>
      <ul class="plain-list signs">
        {all.map(({ vital, readings }) => {
          const last = readings.at(-1);
          if (last === undefined) return null;
          const earlier = readings.slice(0, -1);
          return (
            <li key={vital} class={`sign ${last.state}`}>
              <button
                type="button"
                class="sign-now"
                onClick={() => {
                  changing.value = last.id;
                }}
              >
                <span class="only-heard">Change or strike: </span>
                <span class="sign-name">{vitalName(vital)}</span>{' '}
                <b class="sign-value">{readingText(last)}</b>
                <span class="marks">
                  <span class="when">{clock(last.at, day)}</span>
                  <span class={`mark state-${last.state}`}>
                    {last.state === 'heard' ? 'to check' : last.state}
                  </span>
                </span>
                <Course series={courses.filter(({ measure }) => MEASURES_OF[vital]?.includes(measure))} />
              </button>
              {earlier.length > 0 && (
                <p class="small-print">
                  {earlier
                    .map(
                      (one) =>
                        `${clock(one.at, day)} ${readingText(one)}${one.state === 'heard' ? ' (unconfirmed)' : ''}`,
                    )
                    .join('; ')}
                </p>
              )}
            </li>
          );
        })}
      </ul>
      {never.length > 0 && <p class="lacks">Not recorded: {never.join(', ')}.</p>}
    </section>
  );
}
