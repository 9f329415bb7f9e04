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
  /** words that are likely here; offered by few browsers */
  phrases?: readonly object[];
  onstart: (() => void) | null;
  onresult: ((event: HeardEvent) => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  stop(): void;
  abort(): void;
}

export interface LanguageOptions {
  readonly langs: readonly string[];
  readonly processLocally: boolean;
}

export interface RecognitionMaker {
  new (): Recognition;
  readonly prototype: object;
  available?(options: LanguageOptions): Promise<string>;
  install?(options: LanguageOptions): Promise<boolean>;
}

/** A phrase as the browser wants it. */
export type PhraseMaker = new (phrase: string, boost: number) => object;

/** What makes the phrases that this browser can be told are likely here, or null where it takes none. */
export function phrasesIn(scope: object, maker: RecognitionMaker): PhraseMaker | null {
  const { SpeechRecognitionPhrase } = scope as Record<string, unknown>;
  const takes = 'phrases' in maker.prototype && typeof SpeechRecognitionPhrase === 'function';
  return takes ? (SpeechRecognitionPhrase as unknown as PhraseMaker) : null;
}

/** The browser's recogniser, or null where it has none. */
export function recognitionIn(scope: object): RecognitionMaker | null {
  const { SpeechRecognition, webkitSpeechRecognition } = scope as Record<string, unknown>;
  const found = SpeechRecognition ?? webkitSpeechRecognition;
  return typeof found === 'function' ? (found as unknown as RecognitionMaker) : null;
}
