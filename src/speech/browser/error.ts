// Why the browser stopped listening, in one plain sentence, and whether going on by itself can help; the codes are those of
// the Web Speech API draft.

export interface RecognitionFault {
  /** a sentence */
  readonly why: string;
  /** true where only a person can mend it */
  readonly blocking: boolean;
}

const FAULTS: Readonly<Record<string, readonly [why: string, blocking: boolean]>> = {
  'not-allowed': ['The microphone is not allowed for this page; allow it in the browser’s settings.', true],
  'service-not-allowed': ['The browser does not allow speech recognition here.', true],
  'language-not-supported': ['The browser cannot recognise this language.', true],
  'audio-capture': ['No microphone was found, or another app has it.', false],
  network: ['The browser’s recognition needs a network, and there is none.', false],
};
/** The browser takes no phrases, or none with this language or recogniser: the next session is begun without. */
export const NO_PHRASES = 'phrases-not-supported';
/** Silence, ends that were asked for, and what the next session does without. */
const NO_FAULT: readonly string[] = ['no-speech', 'aborted', NO_PHRASES];

/** The fault for an error's code; null for one after which listening simply goes on. */
export function faultOf(code: string): RecognitionFault | null {
  if (NO_FAULT.includes(code)) return null;
  const [why, blocking] = FAULTS[code] ?? [`The browser stopped listening (${code}).`, false];
  return { why, blocking };
}
