// Entries region by region in the order of the examination, then what belongs to no region; nothing is left out.

import { type Entry, stands } from '../../record/index.ts';
import { REGIONS, regionOf } from '../../terms/index.ts';
import { perMembers } from '../../timeline/index.ts';
import { mayGoTogether } from './one-by-one.ts';

export interface EntryGroup {
  readonly id: string;
  readonly title: string;
  /** those that stand, in the order spoken; mere visits last */
  readonly standing: readonly Entry[];
  /** replaced and struck ones */
  readonly fallen: readonly Entry[];
  /** how many wait to be confirmed */
  readonly open: number;
  /** those that may be confirmed together */
  readonly together: readonly Entry[];
}

const OTHERS: readonly (readonly [id: string, title: string])[] = [
  ['signs', 'Vital signs'],
  ['history', 'History'],
  ['care', 'Care, no place said'],
  ['marks', 'Marked moments'],
  ['notes', 'Kept as said'],
];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The group an entry is shown in. */
export function groupOf(entry: Entry): string {
  switch (entry.kind) {
    case 'vital':
      return 'signs';
    case 'history':
      return 'history';
    case 'mark':
      return 'marks';
    case 'note':
      return 'notes';
    case 'care':
      return entry.site === undefined ? 'care' : regionOf(entry.site);
    default:
      return regionOf(entry.site);
  }
}

const states = ({ kind }: Entry): boolean => kind !== 'visit';

const TITLES: ReadonlyMap<string, string> = new Map([
  ...REGIONS.map((region) => [region, capital(region)] as const),
  ...OTHERS,
]);

/** The group of these entries, which are of one: the same object for as long as they are the same entries. */
const groupOfAll = perMembers<Entry, EntryGroup>((mine) => {
  const id = groupOf(mine[0]);
  const alive = mine.filter(stands);
  // A visit states nothing of the patient: it comes after what does.
  const standing = [...alive.filter(states), ...alive.filter((entry) => !states(entry))];
  return {
    id,
    title: TITLES.get(id) ?? id,
    standing,
    fallen: mine.filter((entry) => !stands(entry)),
    open: standing.filter(({ state }) => state === 'heard').length,
    together: standing.filter(mayGoTogether),
  };
});

/** The groups that have an entry. */
export function groupEntries(entries: readonly Entry[]): readonly EntryGroup[] {
  const heaps = new Map<string, [Entry, ...Entry[]]>();
  for (const entry of entries) {
    const id = groupOf(entry);
    const heap = heaps.get(id);
    if (heap === undefined) heaps.set(id, [entry]);
    else heap.push(entry);
  }
  return [...TITLES.keys()].flatMap((id) => {
    const heap = heaps.get(id);
    return heap === undefined ? [] : [groupOfAll(heap)];
  });
}
