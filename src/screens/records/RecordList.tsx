// The kept records by incident, with a field to find one by name, day or place.

import { useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { GoneRecords } from './GoneRecords.tsx';
import { RecordItem } from './RecordItem.tsx';
import type { Listing } from './RecordsSheet.tsx';
import { openKept } from './restore.ts';
import { byIncident, matches } from './search.ts';
import type { Told } from './use-wanted.ts';
import { inListOrder, KEPT_RECORDS } from './wanted.ts';

interface Props {
  readonly listing: Listing;
  readonly told: Told | null;
  /** goes to another record and closes the sheet */
  readonly leave: (go: () => void) => void;
  readonly changed: () => void;
}

/** Fewer are found faster by looking. */
const MANY = 3;

export function RecordList({ listing: { records, unnamed, gone }, told, leave, changed }: Props) {
  const { desk } = useTools();
  const [typed, setTyped] = useState('');
  const listed = inListOrder(records);
  const found = records.filter((one) => matches(one, typed));
  if (records.length === 0 && unnamed.length === 0 && gone.length === 0)
    return <p class="empty">No record is kept yet.</p>;
  return (
    <section id={KEPT_RECORDS} aria-label="Kept records" class="part">
      {records.length >= MANY && (
        <div class="field">
          <label for="find-record">Find by name, day or place</label>
          <input
            id="find-record"
            type="search"
            autocomplete="off"
            value={typed}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
        </div>
      )}
      {typed !== '' && (
        <p class="small-print" role="status">
          {found.length} of {records.length} records
        </p>
      )}
      {byIncident(found).map(({ id, records: inIt }) => (
        <section key={id} class="incident">
          <h3>{nameOf(inIt[0])}</h3>
          <ul class="plain-list spaced">
            {inIt.map((one) => (
              <RecordItem
                key={one.facts.id}
                shown={one}
                number={listed.indexOf(one) + 1}
                told={told?.record === one.facts.id ? told.text : null}
                leave={leave}
                changed={changed}
              />
            ))}
          </ul>
        </section>
      ))}
      {unnamed.length > 0 && (
        <section class="incident">
          <h3>Records whose name cannot be read</h3>
          <ul class="plain-list spaced">
            {unnamed.map((id) => (
              <li key={id} class="record">
                <p>{id.slice(0, 8)}</p>
                <button
                  type="button"
                  class="button"
                  onClick={() => {
                    const reader = desk.reader.value;
                    if (reader !== null) leave(() => void openKept(desk, reader, id));
                  }}
                >
                  Open what can be read
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <GoneRecords gone={gone} changed={changed} />
    </section>
  );
}

/** `2026-05-03, 14:02`, by the clock of the place where it began, and the place where one was given. */
function nameOf(first: Listing['records'][number] | undefined): string {
  if (first === undefined) return '';
  const { startedAt } = first.facts;
  const when = `${startedAt.slice(0, 10)}, ${startedAt.slice(11, 16)}`;
  return first.summary.place === '' ? when : `${when}, ${first.summary.place}`;
}
