// Why the browser stopped listening, in one plain sentence; the codes are those of the Web Speech API draft.

const REASONS: Readonly<Record<string, string>> = {
  'not-allowed': 'The microphone is not allowed for this page; allow it in the browser’s settings.',
  'service-not-allowed': 'The browser does not allow speech recognition here.',
  'audio-capture': 'No microphone was found.',
  network: 'The browser’s recognition needs a network, and there is none.',
  'language-not-supported': 'The browser cannot recognise this language.',
};

/** The sentence for an error's code; null for one after which listening simply goes on (silence). */
export function stopReason(code: string): string | null {
  if (code === 'no-speech' || code === 'aborted') return null;
  return REASONS[code] ?? `The browser stopped listening (${code}).`;
}
