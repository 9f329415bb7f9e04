// Where it was and who was there: the encounter, the responder, the partner where someone confirmed, and the program.

import { UNSAID } from './concept.ts';
import { fhirTime, type Scene } from './scene.ts';
import type { Device, Encounter, Practitioner } from './shapes.ts';
import { narrative, plainWords } from './words.ts';

/** In the field (HL7 v3-ActCode FLD), and still going on when the document is made. */
export const encounterOf = (scene: Scene): Encounter => ({
  resourceType: 'Encounter',
  id: scene.idOf('encounter'),
  text: narrative(['Examination in the field.']),
  status: 'in-progress',
  class: { system: 'http://terminology.hl7.org/CodeSystem/v3-ActCode', code: 'FLD', display: 'field' },
  subject: scene.patient,
  period: { start: fhirTime(scene.input.startedAt) },
});

function person(scene: Scene, role: 'responder' | 'partner'): Practitioner {
  const name = plainWords(scene.input.people?.[role] ?? '');
  const who = role === 'responder' ? 'The responder' : "The responder's partner";
  return {
    resourceType: 'Practitioner',
    id: scene.idOf(role),
    text: narrative([name === null ? `${who}; name not recorded.` : `${who}: ${name}.`]),
    name: name === null ? [UNSAID] : [{ text: name }],
  };
}

/** The responder always; the partner where `withPartner`. */
export const peopleOf = (scene: Scene, withPartner: boolean): readonly Practitioner[] => [
  person(scene, 'responder'),
  ...(withPartner ? [person(scene, 'partner')] : []),
];

/** The program that heard and wrote; nothing that it worked out is the responder's word. */
export const deviceOf = (scene: Scene): Device => ({
  resourceType: 'Device',
  id: scene.idOf('device'),
  text: narrative(['Fieldsay, the program that heard the talk and assembled this document.']),
  deviceName: [{ name: 'Fieldsay', type: 'user-friendly-name' }],
});
