// A line of a report opens to the entries it tells, each of them leading to where it can be looked at and changed.

import type { HandoffLine } from '../../handoff/index.ts';
import { EntryFold } from '../entries/EntryFold.tsx';

export function Told({ line: { text, entries } }: { readonly line: HandoffLine }) {
  return entries.length === 0 ? <p>{text}</p> : <EntryFold of="told" text={text} ids={entries} />;
}
