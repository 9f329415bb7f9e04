// "Any pain?" "Elbows no, wrists no, left hand yes": each place with its answer.

import type { Clause } from '../../clauses/clause.ts';
import { isSmall } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { itemsOf } from '../exam/items.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { isChatter } from '../light.ts';
import type { SitePhrase } from '../sites/item.ts';
import { sitesOf } from '../sites/sides.ts';
import { bear, place, type Said, type Talk } from '../talk.ts';
import { type AnswerWord, wordOf } from './answer-word.ts';
import { type AskedFindings, settle } from './settle.ts';

interface PlaceAnswer extends Span {
  readonly phrases: readonly SitePhrase[];
  readonly word: AnswerWord;
}

/** Each place of a clause with its answer, or null where the clause is of another form. */
function placesAnswered(talk: Talk, { pieces }: Clause): readonly PlaceAnswer[] | null {
  const out: PlaceAnswer[] = [];
  let phrases: SitePhrase[] = [];
  for (const item of itemsOf(talk, pieces)) {
    if (item.type === 'site') {
      phrases.push(item.phrase);
      continue;
    }
    const { piece } = item;
    const word = wordOf(piece);
    const [first] = phrases;
    if (word !== null && !isSmall(piece, 'link')) {
      if (first === undefined || word === 'unsure') return null;
      out.push({ phrases, word, from: first.from, to: piece.to });
      phrases = [];
    } else if (!isChatter(piece)) return null;
  }
  return out.length > 0 && phrases.length === 0 ? out : null;
}

/** States what was asked after of each place that is named with its own yes or no; false where the clause is of another form. */
export function answerPlaces(talk: Talk, clause: Clause, asked: AskedFindings): boolean {
  const answers = placesAnswered(talk, clause);
  // A single place that was not asked after begins something of its own.
  if (answers === null || asked.negative || (asked.sites.length > 0 && answers.length < 2)) return false;
  const refs = answers.map(({ phrases }) => sitesOf(phrases, []));
  bear(talk, { asked: null, sites: refs.at(-1) ?? [] });
  settle(
    talk,
    answers.flatMap(({ word, from, to }, i) =>
      (refs[i] ?? []).flatMap((ref) =>
        asked.findings.map(
          ({ finding, present }): Said => ({
            statement: findingStatement(finding, ref, (word === 'yes') === present, {}),
            known: {
              finding: 'carried',
              ...(ref.sideKnown === null || ref.sideKnown === 'spoken' ? {} : { side: ref.sideKnown }),
            },
            from,
            to,
          }),
        ),
      ),
    ),
  );
  place(talk, ...clause.pieces);
  return true;
}
