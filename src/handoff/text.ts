// A report is lines, and each line names the entries it came from, so that it can be checked against what was heard.

export interface HandoffLine {
  readonly text: string;
  /** ids of the entries it came from; empty for a heading and for what was not recorded */
  readonly entries: readonly string[];
  readonly role: 'heading' | 'line';
  /** the clauses of a line that tells several things, each with its own entries; left out where there is one */
  readonly clauses?: readonly Sentence[];
}

export interface HandoffText {
  readonly lines: readonly HandoffLine[];
}

/** A sentence in English prose, ending in a full stop, with the ids of the entries it came from. */
export interface Sentence {
  readonly text: string;
  readonly entries: readonly string[];
  /** the clauses that it joins, each a sentence by itself; left out where there is one */
  readonly clauses?: readonly Sentence[];
}

export const heading = (text: string): HandoffLine => ({ text, entries: [], role: 'heading' });

export const line = ({ text, entries, clauses }: Sentence): HandoffLine => ({
  text,
  entries,
  role: 'line',
  ...(clauses === undefined ? {} : { clauses }),
});

/** A sentence that rests on no entry. */
export const plain = (text: string): Sentence => ({ text, entries: [] });

/** The report as text, a line each, without a newline at the end. */
export const textOf = ({ lines }: HandoffText): string => lines.map(({ text }) => text).join('\n');
