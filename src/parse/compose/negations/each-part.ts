// "There isn't a part of that hand that isn't tender": two denials, one of any part and one of what is so of it, say that it is so all over.

import type { Span } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { hasRole, type Item, wordsOf } from '../sites/item.ts';
import type { FoundMark } from './found-mark.ts';

const ANY_PART =
  /^(nowhere|(not|no)( (a|an|any|one))?( (single|square))? (part|bit|inch|spot|place|patch|piece|area|corner|bone|rib|finger|toe|tooth)) (of|on|in|to|along|that|which)\b/;
const NOT_SO = /\b(is|are|does|do|was|has) not$/;
const GOES_ON = /^(and|but|or)$/;

// So many words apart two denials are of one thing.
const NEAR = 14;

/** The marks without both of each such pair. */
export function withoutNoneThatIsNot(
  found: readonly FoundMark[],
  items: readonly Item[],
  tokens: readonly Token[],
): readonly FoundMark[] {
  const undone = new Set<FoundMark>();
  for (const next of found) {
    const { start, end, kind } = next.mark;
    if (kind !== 'before' || !NOT_SO.test(saidIn(tokens, Math.max(0, start - 1), end))) continue;
    const nowhere = tokens.findLastIndex(({ word }, at) => at < start && word === 'nowhere');
    const before = found.findLast(({ mark }) => mark.kind === 'before' && mark.end <= start);
    const from = Math.max(before?.mark.start ?? -1, nowhere);
    if (from < 0 || end - from > NEAR || !ANY_PART.test(saidIn(tokens, from, end))) continue;
    const between = tokens.slice(from, start);
    if (between.some(({ word, pause }) => pause === 'end' || pause === 'ask' || GOES_ON.test(word))) continue;
    // "No part of the bruise": of a thing, and not of a place.
    if (items.some((item) => hasRole(item, 'finding') && isIn(wordsOf(item), { from, to: start }))) continue;
    undone.add(next);
    if (before !== undefined && before.mark.start >= from) undone.add(before);
  }
  return undone.size === 0 ? found : found.filter((one) => !undone.has(one));
}

const isIn = (one: Span, { from, to }: Span): boolean => one.from >= from && one.to <= to;
