// What a person must know before relying on the page, in plain sentences.

export const CAUTION =
  'An aid to memory, not a device that diagnoses. Local protocol and medical direction decide.';

/** Said once more on a phone, where the whole sentence would take the room of an entry. */
export const CAUTION_SHORT = 'An aid to memory. No diagnosis. Local protocol decides.';

/** What the page does, in three sentences, for the first start. */
export const EXPLAINED: readonly string[] = [
  'Talk as you examine, head to toe, and say the side: each line becomes an entry.',
  'Your partner confirms each entry or puts it right; until then it is marked as unchecked.',
  'It is then put in order for the radio, for paper and for the next crew, with what was not examined named as that.',
];

/** When the microphone is asked for. */
export const MICROPHONE = 'The microphone is asked for when you first press Listen, and not before.';

export const CAUTIONS: readonly string[] = [
  'This is an aid to memory. It is not a device that diagnoses, and it tells nobody what to do.',
  'Local protocol and medical direction decide.',
  'It mishears and misreads. Nothing stands until a person has checked and confirmed it; look twice at sides, negatives and numbers.',
  'What was not examined is listed as not examined. Nothing here is ever cleared.',
  'Left and right are the patient’s.',
  'The record stays in this browser on this device, encrypted. Until you set a passphrase (Records) whoever can use this browser can read it.',
  'Care for the patient first. Everything here can wait.',
];
