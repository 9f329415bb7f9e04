// What stays in a short radio report when words run out: this table, and nothing else, decides it.

import { abnormalNow, isGrave as isGraveFinding } from '../../clinical/index.ts';
import { type Entry, stands } from '../../record/entry.ts';
import type { Care } from '../../terms/index.ts';
import type { HandoffInput } from '../input.ts';
import { metFlags } from '../sentences/flags.ts';

/** Each kind of thing that may be said, the first to stay first, with the reason for its place. */
export const KEEPS = [
  // Never left out: without them the wrong place is chosen, a limb is lost, or a drug harms.
  { keep: 'red', never: true },
  { keep: 'tourniquet', never: true },
  { keep: 'allergy', never: true },
  // What is lost most often on the way (Carter 2009), and asked back.
  { keep: 'critical', never: true },
  // Few words, and nothing makes sense without them.
  { keep: 'who', never: true },
  // Silence would be taken for an examination: that it is not whole is said in two words where there is no room.
  { keep: 'not-examined', never: true },
  // What the receiver gets ready for.
  { keep: 'worst', never: false },
  // As much as an injury, and few words: pupils that are unequal or fixed, a cold body, a low glucose, a blue skin.
  { keep: 'grave-sign', never: false },
  { keep: 'mechanism', never: false },
  { keep: 'time', never: false },
  { keep: 'breathing', never: false },
  // A collapse or a fit that came at a time of its own.
  { keep: 'event', never: false },
  // Each by its worst finding first, so that a bad one is not lost for the second of another.
  { keep: 'problem', never: false },
  // Any other sign out of the ordinary.
  { keep: 'sign', never: false },
  // A criterion in a few words.
  { keep: 'yellow', never: false },
  // The sum was said; its parts say where it was lost.
  { keep: 'gcs-parts', never: false },
  { keep: 'arrival', never: false },
  // Done already: the receiver sees most of it.
  { keep: 'treatment', never: false },
  // All that was found there, where the worst was said alone so far; then the words that an allergy came with.
  { keep: 'more', never: false },
  // Which regions were not examined; they stand in place of the two words.
  { keep: 'gaps', never: false },
  { keep: 'needs', never: false },
  { keep: 'trend', never: false },
  { keep: 'medication', never: false },
  { keep: 'history', never: false },
  // A denial rules little out at a distance.
  { keep: 'denial', never: false },
] as const;

export type Keep = (typeof KEEPS)[number]['keep'];

/** The order of what is said after the headline; that is the same in each, and ends in the worst injuries. */
export const RADIO_ORDERS = {
  /** age and headline are said; then time, mechanism, injuries, signs, treatment, arrival and requirements */
  atmist: [
    'time',
    'mechanism',
    'event',
    'problem',
    'denial',
    'not-examined',
    'gaps',
    'yellow',
    'grave-sign',
    'sign',
    'breathing',
    'gcs-parts',
    'trend',
    'treatment',
    'allergy',
    'medication',
    'history',
    'arrival',
    'needs',
  ],
  'imist-ambo': [
    'mechanism',
    'time',
    'event',
    'problem',
    'denial',
    'not-examined',
    'gaps',
    'yellow',
    'grave-sign',
    'sign',
    'breathing',
    'gcs-parts',
    'trend',
    'treatment',
    'allergy',
    'medication',
    'history',
    'arrival',
    'needs',
  ],
  sbar: [
    'mechanism',
    'time',
    'event',
    'allergy',
    'medication',
    'history',
    'treatment',
    'problem',
    'denial',
    'not-examined',
    'gaps',
    'yellow',
    'grave-sign',
    'sign',
    'breathing',
    'gcs-parts',
    'trend',
    'needs',
    'arrival',
  ],
} as const satisfies Record<string, readonly Keep[]>;

export type RadioOrder = keyof typeof RADIO_ORDERS;

/** Words of a whole report at 80 words a minute: 90 seconds for a serious examination, 45 for one that is not. */
export const SERIOUS_WORDS = 120;
export const CLEAN_WORDS = 60;

/** Care that nobody gives without need; common practice, no source. */
const GRAVE_CARE: readonly Care[] = [
  'tourniquet',
  'wound-packing',
  'cpr',
  'airway-opened',
  'chest-seal',
  'pelvic-binder',
];

/** A sign of which one reading is gravely out of the ordinary by itself. */
const isGraveSign = (entry: Extract<Entry, { kind: 'vital' }>): boolean =>
  abnormalNow([entry])?.abnormality === 'grave';

const isGrave = (entry: Entry): boolean => {
  if (!stands(entry)) return false;
  if (entry.kind === 'care') return GRAVE_CARE.includes(entry.care);
  if (entry.kind === 'finding') return entry.present && isGraveFinding(entry);
  if (entry.kind === 'csm') return !entry.present;
  if (entry.kind !== 'vital') return false;
  if (isGraveSign(entry)) return true;
  if (entry.vital === 'gcs') return entry.value.total !== undefined && entry.value.total < 15;
  return entry.vital === 'responsiveness' && entry.value.avpu !== undefined && entry.value.avpu !== 'A';
};

/**
 * The most words that the report should take. Serious is an examination with a criterion met, a GCS under 15, less than
 * full alertness, a sign gravely out of the ordinary, grave care, or a finding worse than a wound, a swelling or a pain. It decides the length alone.
 */
export function wordBudget(input: HandoffInput): number {
  const met = [...metFlags(input, 'red'), ...metFlags(input, 'yellow')];
  return met.length > 0 || input.entries.some(isGrave) ? SERIOUS_WORDS : CLEAN_WORDS;
}
