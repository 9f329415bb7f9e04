// Every triage criterion in the few words a person can say and a listener can write; its published text stays in SOAP.

import type { Flag } from '../input.ts';
import { tidy } from './list.ts';

/** By the name that the criterion has in the record. Ours in wording; the criteria are those of the 2021 guideline. */
const SHORT: Readonly<Record<string, string>> = {
  'penetrating-injury': 'penetrating injury',
  'skull-deformity': 'skull fracture suspected',
  'spinal-injury-with-loss': 'spinal injury with loss of movement or sensation',
  'chest-wall': 'chest wall unstable or deformed',
  'pelvic-fracture': 'pelvic fracture suspected',
  'proximal-long-bones': 'two proximal long bones fractured, suspected',
  'ruined-extremity': 'limb crushed, mangled or pulseless',
  amputation: 'amputation above wrist or ankle',
  'active-bleeding': 'tourniquet or packing needed',
  commands: 'unable to follow commands',
  'breathing-rate': 'breathing rate under 10 or over 29',
  'respiratory-distress': 'respiratory distress',
  'room-air-saturation': 'saturation under 90 on room air',
  'systolic-child': 'systolic low for age',
  'systolic-10-to-64': 'systolic under 90',
  'pulse-over-systolic': 'heart rate above systolic',
  'systolic-65-up': 'systolic under 110',
  ejection: 'ejected from vehicle',
  intrusion: 'vehicle intrusion or extrication',
  'death-in-vehicle': 'death in same vehicle',
  'unrestrained-child': 'child unrestrained in crash',
  'vehicle-telemetry': 'vehicle telemetry of severe crash',
  'rider-separated': 'rider thrown, significant impact',
  'pedestrian-or-cyclist': 'pedestrian or cyclist struck',
  'fall-over-10-feet': 'fall over 10 feet',
  'low-fall-head': 'low fall with head impact at risk age',
  anticoagulant: 'takes anticoagulant',
  'child-abuse': 'child abuse suspected',
  'special-needs': 'special care needs',
  'pregnancy-over-20-weeks': 'pregnant over 20 weeks',
  'burns-with-trauma': 'burns with other injury',
  'own-judgement': "responder's own judgement",
};

/** The criterion in a few words; one that is not in the table by its text as far as the first colon. */
export const shortCriterion = ({ rule, text }: Flag): string =>
  SHORT[rule] ?? tidy(text.replace(/\s*Local protocol decides\.?\s*$/, '').split(':')[0] ?? text);
