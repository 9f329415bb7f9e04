// Which openings may follow which part: after "no" and a name more names may be denied, and after history what it came with.

import type { Topic } from '../../../terms/index.ts';
import { isLikely, isSmall, marked, type Piece } from '../../pieces/piece.ts';
import type { Opening } from './opens.ts';
import { denies, has } from './said.ts';
import { hurts } from './whole.ts';

/** `list`: names of findings are denied; `history`: told, and may go on; `told`: it ends where a finding has its own place. */
export type Kind = 'list' | 'history' | 'told' | 'plain';

// What happened, what was eaten and what is taken show nowhere on the body; an allergy does.
const TOLD: readonly Topic[] = ['mechanism', 'last-intake', 'medications', 'age', 'weight', 'sex'];

/** What the part before tells of; `isTurned` where a "but" follows it. */
export function kindOf(left: readonly Piece[], isTurned: boolean): Kind {
  // "No pain in the neck but swelling of the jaw".
  if (isTurned) return 'plain';
  const told = left.findLast(({ role }) => role === 'history');
  if (told !== undefined) return TOLD.some((topic) => isLikely(told, 'topic', topic)) ? 'told' : 'history';
  const denial = left.findLastIndex((piece) => denies(piece));
  const denied = left.slice(denial + 1).find(({ role }) => role === 'finding');
  if (denial < 0 || denied === undefined || isLikely(denied, 'adj')) return 'plain';
  // "Chest clear of any injury": nothing more can be named.
  const isAll = marked(denied, 'finding', 'abnormality') && has(left.slice(0, denial), 'site');
  return isAll ? 'plain' : 'list';
}

/** True where what opens so is said by itself after a part of this kind. */
export function mayGoOn(
  opening: Opening,
  kind: Kind,
  left: readonly Piece[],
  next: readonly Piece[],
): boolean {
  switch (opening) {
    case 'place':
      // "I landed on my pole and my knee twisted": in the patient's own words it is what happened.
      return !(has(left, 'history') && isMine(next));
    case 'located':
    case 'stated':
      return true;
    case 'itself':
      return kind !== 'history';
    case 'name':
      return kind === 'plain' || kind === 'told';
    case 'history':
      return kind === 'plain';
    // "Belly tender, pain seven": how bad that is.
    case 'score':
      return kind !== 'history' && !hurts(left);
    // Else the sign is read in its place, with what stands before it.
    case 'reading':
      return has(left, 'care') && has(left, 'site');
  }
}

const isMine = ([first]: readonly Piece[]): boolean => first !== undefined && isSmall(first, 'mine');
