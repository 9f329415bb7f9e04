// Vital signs, trends, scores and triage criteria, each with what it lacks and where it was published.

import type { Reckoning } from '../../clinical/index.ts';
import { formatIso } from '../../parse/times/index.ts';
import { clock, dayOf } from '../../timeline/index.ts';
import { useTools, useWorked } from '../frame/tools.ts';
import { Criteria } from './Criteria.tsx';
import { LatestSigns } from './LatestSigns.tsx';
import { Reckoned } from './Reckoned.tsx';

export function Signs() {
  const { reckoning } = useWorked();
  const { due, patterns, scoreCards, burns, clocks, spine } = reckoning.value;
  const timed = clocks.filter(({ minutes }) => minutes !== null);
  return (
    <>
      <Due of={due} />
      <LatestSigns />
      {patterns.length > 0 && (
        <section class="group" aria-label="Trends">
          <h3>Trends</h3>
          {patterns.map((pattern) => (
            <Reckoned key={pattern.pattern} text={pattern.text} of={pattern} />
          ))}
        </section>
      )}
      <Criteria />
      <section class="group" aria-label="Scores">
        <h3>Scores</h3>
        {scoreCards.map((card) => (
          <Reckoned key={card.score} text={card.text} of={card} />
        ))}
        {burns !== null && <Reckoned text={burns.text} of={burns} />}
      </section>
      {timed.length > 0 && (
        <section class="group" aria-label="Clocks">
          <h3>Clocks</h3>
          <ul>
            {timed.map(({ clock, of, since, minutes, running, remark }) => (
              <li key={`${clock}${of}${since}`}>
                {clock === 'vitals' || clock === of ? of : `${clock}: ${of}`}:{' '}
                {running ? `${minutes} min ago` : `on for ${minutes} min`}
                {remark !== null && `, ${remark}`}
              </li>
            ))}
          </ul>
        </section>
      )}
      <section class="group" aria-label="Spine items">
        <details>
          <summary>Items of the spine rules</summary>
          <p class="small-print">{spine.note}</p>
          {spine.items.map((item) => (
            <Reckoned key={item.set + item.item} text={item.text} of={item} />
          ))}
        </details>
      </section>
    </>
  );
}

const STANDING = { stable: 'stable', unstable: 'unstable', unknown: 'not known to be stable' } as const;

/** What is due now, or when the next set is. */
function Due({ of }: { readonly of: Reckoning['due'] }) {
  const { desk } = useTools();
  const record = desk.record.value;
  if (record === null) return null;
  const { reminder, dueAt, everyMinutes, stability, source } = of;
  if (reminder !== null || dueAt === null)
    return (
      <p class="reminder due">
        <b>Due now.</b> {reminder} <span class="small-print">({source})</span>
      </p>
    );
  const at = clock(formatIso(dueAt, record.exam.zone), dayOf(record.facts.startedAt));
  return (
    <p class="reminder">
      Next set at <b>{at}</b>: every {everyMinutes} minutes while {STANDING[stability]}.{' '}
      <span class="small-print">({source})</span>
    </p>
  );
}
