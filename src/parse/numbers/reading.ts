// What a stretch of words can mean as a number, and the smaller piece that such a reading is built from.

export interface NumberReading {
  /** index past the last word of the reading */
  readonly end: number;
  readonly value: number;
  /** how it was said, not what it is worth: "three point oh" is a decimal */
  readonly kind: 'whole' | 'decimal' | 'fraction';
  /** true where a word that is mostly something else ("to", "for", "a") was taken for a number */
  readonly loose: boolean;
  /** the digits as said, zeros in front kept ("oh six" is "06"); only for figures and numbers said digit by digit */
  readonly digits?: string;
}

export interface ReadOptions {
  /** also take words that only sound like digits, and "a" for one */
  readonly loose?: boolean;
}

/** A whole number on its way to becoming a reading. */
export type Piece = Omit<NumberReading, 'kind'>;

/** The reading that a piece makes when nothing more is said of it. */
export const asWhole = (piece: Piece): NumberReading => ({ ...piece, kind: 'whole' });
