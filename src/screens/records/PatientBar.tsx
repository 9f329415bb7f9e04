// The patient in mind, always on the screen; where the incident has more than one, the others are one press away.

import { useEffect, useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { type Shown, summaryOf } from './summary.ts';
import { patientsHere } from './turn.ts';
import { shapeOf, whoIs } from './who.ts';

/** Whose record is open, in a line. */
export function PatientNow() {
  const record = useTools().desk.record.value;
  if (record === null) return null;
  const mine = summaryOf(record);
  return (
    <p class="patient-now" aria-live="off">
      <span aria-hidden="true">{shapeOf(mine.patient)}</span> {whoIs(mine)}
    </p>
  );
}

/** The other patients of the incident, each a press away; nothing where there is none. */
export function OtherPatients() {
  const { desk } = useTools();
  const record = desk.record.value;
  const [others, setOthers] = useState<readonly Shown[]>([]);
  const here = record?.facts.id ?? null;
  const patient = record === null ? 0 : record.exam.state.filing.patient;
  useEffect(() => {
    setOthers([]);
    if (here === null || patient === 0) return;
    let still = true;
    patientsHere(desk).then(
      (found) => still && setOthers(found),
      () => undefined,
    );
    return () => {
      still = false;
    };
  }, [here, patient]);
  if (record === null) return null;
  const mine = summaryOf(record);
  const several = others.filter(({ summary }) => summary.patient !== mine.patient);
  if (several.length === 0) return null;
  return (
    <div class="patients">
      {several.length > 0 && (
        <div class="patient-others">
          {/* Each button says it by itself to whoever does not see them. */}
          <span class="patient-turn" aria-hidden="true">
            Turn to
          </span>
          {several.map(({ facts, summary }) => (
            <button
              key={facts.id}
              type="button"
              class="button small"
              aria-label={`Turn to ${whoIs(summary)}`}
              onClick={() => {
                desk.turning.value = summary.patient;
              }}
            >
              <span aria-hidden="true">{shapeOf(summary.patient)}</span> {summary.patient}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
