// A yes or a no to "can you feel this", "can you wiggle your toes".

import type { Span } from '../../span.ts';
import { csmStatement } from '../csm/csm-statement.ts';
import type { HowKnown, Talk } from '../talk.ts';
import type { AnswerWord } from './answer-word.ts';
import { type AskedCsm, settle } from './settle.ts';

/** States of each end and aspect that was asked after whether it is intact. */
export function answerCsm(talk: Talk, asked: AskedCsm, word: AnswerWord, { from, to }: Span): void {
  const sided = (asked.ends[0]?.side ?? null) !== null;
  const known: HowKnown = { site: 'carried', aspect: 'carried', ...(sided ? { side: 'carried' } : {}) };
  settle(
    talk,
    asked.ends.flatMap((end) =>
      asked.aspects.map((aspect) => ({
        statement: csmStatement(end, aspect, word === 'yes'),
        known,
        from,
        to,
      })),
    ),
  );
}
