// What a spoken "confirm" confirms: nothing that was not plainly meant, and what is easily misheard one by one.

import { A_SIDE, aloneBecause } from './alone.ts';
import type { Entry } from './entry.ts';
import type { RecordState } from './state.ts';
import { groupsThatFit } from './target.ts';

/** Words that may stand beside "confirm" without making another sentence of it. */
const BESIDE =
  /^(?:yes|yeah|yep|ok|okay|right|good|correct|roger|affirm|affirmative|copy|please|thanks|thank|you|and|i|we|all|of|that|it|so|well|now|um|uh|er)$/;

/**
 * True where the words ask for nothing but to confirm: "not confirmed", "is that confirmed", "the winch is confirmed for
 * three" and "pulse ninety, confirm", which nobody has seen yet, confirm nothing. `span` is the command's place in `text`.
 */
export function isPlainConfirm(text: string, [from, to]: readonly [number, number]): boolean {
  const beside = `${text.slice(0, from)} ${text.slice(to)}`.toLowerCase().match(/[\p{L}\p{N}'’]+/gu) ?? [];
  return !text.includes('?') && beside.every((word) => BESIDE.test(word));
}

/**
 * What a "confirm" would confirm now: of what was said last, that which may go together, and else the first of what goes
 * one by one. What has an open question is never among it: a plain "confirmed" answers none.
 */
export function nextToConfirm(state: RecordState): readonly Entry[] {
  const [latest, ...earlier] = groupsThatFit(state, {});
  if (latest === undefined) return [];
  const { utterance } = latest.group;
  const sameWords = utterance === null ? [] : earlier.filter(({ group }) => group.utterance === utterance);
  const waiting = [latest, ...sameWords]
    .map(({ entries }) => entries.filter((entry) => entry.state === 'heard' && entry.doubt === undefined))
    .find((some) => some.length > 0);
  if (waiting === undefined) return [];
  const together = waiting.filter((entry) => aloneBecause(entry) === null);
  return together.length > 0 ? together : firstOf(waiting);
}

/** The first, and with it what was said of the same side of the same place: that side was said once, and is heard once. */
function firstOf([first, ...others]: readonly Entry[]): readonly Entry[] {
  if (first === undefined) return [];
  const same = others.filter((entry) => aloneBecause(entry) === A_SIDE && samePlace(entry, first));
  return aloneBecause(first) === A_SIDE ? [first, ...same] : [first];
}

const samePlace = (one: Entry, other: Entry): boolean =>
  'site' in one && 'site' in other && one.site === other.site && one.side === other.side;
