// What a person must know before relying on the page, in plain sentences.

export const CAUTION =
  'An aid to memory, not a device that diagnoses. Local protocol and medical direction decide.';

export const CAUTIONS: readonly string[] = [
  'This is an aid to memory. It is not a device that diagnoses, and it tells nobody what to do.',
  'Local protocol and medical direction decide.',
  'It mishears and misreads. Nothing stands until a person has checked and confirmed it; look twice at sides, negatives and numbers.',
  'What was not examined is listed as not examined. Nothing here is ever cleared.',
  'Left and right are the patient’s.',
  'The record stays in this browser on this device, encrypted. Until you set a passphrase (Records) the key is the device’s own: whoever can use this browser can read it.',
  'Care for the patient first. Everything here can wait.',
];
