// Who said, who confirmed and what assembled: a Provenance for the document and one for each confirmation.

import { type Entry, stands } from '../../record/entry.ts';
import { BY_HAND } from '../../record/index.ts';
import { hl7, own } from './concept.ts';
import type { Confirmation } from './input.ts';
import { entryName, fhirTime, type Scene } from './scene.ts';
import type { CodeableConcept, Provenance, Reference } from './shapes.ts';
import { narrative, plainWords } from './words.ts';

/** HL7 CodeSystem provenance-participant-type. */
const agentType = (code: 'author' | 'assembler' | 'verifier', display: string): CodeableConcept =>
  hl7('provenance-participant-type', code, display);

interface Verified {
  readonly name: string;
  readonly entries: readonly Entry[];
  readonly recorded: string;
  readonly how: string;
  readonly who: Reference;
}

const verified = ({ name, entries, recorded, how, who }: Verified, scene: Scene): Provenance => ({
  resourceType: 'Provenance',
  id: scene.idOf(`provenance/${name}`),
  text: narrative([how]),
  target: entries.map(({ id }) => scene.refTo(entryName(id))),
  recorded,
  activity: own('act', 'confirmation', how),
  agent: [{ type: agentType('verifier', 'Verifier'), who }],
});

/** By hand it was the partner, whose screen it is; a voice may have been either's. */
function who(confirmation: Confirmation, scene: Scene): Pick<Verified, 'how' | 'who'> {
  if (confirmation.by === BY_HAND) return { how: 'Confirmed by hand', who: scene.refTo('partner') };
  const words = plainWords(confirmation.by);
  return {
    how: words === null ? 'Confirmed by voice' : `Confirmed by voice: “${words}”`,
    who: { display: 'Responder or partner, by voice' },
  };
}

/** Each confirmation with those of its entries that stand confirmed; last, those whose confirmation is not known. */
function confirmed(scene: Scene): readonly Provenance[] {
  const { entries, confirmations = [] } = scene.input;
  const standing = entries.filter((entry) => stands(entry) && entry.state === 'confirmed');
  const known = confirmations.flatMap((confirmation, index): readonly Verified[] => {
    const mine = standing.filter(({ id }) => confirmation.entries.includes(id));
    return mine.length === 0
      ? []
      : [
          {
            name: `${index}`,
            entries: mine,
            recorded: fhirTime(confirmation.at),
            ...who(confirmation, scene),
          },
        ];
  });
  const rest = standing.filter(({ id }) => !confirmations.some((one) => one.entries.includes(id)));
  const unknown: Verified = {
    name: 'unknown',
    entries: rest,
    recorded: scene.madeAt,
    how: 'Confirmed; by whom and when is not in the record',
    who: { display: 'Not recorded' },
  };
  return [...known, ...(rest.length === 0 ? [] : [unknown])].map((one) => verified(one, scene));
}

/** True where a confirmation by hand stands in the document, whose agent is the partner. */
export const partnerConfirmed = (provenances: readonly Provenance[], scene: Scene): boolean =>
  provenances.some(({ agent }) =>
    agent.some(({ who: { reference } }) => reference === scene.refTo('partner').reference),
  );

/** The Provenance of the document, then those of what was confirmed. */
export const provenancesOf = (scene: Scene): readonly Provenance[] => [
  {
    resourceType: 'Provenance',
    id: scene.idOf('provenance/document'),
    text: narrative(['Told by the responder; heard and assembled by Fieldsay.']),
    target: [scene.refTo('composition')],
    recorded: scene.madeAt,
    activity: own('act', 'assembly'),
    agent: [
      { type: agentType('author', 'Author'), who: scene.responder },
      { type: agentType('assembler', 'Assembler'), who: scene.refTo('device') },
    ],
  },
  ...confirmed(scene),
];
