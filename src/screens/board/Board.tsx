// The board: patients worst first by the stated rules, beside one opened record, the devices, and for the crew's address their codes.

import { ORDER_RULES, ORDER_WITHIN } from '../../clinical/incident/index.ts';
import { Crew } from './Crew.tsx';
import { Devices } from './Devices.tsx';
import { ago, type BoardModel, postNow } from './model.ts';
import { OpenedRecord } from './OpenedRecord.tsx';
import { Row } from './Row.tsx';

const STATE_WORDS = {
  connecting: 'Asking the post …',
  there: '',
  cut: 'NO CONNECTION TO THE POST: what stands here is old.',
  refused: 'The post does not let this board in: open it by the address that the post printed.',
} as const;

export function Board({ model }: { readonly model: BoardModel }) {
  const { state, incident, rows, troubles, open, toldAt } = model;
  const now = postNow(model);
  const fault = STATE_WORDS[state.value];
  return (
    <div class="board">
      <header class="board-head">
        <h1>Incident {incident.value}</h1>
        <p>
          {rows.value.length} {rows.value.length === 1 ? 'patient' : 'patients'}.{' '}
          <span class="small-print">Told by the post {ago(toldAt.value?.post ?? null, now)}.</span>
        </p>
        <details class="board-rules">
          <summary>Worst first, by these rules</summary>
          <ol>
            {ORDER_RULES.map((rule) => (
              <li key={rule}>{rule}</li>
            ))}
          </ol>
          <p class="small-print">
            The first that fits counts. {ORDER_WITHIN} Common practice, no source; each criterion names its
            own.
          </p>
        </details>
        <p class="small-print">
          The order decides nothing and clears nobody; local protocol decides. Nothing can be changed from
          here but that a question is asked.
        </p>
        <div role="alert">
          {fault !== '' && <p class="board-fault">{fault}</p>}
          {troubles.value.map((trouble) => (
            <p key={trouble} class="board-fault">
              {trouble}
            </p>
          ))}
        </div>
      </header>
      <main class="board-main">
        <section aria-label="Patients, worst first">
          {rows.value.length === 0 && <p class="empty">No record has come yet.</p>}
          <ol class="plain-list board-rows">
            {rows.value.map((row) => (
              <Row key={row.record} row={row} model={model} />
            ))}
          </ol>
        </section>
        {open.value !== null && <OpenedRecord key={open.value} id={open.value} model={model} />}
        <Devices model={model} />
        {model.isCrew && <Crew model={model} />}
      </main>
    </div>
  );
}
