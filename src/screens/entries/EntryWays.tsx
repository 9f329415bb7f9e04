// Entries as buttons with the words they came from, each leading to the sheet where it can be heard, confirmed, changed or struck.

import type { Entry } from '../../record/index.ts';
import { useTools } from '../frame/tools.ts';
import { EntryLine } from './EntryLine.tsx';

const STATE_WORDS = {
  heard: 'to check',
  confirmed: 'confirmed',
  replaced: 'replaced',
  struck: 'struck',
} as const;

/** The entries of these ids, in the order spoken; nothing where there is none. */
export function EntryWays({ ids }: { readonly ids: readonly string[] }) {
  const { derived, changing } = useTools();
  const meant = new Set(ids);
  const entries = derived.entries.value.filter(({ id }) => meant.has(id));
  if (entries.length === 0) return null;
  return (
    <ul class="plain-list entry-ways">
      {entries.map((entry) => (
        <li key={entry.id}>
          <EntryWay
            entry={entry}
            open={() => {
              changing.value = entry.id;
            }}
          />
        </li>
      ))}
    </ul>
  );
}

interface WayProps {
  readonly entry: Entry;
  readonly open: () => void;
}

function EntryWay({ entry, open }: WayProps) {
  return (
    <button type="button" class="entry-way" data-press={`open ${entry.id}`} onClick={open}>
      <span class="only-heard">Change or strike: </span>
      <EntryLine entry={entry} /> <span class={`mark state-${entry.state}`}>{STATE_WORDS[entry.state]}</span>
      <span class="entry-heard">“{entry.heard}”</span>
    </button>
  );
}
