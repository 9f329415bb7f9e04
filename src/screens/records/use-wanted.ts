// Does what was asked of the list of records by word, as its buttons do: one is opened only where the list was seen before.

import { useEffect, useState } from 'preact/hooks';
import { type Tools, useTools } from '../frame/tools.ts';
import { type Shown, summaryOf } from './summary.ts';
import { newRecord } from './switch.ts';
import { inListOrder, notOne, recordInWords, recordsMeant, type Wanted } from './wanted.ts';
import { whoIs } from './who.ts';

/** What the list tells of a word. */
export interface Told {
  readonly text: string;
  /** the record that it stands with; null where it stands above all */
  readonly record: string | null;
}

/** The part of the sheet that a word is answered at, where it is of no one record. */
export const TOLD_AT = 'records-told';
/** The element of the record that is open. */
export const OPEN_NOW = 'record-open-now';

/** What was told last; null where nothing was. `leave` goes to another record and closes the sheet. */
export function useWanted(records: readonly Shown[] | null, leave: (go: () => void) => void): Told | null {
  const tools = useTools();
  const [told, setTold] = useState<Told | null>(null);
  const wanted = tools.recordWanted.value;
  useEffect(() => {
    if (records === null || wanted === null) return;
    tools.recordWanted.value = null;
    const answered =
      wanted.meant === 'new' ? begin(tools, wanted, leave) : open(tools, wanted, records, leave);
    setTold(answered);
    if (answered === null) return;
    tools.lastTold.value = answered.text;
    tools.speaker.speak(answered.text);
    tools.recordsAt.value = placeOf(tools, answered.record);
  }, [records, wanted]);
  return told;
}

/** The element of a record in the list. */
export const idOf = (record: string): string => `record-${record}`;

const placeOf = ({ desk }: Tools, record: string | null): string =>
  record === null ? TOLD_AT : record === desk.record.peek()?.facts.id ? OPEN_NOW : idOf(record);

const here = ({ desk }: Tools): string => {
  const record = desk.record.peek();
  return record === null ? '' : ` and leave ${whoIs(summaryOf(record))}`;
};

function begin(tools: Tools, { isListed }: Wanted, leave: (go: () => void) => void): Told | null {
  const record = tools.desk.record.peek();
  // The words that asked for it may have begun it themselves.
  if (record === null || record.exam.state.entries.length === 0)
    return { text: 'It is new already: nothing was entered yet.', record: null };
  if (!isListed) return { text: `Say “new incident” once more to begin it${here(tools)}.`, record: null };
  leave(() => newRecord(tools.desk));
  tools.speaker.speak('A new incident: its record begins with the first words.');
  return null;
}

function open(
  tools: Tools,
  { meant, isListed }: Wanted,
  records: readonly Shown[],
  leave: (go: () => void) => void,
): Told | null {
  if (meant === 'new') return null;
  const { desk } = tools;
  const listed = inListOrder(records);
  const found = recordsMeant(listed, meant);
  const [only, ...others] = found;
  if (only === undefined || others.length > 0) return { text: notOne(listed, found), record: null };
  const { id } = only.facts;
  const words = recordInWords(listed, only);
  if (desk.record.peek()?.facts.id === id) return { text: `${words}. It is open now.`, record: id };
  if (!isListed) {
    const again = `Say “open record ${listed.indexOf(only) + 1}” to open it${here(tools)}.`;
    return { text: `${words}. ${again}`, record: id };
  }
  leave(() => {
    desk.turning.value = { record: id };
  });
  return null;
}
