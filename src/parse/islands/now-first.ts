// "GCS fifteen now, thirteen at ten to two": a "now" that ends its breath is of the figure before it, which is then none of what was before.

import type { Token } from '../token.ts';
import type { FilledSlot, Tag } from './island.ts';

/** True where a phrase would take the figure that is told of now for what the sign was before. */
export function isOfNow(
  tags: readonly Tag[],
  slots: readonly FilledSlot[],
  tokens: readonly Token[],
  from: number,
): boolean {
  if (!tags.some(({ value }) => value === 'former')) return false;
  const last = tags.filter(({ key }) => key === 'num').findLastIndex(({ value }) => value === 'former');
  const [former, next] = slots.filter(({ time }) => time === null).slice(last, last + 2);
  if (former === undefined || next === undefined) return false;
  // "Was eighty now, one ten": the word before the figure tells that it was so before.
  const isThen = tokens
    .slice(from, former.from)
    .some(({ word }) => /^(was|were|had|from|started)$/.test(word));
  if (isThen) return false;
  return tokens.some(
    ({ word, pause }, at) =>
      word === 'now' && pause !== '' && at >= former.to && at < next.from && tokens[at - 1]?.pause === '',
  );
}
