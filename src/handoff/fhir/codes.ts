// The project's own code systems, complete, so that a document never needs a licensed terminology to be read.

import {
  ASPECTS,
  CARES,
  FINDINGS,
  PARTS,
  PULSE_POINTS,
  SEVERITIES,
  SIDES,
  SITES,
  STRENGTHS,
  TOPICS,
  WARMTHS,
} from '../../terms/index.ts';
import { careName, findingName, siteName, topicName } from '../../timeline/index.ts';
import { capital } from '../sentences/list.ts';
import { placeName } from '../sentences/place.ts';
import type { CodeSystem } from './shapes.ts';

type Concept = CodeSystem['concept'][number];

interface System {
  readonly title: string;
  readonly description: string;
  readonly concepts: readonly Concept[];
}

const open = (word: string): string => capital(word.replaceAll('-', ' '));
const named = <T extends string>(words: readonly T[], name: (word: T) => string = open): readonly Concept[] =>
  words.map((code) => ({ code, display: capital(name(code)) }));
const listed = (names: Readonly<Record<string, string>>): readonly Concept[] =>
  Object.entries(names).map(([code, display]) => ({ code, display }));

/** A site alone is one whose side was not said, or that has none; with a side the patient's side is in the code. */
const places: readonly Concept[] = SITES.flatMap((site) => [
  { code: site, display: capital(siteName(site)) },
  ...SIDES.map((side) => ({ code: `${side}-${site}`, display: capital(placeName({ site, side })) })),
]);

/** Ratings as worded in 2014 (a rendering, seen): Teasdale G et al. Lancet Neurol 2014;13:844-854. */
const GCS_RATINGS = {
  E1: 'None',
  E2: 'To pressure',
  E3: 'To sound',
  E4: 'Spontaneous',
  V1: 'None',
  V2: 'Sounds',
  V3: 'Words',
  V4: 'Confused',
  V5: 'Orientated',
  M1: 'None',
  M2: 'Extension',
  M3: 'Abnormal flexion',
  M4: 'Normal flexion',
  M5: 'Localising',
  M6: 'Obeys commands',
};

export const SYSTEMS = {
  document: {
    title: 'Documents and their sections',
    description: 'What a document, or a section of it, holds.',
    concepts: listed({
      'field-examination': 'Record of an examination in the field',
      history: 'History',
      allergies: 'Allergies',
      medications: 'Medications',
      signs: 'Signs',
      examination: 'Examination',
      'limb-ends': 'Circulation, sensation and motion',
      care: 'Care',
      coverage: 'Not examined',
      criteria: 'Criteria for field triage',
      kept: 'Kept as said',
    }),
  },
  finding: {
    title: 'Findings of a head-to-toe examination',
    description:
      'As the code of an Observation whose valueBoolean is true where the finding is there and false where it was said not to be. "abnormality" false: nothing abnormal was found there by whoever looked; it is never written of a place that nobody spoke of.',
    concepts: named(FINDINGS, findingName),
  },
  place: {
    title: 'Places on the body',
    description:
      "A site, or a site with its side before it; sides are the patient's. A site alone has no side, or its side was not said.",
    concepts: places,
  },
  'limb-end': {
    title: "State of a limb's end",
    description: 'As the code of an Observation whose valueBoolean is true where the aspect is intact.',
    concepts: ASPECTS.map((aspect) => ({ code: `${aspect}-intact`, display: `${capital(aspect)} intact` })),
  },
  attribute: {
    title: 'What was said besides of a finding, a sign or a limb',
    description: 'As the code of a component.',
    concepts: listed({
      part: 'Part of the site',
      level: 'Vertebra or rib',
      size: 'Size',
      severity: 'Severity',
      count: 'Number of them',
      quality: 'Quality, in the words said',
      'pulse-point': 'Pulse that was felt',
      warmth: 'Warmth',
      strength: 'Strength',
      'on-oxygen': 'On oxygen',
      orientation: 'Orientation, number of spheres',
      color: 'Colour of the skin',
      temperature: 'Temperature of the skin to the touch',
      moisture: 'Moisture of the skin',
      'pupils-equal': 'Pupils equal',
      'pupils-round': 'Pupils round',
      'pupils-reactive': 'Pupils reactive',
      'left-pupil-size': 'Size of the left pupil',
      'right-pupil-size': 'Size of the right pupil',
      'left-pupil-reactive': 'Left pupil reactive',
      'right-pupil-reactive': 'Right pupil reactive',
    }),
  },
  part: { title: 'Parts of a site', description: 'Where on the site.', concepts: named(PARTS) },
  severity: { title: 'Severity', description: 'In the word said.', concepts: named(SEVERITIES) },
  'pulse-point': { title: 'Pulses', description: 'Which pulse was felt.', concepts: named(PULSE_POINTS) },
  warmth: { title: 'Warmth', description: "Of a limb's end, to the touch.", concepts: named(WARMTHS) },
  strength: {
    title: 'Strength',
    description: 'In the word said; a grade is a number.',
    concepts: named(STRENGTHS),
  },
  sign: {
    title: 'Signs without a code in the standards used',
    description: 'As the code of an Observation.',
    concepts: listed({ skin: 'Skin', pupils: 'Pupils', glucose: 'Blood glucose' }),
  },
  gcs: {
    title: 'Ratings of the Glasgow Coma Scale',
    description: 'E eye, V verbal, M motor, with the rating. A component that is not testable has no rating.',
    concepts: listed(GCS_RATINGS),
  },
  avpu: {
    title: 'Responsiveness',
    description: 'The AVPU scale.',
    concepts: listed({
      A: 'Alert',
      V: 'Responds to voice',
      P: 'Responds to pain',
      U: 'Unresponsive',
    }),
  },
  method: {
    title: 'Methods',
    description: 'How a value was had.',
    concepts: listed({ palpation: 'By palpation', told: 'As told' }),
  },
  topic: {
    title: 'Topics of the history',
    description:
      'As the code of an Observation: valueString where something was told, valueBoolean false where it was denied. Where one allergy alone was denied, valueString says which.',
    concepts: named(TOPICS, topicName),
  },
  care: {
    title: 'Care given in the field',
    description: 'As the code of a Procedure.',
    concepts: named(CARES, careName),
  },
  act: {
    title: 'Acts of the examination and of the record',
    description:
      'Looked at or felt: no finding, and no word that nothing was found. Note and mark: words kept as said.',
    concepts: listed({
      visit: 'Looked at or felt',
      note: 'Words kept as said',
      mark: 'Moment marked',
      coverage: 'Coverage of the examination',
      confirmation: 'Confirmation that this is what was said',
      assembly: 'Assembly of the document',
    }),
  },
  coverage: {
    title: 'Coverage of a place',
    description:
      'What has been said of a place. None of them means normal; one that was not examined has no code but is absent data.',
    concepts: listed({
      touched: 'Looked at or felt, with nothing found or denied there',
      clear: 'Only negatives said',
      found: 'Something found',
    }),
  },
  trust: {
    title: 'Confirmation',
    description: 'As a tag on every resource that came of what was heard.',
    concepts: listed({
      unconfirmed: 'Heard, not confirmed by a person',
      confirmed: 'Confirmed by a person to be what was said',
    }),
  },
} as const satisfies Record<string, System>;

export type SystemName = keyof typeof SYSTEMS;

/** `urn:fieldsay:codes:finding` */
export const systemUrl = (name: SystemName): string => `urn:fieldsay:codes:${name}`;

/** The code systems as the resources of the standard that document them; no document carries them. */
export const codeSystems: readonly CodeSystem[] = Object.entries(SYSTEMS).map(
  ([name, { title, description, concepts }]) => ({
    resourceType: 'CodeSystem',
    id: `fieldsay-${name}`,
    url: systemUrl(name as SystemName),
    version: '1',
    name: open(name).replaceAll(' ', ''),
    title,
    status: 'active',
    description,
    caseSensitive: true,
    content: 'complete',
    count: concepts.length,
    concept: concepts,
  }),
);
