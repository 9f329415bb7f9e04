// Why a microphone could not be opened, in one sentence, and whether it may be there in a moment.

export interface Refusal {
  readonly kind: 'refused';
  /** a sentence for the responder */
  readonly why: string;
  /** true where trying again by itself makes sense */
  readonly passing: boolean;
}

// Names of errors: Media Capture and Streams, W3C, section "MediaDevices.getUserMedia".
const REASONS: Readonly<Record<string, readonly [why: string, passing: boolean]>> = {
  NotAllowedError: [
    'The microphone is not allowed for this page: allow it beside the address or in the device’s settings, then listen again.',
    false,
  ],
  SecurityError: ['The browser forbids the microphone on this page.', false],
  TypeError: ['This browser gives no microphone to this page; it needs a safe (https) address.', false],
  NotFoundError: ['No microphone was found. Plug one in, or type.', true],
  NotReadableError: [
    'The microphone cannot be read: another app may have it. Close that app, or hang up.',
    true,
  ],
  AbortError: ['The device gave up opening the microphone.', true],
  OverconstrainedError: ['No microphone fits.', false],
};

/** The refusal for an error of `getUserMedia`, by the error's name. */
export function refusalOf(name: string): Refusal {
  const [why, passing] = REASONS[name] ?? ['The microphone could not be opened.', true];
  return { kind: 'refused', why, passing };
}
