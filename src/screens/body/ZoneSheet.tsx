// What is known of one part of the body, site by site, and a way to say by touch what is there or is not.

import { useSignal } from '@preact/signals';
import type { CoverageRow } from '../../clinical/index.ts';
import type { Entry } from '../../record/index.ts';
import { sentenceOf } from '../entries/sentence.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { STATE_NAMES } from './area-state.ts';
import { rowName } from './left.ts';
import { SaySheet } from './SaySheet.tsx';
import { entriesAt, entriesOn, type Zone } from './zones.ts';

interface Props {
  readonly zone: Zone;
  readonly rows: readonly CoverageRow[];
  readonly entries: readonly Entry[];
  readonly close: () => void;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function ZoneSheet({ zone, rows, entries, close }: Props) {
  const saying = useSignal<CoverageRow | null>(null);
  const known = entriesAt(zone, entries);
  if (saying.value !== null)
    return (
      <SaySheet
        key="say"
        place={saying.value}
        entries={entriesOn(saying.value, known)}
        close={() => {
          saying.value = null;
        }}
      />
    );
  return (
    <Sheet key="zone" title={zone.name} close={close}>
      <p>Touch a place to see what was said of it, or to say what is there.</p>
      <ul class="plain-list places">
        {rows.map((row) => (
          <li key={rowName(row)}>
            <button
              type="button"
              class="zone-way"
              onClick={() => {
                saying.value = row;
              }}
            >
              <b>{capital(rowName(row))}</b>
              <span class={`place-state ${row.state}`}>{STATE_NAMES[row.state]}</span>
              <PlaceSaid entries={entriesOn(row, known)} />
            </button>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

/** What stands of one place, in a line: `laceration 10 cm; bleeding: NO`. */
function PlaceSaid({ entries }: { readonly entries: readonly Entry[] }) {
  if (entries.length === 0) return null;
  const texts = entries.map((entry) => {
    const { what, answer } = sentenceOf(entry);
    return answer === null ? what : `${what}: ${answer}`;
  });
  return <span class="place-said">{texts.join('; ')}</span>;
}
