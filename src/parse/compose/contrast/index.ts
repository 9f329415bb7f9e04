// Promises what a clause says of the other side after it spoke of one; what cannot be turned is kept as a note.

import type { Statement } from '../../../terms/index.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { toEnd } from '../csm/limb-ends.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { bear, type HowKnown, note, place, type Said, state, type Talk } from '../talk.ts';
import { type Tail, tailIn } from './tail.ts';
import { turned } from './turn.ts';

export { withStates } from './late-state.ts';
export { stateOf } from './state.ts';
export { type Found, inState } from './turn.ts';
export { type Tail, tailIn };

/** Bears the tail's limb in mind where nothing before it names one: "sensation intact on the left, reduced on the right foot". */
export function lendSite(talk: Talk, pieces: readonly Piece[], tail: Tail): void {
  const before = pieces.slice(0, tail.from);
  if (tail.site === null || before.some(({ role }) => role === 'site')) return;
  const refs = phrasesIn(itemsOf(talk, [tail.site])).flatMap(({ sites }) => sites);
  if (refs.length > 0 && refs.every((ref) => toEnd(ref, null).length > 0))
    bear(talk, { sites: refs.map((ref) => ({ ...ref, side: null, sideKnown: null })) });
}

/** Says of the tail's side what was last said of the other; its words become a note where that cannot be. */
export function contrast(talk: Talk, pieces: readonly Piece[], tail: Tail): void {
  const words = pieces.slice(tail.from, tail.to);
  const span = spanned(words);
  // "Left shoulder bruised." "Other side nothing.": in a breath of its own a "nothing" is all that is found there.
  const isNothing =
    words.some((piece) => marked(piece, 'nothing')) &&
    !pieces.slice(0, tail.from).some(({ role }) => role === 'finding' || role === 'csm');
  const last = isNothing ? asFoundNothing(talk.context.last) : talk.context.last;
  const said = last.flatMap((statement): readonly Said[] => {
    const one = turned(statement, tail);
    const known: HowKnown = {
      ...(tail.site === null ? { site: 'carried' as const } : {}),
      ...(statement.kind === 'csm' ? { aspect: 'carried' as const } : { finding: 'carried' as const }),
      ...(tail.side === 'mirror' ? { side: 'carried' as const } : {}),
      ...(tail.figure === null ? {} : { present: 'inferred' as const }),
    };
    return one === null ? [] : [{ statement: one, known, ...span }];
  });
  if (said.length === 0) note(talk, span);
  else state(talk, said);
  place(talk, ...words);
}

// What the patient feels is denied by its name alone.
const FELT: ReadonlySet<string> = new Set(['pain', 'numbness', 'tingling', 'weakness']);

/** The findings that stand, each place once and whatever was found there; turned, they call the other side free of all. */
function asFoundNothing(last: readonly Statement[]): readonly Statement[] {
  const seen = new Set<string>();
  return last.flatMap((one): readonly Statement[] => {
    if (one.kind !== 'finding' || !one.present || FELT.has(one.finding)) return [one];
    const { kind, site, side, level } = one;
    const key = `${site} ${side} ${level}`;
    if (seen.has(key)) return [];
    seen.add(key);
    const finding = 'abnormality' as const;
    return [{ kind, site, side, finding, present: true, ...(level === undefined ? {} : { level }) }];
  });
}
