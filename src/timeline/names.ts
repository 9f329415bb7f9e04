// The record's identifiers in plain English; a word that is missing here reads as itself with its hyphens opened.

import type { Care, Finding, Site, Topic, Vital } from '../terms/index.ts';

const open = (word: string): string => word.replaceAll('-', ' ');

const PLURALS: Partial<Record<Site, string>> = {
  foot: 'feet',
  scapula: 'scapulae',
  // These name several things on one side already.
  ribs: 'ribs',
  fingers: 'fingers',
  toes: 'toes',
  'neck-veins': 'neck veins',
  'behind-ear': 'behind ears',
};

const TOPIC_NAMES: Partial<Record<Topic, string>> = {
  'past-history': 'Past history',
  'last-intake': 'Last intake by mouth',
  provocation: 'Provoked or eased by',
  time: 'Time course',
};

const VITAL_NAMES: Partial<Record<Vital, string>> = {
  gcs: 'GCS',
  'capillary-refill': 'Capillary refill',
};

const CARE_NAMES: Partial<Record<Care, string>> = {
  cpr: 'CPR',
  'recovery-position': 'Recovery position',
};

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** `lower leg` */
export const siteName = (site: Site): string => open(site);
/** `lower legs`: the two of a paired site */
export const sitePlural = (site: Site): string => PLURALS[site] ?? `${open(site)}s`;
/** `tracheal deviation` */
export const findingName = (finding: Finding): string => open(finding);
/** `Past history`, with a capital */
export const topicName = (topic: Topic): string => TOPIC_NAMES[topic] ?? capital(open(topic));
/** `Blood pressure`, with a capital */
export const vitalName = (vital: Vital): string => VITAL_NAMES[vital] ?? capital(open(vital));
/** `Pelvic binder`, with a capital */
export const careName = (care: Care): string => CARE_NAMES[care] ?? capital(open(care));
