// An utterance as the parser receives it: words as said or as recognised, with when and by which ear they were heard.

export interface Utterance {
  readonly text: string;
  /** when it was said, milliseconds since the epoch */
  readonly heardAt: number;
  /** IANA time zone (`America/Denver`) or fixed offset (`-06:00`) in which spoken clock times are meant */
  readonly zone: string;
}
