// The head of the page: which record is open, and the ways to records, cautions and more.

import { clock, dayOf } from '../../timeline/index.ts';
import { type Sheet as SheetName, useTools } from './tools.ts';

const WAYS: readonly (readonly [sheet: SheetName, name: string])[] = [
  ['records', 'Records'],
  ['cautions', 'Cautions'],
  ['more', 'More'],
];

export function Header() {
  const { desk, sheet } = useTools();
  const record = desk.record.value;
  const began = record === null ? null : clock(record.facts.startedAt, dayOf(record.facts.startedAt));
  return (
    <header class="head">
      <h1>
        Fieldsay <span class="head-record">{began === null ? 'no record yet' : `from ${began}`}</span>
      </h1>
      <nav class="head-ways" aria-label="About the page">
        {WAYS.map(([way, name]) => (
          <button
            key={name}
            type="button"
            class="button small"
            onClick={() => {
              sheet.value = way;
            }}
          >
            {name}
          </button>
        ))}
      </nav>
    </header>
  );
}
