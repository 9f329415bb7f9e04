// The triage criteria: those met, those that cannot be decided, those not met; none of them decides anything here.

import { useWorked } from '../frame/tools.ts';
import { Reckoned } from './Reckoned.tsx';

export function Criteria() {
  const { reckoning } = useWorked();
  const { flags } = reckoning.value;
  const met = flags.filter(({ state }) => state === 'met');
  const rest = [
    ['Cannot be decided from what was said', flags.filter(({ state }) => state === 'unknown')],
    ['Not met by what was said', flags.filter(({ state }) => state === 'not-met')],
  ] as const;
  return (
    <section class="group" aria-label="Triage criteria">
      <h3>Triage criteria</h3>
      <p class="small-print">From a published guideline. Local protocol decides.</p>
      {met.length === 0 && <p>No criterion is known to be met. That clears nothing.</p>}
      {met.map((flag) => (
        <Reckoned key={flag.rule} text={flag.text} of={flag} tone={flag.level} />
      ))}
      {rest.map(([title, some]) =>
        some.length === 0 ? null : (
          <details key={title}>
            <summary>
              {title} ({some.length})
            </summary>
            {some.map((flag) => (
              <Reckoned key={flag.rule} text={flag.text} of={flag} />
            ))}
          </details>
        ),
      )}
    </section>
  );
}
