// Vital signs, trends, scores and triage criteria, each with what it lacks and where it was published.

import { useWorked } from '../frame/tools.ts';
import { Course } from './Course.tsx';
import { Criteria } from './Criteria.tsx';
import { LatestSigns } from './LatestSigns.tsx';
import { Reckoned } from './Reckoned.tsx';

export function Signs() {
  const { reckoning } = useWorked();
  const { due, series, patterns, scoreCards, burns, clocks, spine } = reckoning.value;
  const timed = clocks.filter(({ minutes }) => minutes !== null);
  return (
    <>
      {due.reminder !== null && <p class="reminder">{due.reminder}</p>}
      <LatestSigns />
      {series.some(({ points }) => points.length > 1) && (
        <section class="group" aria-label="Courses">
          <h3>Courses</h3>
          {series.map((one) => (
            <Course key={one.measure} series={one} />
          ))}
        </section>
      )}
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
            {timed.map(({ clock, of, minutes }) => (
              <li key={clock + of}>
                {clock === 'vitals' || clock === of ? of : `${clock}: ${of}`}: {minutes} min ago
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
