// "Which foot can't you feel?" "The left.": a side alone says which limb's end it is; of the other one it says nothing.

import { isSite } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { marked } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import type { StateAll } from '../corrections/dry-run.ts';
import { csmStatement } from '../csm/csm-statement.ts';
import { endOf, endsOnSide } from '../csm/limb-ends.ts';
import { isChatter } from '../light.ts';
import { plainSite } from '../sites/site-ref.ts';
import { bear, place, type Talk } from '../talk.ts';
import { chosenIn, headOf } from './answer-choice.ts';
import { noteAnswer } from './note-answer.ts';
import { type AskedCsm, settle } from './settle.ts';

/** Takes the side that opens a clause for the answer; false where the clause says something else. */
export function answersWhichEnd(
  talk: Talk,
  { pieces }: Clause,
  asked: AskedCsm,
  stateAll: StateAll,
): boolean {
  const { which } = asked;
  const [end, ...others] = asked.ends;
  if (which === undefined || end === undefined || others.some(({ site }) => site !== end.site)) return false;
  const head = headOf(talk, pieces, (named) => named !== null && isSite(named) && endOf(named) === end.site);
  const said = head === null ? null : chosenIn(talk, head);
  if (head === null || said === null) return false;
  const rest = pieces.slice(head.length);
  bear(talk, { asked: null, sites: [plainSite(end.site, said.side)] });
  const isNo = head.some((piece) => marked(piece, 'answer', 'no') && piece.role !== 'side');
  // "No, the right", and a "neither" to how cold or weak one of them is: nobody can tell what is so.
  if (isNo || (said.denied && (which.present || Object.keys(which.details).length > 0)))
    noteAnswer(talk, spanned(head));
  else
    settle(
      talk,
      endsOnSide(asked.ends, said.side).flatMap((one) =>
        asked.aspects.map((aspect) => ({
          statement: csmStatement(
            one,
            aspect,
            said.denied ? !which.present : which.present,
            said.denied ? {} : which.details,
          ),
          known: { site: 'carried', aspect: 'carried', present: 'inferred' } as const,
          ...spanned(head),
        })),
      ),
    );
  place(talk, ...head);
  if (!rest.every(isChatter)) stateAll(talk, rest);
  return true;
}
