// The head of the page: whose record is open and whether it is kept, the look by one press, and the ways to records and more.

import { clock, dayOf } from '../../timeline/index.ts';
import { LinkBar } from '../link/LinkBar.tsx';
import { LockButton } from '../records/LockButton.tsx';
import { OtherPatients, PatientNow } from '../records/PatientBar.tsx';
import { Saved } from '../records/Saved.tsx';
import { LOOK_NAMES, nextLook } from './look.ts';
import { type Sheet as SheetName, useTools } from './tools.ts';

const WAYS: readonly (readonly [sheet: SheetName, name: string])[] = [
  ['records', 'Records'],
  ['more', 'More'],
];

export function Header() {
  const { desk, sheet, look } = useTools();
  const record = desk.record.value;
  const began =
    record === null ? 'no record yet' : clock(record.facts.startedAt, dayOf(record.facts.startedAt));
  const next = nextLook(look.value);
  return (
    <header class="head">
      <div class="head-who">
        {/* With a record open the room is for whose it is. */}
        <h1 class={record === null ? '' : 'only-heard'}>Fieldsay</h1>
        <PatientNow />
        <p class="head-record">
          <span>{began}</span> <Saved />
        </p>
      </div>
      <nav class="head-ways" aria-label="About the page">
        <button
          type="button"
          class="button small look-way"
          aria-label={`Look: ${LOOK_NAMES[look.value]}. Change to ${LOOK_NAMES[next]}`}
          onClick={() => {
            look.value = next;
          }}
        >
          <span class="look-sign" aria-hidden="true" /> {LOOK_NAMES[look.value]}
        </button>
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
        <LockButton />
      </nav>
      <OtherPatients />
      <LinkBar />
    </header>
  );
}
