// One patient on the board: why they stand there, latest signs, flags, what is due, who is with them, when last heard.

import type { BoardRow } from '../../link/index.ts';
import { clock, dayOf } from '../../timeline/index.ts';
import { shapeOf, whoIs } from '../records/who.ts';
import { ago, type BoardModel, postNow } from './model.ts';

export function Row({ row, model }: { readonly row: BoardRow; readonly model: BoardModel }) {
  const day = dayOf(new Date(row.heardAt).toISOString());
  const now = postNow(model);
  return (
    <li class={`board-row rank-${row.rank}`} data-record={row.record}>
      <button
        type="button"
        class="button wide board-open"
        aria-pressed={model.open.value === row.record}
        onClick={() => {
          model.open.value = model.open.value === row.record ? null : row.record;
        }}
      >
        <span aria-hidden="true">{shapeOf(row.patient)}</span> {whoIs(row)}{' '}
        <span class="small-print">begun by {row.begunBy}</span>
        {row.place !== '' && <span class="small-print"> at {row.place}</span>}
        {row.closed && ' (closed)'}
      </button>
      <p>
        <b>
          {row.rank}. {row.why}
        </b>
      </p>
      {row.flags.map((flag) => (
        <p key={flag.text} class={`board-flag ${flag.level}`}>
          {flag.level === 'red' ? 'RED' : 'YELLOW'}: {flag.text}
          {flag.unconfirmed > 0 && ` ${flag.unconfirmed} of ${flag.of} not confirmed.`}
          <span class="small-print"> {flag.source}</span>
        </p>
      ))}
      {row.trends.map((trend) => (
        <p key={trend}>{trend}</p>
      ))}
      {row.vitals.length === 0 ? (
        <p class="board-lacks">No vitals taken.</p>
      ) : (
        <ul class="plain-list board-vitals">
          {row.vitals.map(({ name, reading, at, confirmed }) => (
            <li key={name}>
              {name} <b>{reading}</b> <span class="when">{clock(at, day)}</span>
              {!confirmed && <span class="small-print"> unconfirmed</span>}
            </li>
          ))}
        </ul>
      )}
      {row.due !== null && <p class="board-due">{row.due}</p>}
      <p>
        With <b>{row.writer}</b>
        {row.also.length > 0 && `; also written to by ${row.also.join(', ')} after it was handed over`}. Last
        heard {ago(row.heardAt, now)}. {row.entries} entries, {row.unconfirmed} not confirmed.
      </p>
      {row.troubles.map((trouble) => (
        <p key={trouble} class="board-fault">
          {trouble}
        </p>
      ))}
    </li>
  );
}
