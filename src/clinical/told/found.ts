// Whether a telling is of how the patient was found: its time is that of the finding, and of no injury.

const FOUND = /^(?:(?:he|she|they|we|i|patient) )?(?:(?:was|were|been) )*found\b/i;

/** "Found on the floor", "he was found under the wall"; common practice, no source. */
export const tellsFound = (text: string): boolean => FOUND.test(text.trim());
