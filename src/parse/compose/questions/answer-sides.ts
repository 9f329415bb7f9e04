// "The left one yes, the right one no": each side with its answer.

import type { Side } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { readingOf } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { csmStatement } from '../csm/csm-statement.ts';
import { endsOnSide } from '../csm/limb-ends.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { isChatter } from '../light.ts';
import { sideIn } from '../sites/side-in.ts';
import { plainSite } from '../sites/site-ref.ts';
import { bear, note, place, type Said, type Talk } from '../talk.ts';
import { type AnswerWord, wordOf } from './answer-word.ts';
import { type AskedCsm, type AskedFindings, settle } from './settle.ts';

interface SideAnswer {
  readonly side: Side;
  readonly word: AnswerWord;
}

/** Each side of a clause with its answer, or null where the clause is of another form. */
export function sidesAnswered(clause: Clause): readonly SideAnswer[] | null {
  const out: SideAnswer[] = [];
  let side: Side | null = null;
  for (const piece of clause.pieces) {
    if (isChatter(piece)) continue;
    if (piece.role === 'side') side = sideIn([piece])?.side ?? null;
    else if (readingOf(piece, 'talk.answer') !== null && side !== null) {
      out.push({ side, word: wordOf(piece) ?? 'unsure' });
      side = null;
    } else return null;
  }
  return out.length > 0 && side === null ? out : null;
}

/** States what was asked after of each side. */
export function answerSides(
  talk: Talk,
  clause: Clause,
  asked: AskedFindings | AskedCsm,
  answers: readonly SideAnswer[],
): void {
  const span = spanned(clause.pieces);
  if (!canBeSettled(asked) || answers.some(({ word }) => word === 'unsure')) {
    note(talk, span);
    return;
  }
  bear(talk, { asked: null });
  settle(
    talk,
    answers.flatMap((one) => settledBy(asked, one).map((said) => ({ ...said, ...span }))),
  );
  place(talk, ...clause.pieces);
}

const canBeSettled = (asked: AskedFindings | AskedCsm): boolean =>
  asked.about === 'csm' ? asked.ends.length > 0 : asked.sites.length > 0 && !asked.negative;

function settledBy(
  asked: AskedFindings | AskedCsm,
  { side, word }: SideAnswer,
): readonly Pick<Said, 'statement' | 'known'>[] {
  const isYes = word === 'yes';
  if (asked.about === 'csm')
    return endsOnSide(asked.ends, side).flatMap((end) =>
      asked.aspects.map((aspect) => ({
        statement: csmStatement(end, aspect, isYes),
        known: { site: 'carried', aspect: 'carried' } as const,
      })),
    );
  return asked.sites.flatMap(({ site }) =>
    asked.findings.map(({ finding, present }) => ({
      statement: findingStatement(finding, plainSite(site, side), isYes === present, {}),
      known: { site: 'carried', finding: 'carried' } as const,
    })),
  );
}
