// What is left to examine, in exam order, and what is to be looked at again; what was not examined is never shown as normal.

import { nextStep, uncompared } from '../../clinical/index.ts';
import { useWorked } from '../frame/tools.ts';
import { byRegion, rowName, touchedOnly } from './left.ts';

export function Left() {
  const { reckoning } = useWorked();
  const { coverage, remaining, steps, rechecks, focus, limbEnds } = reckoning.value;
  const next = nextStep(steps);
  const left = byRegion(remaining);
  const ends = limbEnds.filter(({ state }) => state === 'not-checked');
  const joints = focus.filter(({ missing }) => missing.length > 0);
  return (
    <>
      <p class="next-step">
        {next === null ? (
          'Every taught step was at least begun; what is still open stands below.'
        ) : (
          <>
            Next by the taught order: <b>{next.text}</b>
          </>
        )}
      </p>
      <List title="Check again" items={rechecks.map(({ text }) => text)} />
      <section class="group" aria-labelledby="not-examined">
        <h3 id="not-examined">Not examined</h3>
        {left.length === 0 ? (
          <p>No site is wholly unspoken of. That clears nothing.</p>
        ) : (
          <>
            <p class="small-print">Nothing was said of these, so nothing is known of them.</p>
            <dl class="left">
              {left.map(({ region, places }) => (
                <div key={region}>
                  <dt>{region}</dt>
                  <dd>{places.join('; ')}</dd>
                </div>
              ))}
            </dl>
          </>
        )}
      </section>
      <List
        title="One side only"
        items={uncompared(steps).map(({ text }) => `${text}: the other side was examined, this one was not`)}
      />
      <List
        title="Limbs: not checked"
        items={ends.map(({ place, aspect }) => `${rowName(place)}: ${aspect}`)}
      />
      <List
        title="Round each injury"
        items={joints.map(({ text, missing }) => `${text}: not said of ${missing.join('; ')}`)}
      />
      <List title="Looked at or felt, nothing said of it" items={touchedOnly(coverage).map(rowName)} joined />
    </>
  );
}

interface ListProps {
  readonly title: string;
  readonly items: readonly string[];
  /** in one line */
  readonly joined?: boolean;
}

function List({ title, items, joined = false }: ListProps) {
  if (items.length === 0) return null;
  return (
    <section class="group" aria-label={title}>
      <h3>{title}</h3>
      {joined ? (
        <p>{items.join('; ')}</p>
      ) : (
        <ul>
          {items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
