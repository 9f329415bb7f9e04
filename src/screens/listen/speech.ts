// The little of the browser's speech recognition that the page uses (Web Speech API, draft of the W3C Audio group).

export interface HeardAlternative {
  readonly transcript: string;
  readonly confidence: number;
}

export interface HeardResult extends ArrayLike<HeardAlternative> {
  readonly isFinal: boolean;
}

export interface HeardEvent {
  readonly resultIndex: number;
  readonly results: ArrayLike<HeardResult>;
}

export interface Recognition {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  /** offered where the browser can recognise on the device */
  processLocally?: boolean;
  onresult: ((event: HeardEvent) => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  stop(): void;
  abort(): void;
}

export interface RecognitionMaker {
  new (): Recognition;
  readonly prototype: object;
  available?(options: {
    readonly langs: readonly string[];
    readonly processLocally: boolean;
  }): Promise<string>;
}

/** The browser's recogniser, or null where it has none. */
export function recognitionIn(scope: object): RecognitionMaker | null {
  const { SpeechRecognition, webkitSpeechRecognition } = scope as Record<string, unknown>;
  const found = SpeechRecognition ?? webkitSpeechRecognition;
  return typeof found === 'function' ? (found as unknown as RecognitionMaker) : null;
}

/** True where the browser says that it can recognise this language without sending the sound anywhere. */
export async function worksOnDevice(maker: RecognitionMaker, lang: string): Promise<boolean> {
  if (!('processLocally' in maker.prototype) || maker.available === undefined) return false;
  try {
    return (await maker.available({ langs: [lang], processLocally: true })) === 'available';
  } catch {
    return false;
  }
}
