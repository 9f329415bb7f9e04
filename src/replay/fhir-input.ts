// What every form is printed from: the handoff's input, with the examination's own name and who confirmed what.

import { confirmationsOf, type FhirInput } from '../handoff/index.ts';
import { formatIso } from '../parse/times/index.ts';
import type { Exam } from '../record/index.ts';
import type { Talk } from '../record/talk/index.ts';
import { endOf } from './examine.ts';
import { handoffInput } from './record-json.ts';

/** The talk names the examination: told again it gives the same identifiers, and another talk gives others. */
const recordName = ({ startedAt, utterances }: Talk, patient: number): string =>
  [
    patient === 1 ? startedAt : `${startedAt} patient ${patient}`,
    ...utterances.map(({ heardAt, text }) => `${heardAt} ${text}`),
  ].join('\n');

/** Made for the moment at which the last thing was said. */
export function fhirInput<Context>(talk: Talk, { state, events }: Exam<Context>, patient = 1): FhirInput {
  const startedAt = state.startedAt ?? formatIso(talk.startedAt, talk.zone);
  return {
    ...handoffInput(state, startedAt, endOf(talk)),
    record: recordName(talk, patient),
    confirmations: confirmationsOf(events),
  };
}
