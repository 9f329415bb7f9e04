// A stretch of an utterance in token positions, and the words "before" and "after" it.

import type { Pause, Token } from './token.ts';

/** Token positions, `to` past the last. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The pause that was marked after a stretch; none where the utterance goes on or ends unmarked. */
export const pauseAfter = (tokens: readonly Token[], { to }: Pick<Span, 'to'>): Pause =>
  tokens[to - 1]?.pause ?? '';

/** The pause that was marked before a stretch; none at the utterance's beginning. */
export const pauseBefore = (tokens: readonly Token[], { from }: Pick<Span, 'from'>): Pause =>
  tokens[from - 1]?.pause ?? '';

/** True where any pause was marked after it. */
export const isPaused = (tokens: readonly Token[], span: Pick<Span, 'to'>): boolean =>
  pauseAfter(tokens, span) !== '';

/** The shortest stretch that holds all of these; there must be one at least. */
export const around = (spans: readonly Span[]): Span => ({
  from: Math.min(...spans.map(({ from }) => from)),
  to: Math.max(...spans.map(({ to }) => to)),
});

/** The stretch of some pieces in the order spoken; empty, at 0, where there are none. */
export const spanned = (pieces: readonly Span[]): Span => ({
  from: pieces[0]?.from ?? 0,
  to: pieces.at(-1)?.to ?? 0,
});
