// Where each clinical number was published, and whether that text was read: the screen shows the same words.

/** `computed`: arithmetic from a rule that was read. */
export type Mark = 'read' | 'from memory' | 'computed' | 'common practice, no source';

export interface Source {
  readonly cite: string;
  readonly mark: Mark;
  /** what was read, and what was not, where the mark alone would say too much */
  readonly note?: string;
}

/** The citation with its mark, as it is shown: `… (read)`. */
export const sourceText = (source: Source): string =>
  source.cite === ''
    ? source.mark
    : `${source.cite} (${source.mark}${source.note === undefined ? '' : `; ${source.note}`})`;

export const COMMON_PRACTICE: Source = { cite: '', mark: 'common practice, no source' };
