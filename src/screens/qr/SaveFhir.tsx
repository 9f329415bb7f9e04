// The record as a document that a hospital's system reads: HL7 FHIR R4, unconfirmed entries marked as preliminary.

import { confirmationsOf, fhirDocument } from '../../handoff/index.ts';
import { passOn } from '../desk/index.ts';
import { useTools, useWorked } from '../frame/tools.ts';
import { download } from '../records/download.ts';

export function SaveFhir() {
  const { desk } = useTools();
  const { report } = useWorked();
  const save = () => {
    const record = desk.record.peek();
    if (record === null) return;
    const { facts, exam } = record;
    const input = { ...report.peek(), record: facts.id, confirmations: confirmationsOf(exam.events) };
    passOn(desk, { step: 'copied', by: 'fhir', sealed: false });
    download(`${facts.id.slice(0, 8)}.fhir.json`, JSON.stringify(fhirDocument(input)));
  };
  return (
    <>
      <button type="button" class="button big wide" onClick={save}>
        Save for a hospital’s system (HL7 FHIR R4)
      </button>
      <p class="small-print">That file is not sealed: whoever has it can read it.</p>
    </>
  );
}
