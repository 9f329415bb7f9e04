// "Tourniquet on the right thigh still on": care that was told before is said to be there still, and is not given anew. Its words are kept.

import type { Care } from '../../../terms/index.ts';
import { type Island, tagOf } from '../../islands/island.ts';
import { around } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import type { Attachment } from '../sites/attach.ts';
import { type Item, phrasesAt, wordsOf } from '../sites/item.ts';
import type { Talk } from '../talk.ts';

/** True where the care at item `i`, with the places that go with it, is told to be on still and was told of before. */
export function isStillOn(
  { tokens, context, times }: Talk,
  items: readonly Item[],
  i: number,
  island: Island,
  group: Attachment,
): boolean {
  const [item] = items.slice(i, i + 1);
  if (item === undefined) return false;
  const phrases = phrasesAt(items, group);
  const own = wordsOf(item);
  const { from, to: end } = around([own, ...phrases]);
  // "On the right thigh at thirteen forty still on."
  const to = times.find(({ words }) => words?.from === end)?.words?.to ?? end;
  const isStill =
    ON.test(saidIn(tokens, own.to, breathEnd(tokens, own.to - 1))) ||
    ON.test(saidIn(tokens, to, breathEnd(tokens, to - 1))) ||
    HAS.test(saidIn(tokens, Math.max(0, from - 2), from));
  const care = tagOf(island, 'care') as Care;
  const places = phrases.flatMap(({ sites }) => sites);
  return (
    isStill &&
    context.cared.some(
      (one) =>
        one.care === care &&
        places.every(
          ({ site, side }) => site === one.site && (side === null || one.side === null || side === one.side),
        ),
    )
  );
}

const ON =
  /^((is|are|was|he|she|they|it) )*still ((nice and|good and) )?(on|in place|in position|in situ|there|holding|tight|secure|running|going|applied|fine|good|in$)\b/;
const HAS = /\bstill (has|have|got|wearing)$/;

function breathEnd(tokens: readonly Token[], from: number): number {
  const end = tokens.findIndex(({ pause }, at) => at >= from && pause !== '');
  return end < 0 ? tokens.length : end + 1;
}
