// Going from one record to another: the one that is left stays kept as it is.

import { type Desk, type OpenRecord, setRecord } from '../desk/index.ts';

/** Leaves the open record for `next`, or for none: then the first words said begin a new one. */
export function newRecord(desk: Desk, next: OpenRecord | null = null): void {
  if (next !== null) {
    setRecord(desk, next);
    return;
  }
  desk.record.value = null;
  void desk.keeper.forgetOpen();
}
