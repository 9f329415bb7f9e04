// States a sign and marks its words as understood.

import { place, type Said, state, type Talk } from '../talk.ts';

export function settle(talk: Talk, said: Said): void {
  state(talk, [said]);
  place(talk, said);
}
