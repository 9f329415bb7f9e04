// Says which words of an utterance a negation covers, from where its trigger phrases stand.

// The idea is that of Chapman WW, Bridewell W, Hanbury P, Cooper GF, Buchanan BG, "A simple algorithm for identifying
// negated findings and diseases in discharge summaries", J Biomed Inform 2001;34:301-310: a trigger reaches over what
// follows (or precedes) it until something ends its reach. The phrases themselves are in grammar/negation.jsgf.

export const NEGATION_KINDS = [
  'before',
  'after',
  'pseudo',
  'stop',
  'possible-before',
  'possible-after',
] as const;
export type NegationKind = (typeof NEGATION_KINDS)[number];

/** A trigger phrase at the tokens from `start` up to but not with `end`; a stop may be empty, between two tokens. */
export interface NegationMark {
  readonly start: number;
  readonly end: number;
  /**
   * `before` negates what follows it ("no"), `after` what precedes it ("is absent"); the `possible-` kinds put it in
   * doubt; `stop` ends a reach ("but"); `pseudo` only looks like a negation ("not only").
   */
  readonly kind: NegationKind;
}

/** The tokens from `start` up to but not with `end`, and the mark that reaches over them. */
export interface NegationSpan {
  readonly start: number;
  readonly end: number;
  readonly by: NegationMark;
}

/** The marks in their order; of two that overlap, the one that begins earlier, then the longer one, counts. */
function settled(marks: readonly NegationMark[]): readonly NegationMark[] {
  const kept: NegationMark[] = [];
  for (const mark of marks.toSorted((a, b) => a.start - b.start || b.end - a.end)) {
    const last = kept.at(-1);
    if (last === undefined || mark.start >= last.end) kept.push(mark);
  }
  return kept;
}

// How far a phrase reaches back, in tokens: room for two findings and their site ("deformity and swelling of the left
// forearm are absent"), not for all that a breathless sentence said before. Common practice, no source; the 2001 paper
// takes five words both ways (from memory), and its kit gives the same figures for five, eight and no limit.
const REACH_BACK = 8;

/** Every mark ends the reach of its neighbours, whatever its kind. */
function reaches(
  marks: readonly NegationMark[],
  length: number,
  forward: NegationKind,
  back: NegationKind,
): readonly NegationSpan[] {
  const ordered = settled(marks);
  const spans: NegationSpan[] = [];
  ordered.forEach((by, i) => {
    const start = by.kind === back ? Math.max(ordered[i - 1]?.end ?? 0, by.start - REACH_BACK) : by.end;
    const end = by.kind === back ? by.start : (ordered[i + 1]?.start ?? length);
    if ((by.kind === forward || by.kind === back) && start < end) spans.push({ start, end, by });
  });
  return spans;
}

/** The stretches of an utterance of `length` tokens that are negated, in order. Linear in marks given in order. */
export const negatedSpans = (marks: readonly NegationMark[], length: number): readonly NegationSpan[] =>
  reaches(marks, length, 'before', 'after');

/** The stretches that were said to be possible, not so ("rule out", "cannot be excluded"), in order. */
export const possibleSpans = (marks: readonly NegationMark[], length: number): readonly NegationSpan[] =>
  reaches(marks, length, 'possible-before', 'possible-after');
