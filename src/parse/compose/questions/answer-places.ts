// "Any pain?" "Elbows no, wrists no, left hand yes", "my tummy but not my hips": each place with its answer.

import type { Clause } from '../../clauses/clause.ts';
import { isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused, type Span } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { StateAll } from '../corrections/dry-run.ts';
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
  readonly doubt?: readonly string[];
}

const OTHER_PLACE = 'Was it said to be there instead?';

interface PlacesAnswered {
  readonly answers: readonly PlaceAnswer[];
  /** what is said past a pause behind them */
  readonly rest: readonly Piece[];
}

/**
 * Each place of a clause with its answer, or null where the clause is of another form. A "not" before a place denies it; a place
 * without an answer of its own is the other way round ("my tummy but not my hips"), or as the "yes" before it says.
 */
function placesAnswered(talk: Talk, { pieces }: Clause): PlacesAnswered | null {
  const out: PlaceAnswer[] = [];
  let phrases: SitePhrase[] = [];
  let lead: AnswerWord | null = null;
  let start: number | null = null;
  const close = (word: AnswerWord, to: number) => {
    const [first] = phrases;
    if (first !== undefined) out.push({ phrases, word, from: start ?? first.from, to });
    phrases = [];
    [lead, start] = [null, null];
  };
  for (const item of itemsOf(talk, pieces)) {
    if (item.type === 'site') {
      phrases.push(item.phrase);
      continue;
    }
    const { piece } = item;
    const last = phrases.at(-1);
    const word = wordOf(piece);
    const isTurn = marked(piece, 'contrast') || isNot(talk, piece);
    if (isTurn && last !== undefined) close(lead ?? 'yes', last.to);
    // "Yes, but not in the chest": where it is, nobody said.
    if (isNot(talk, piece) && lead === 'yes') return null;
    if (isNot(talk, piece)) [lead, start] = ['no', piece.from];
    else if (isTurn || isChatter(piece)) continue;
    else if (word !== null && !isSmall(piece, 'link')) {
      if (word === 'unsure') return null;
      if (last !== undefined) close(word, piece.to);
      else if (out.length === 0 && lead === null && word === 'yes') lead = word;
      else return null;
    } else {
      if (last !== undefined && lead === 'no') close('no', last.to);
      const end = out.at(-1)?.to ?? 0;
      const isPast = phrases.length === 0 && out.length > 1 && isPaused(talk.tokens, { to: end });
      return isPast ? { answers: out, rest: pieces.filter(({ from }) => from >= end) } : null;
    }
  }
  const last = phrases.at(-1);
  if (last !== undefined && lead !== 'no') return null;
  const instead = last === undefined ? null : insteadOf(talk, pieces, phrases);
  if (last !== undefined && instead !== null) {
    const [first] = phrases;
    if (first === undefined || instead === 'unclear') return null;
    phrases = [first];
    close('no', first.to);
    out.push({ phrases: [last], word: 'yes', from: last.from, to: last.to, doubt: [OTHER_PLACE] });
  } else if (last !== undefined) close('no', last.to);
  return out.length > 0 ? { answers: out, rest: [] } : null;
}

/**
 * "Not in the leg, in the foot", "not my back, my neck": the place past the pause is where it is, more likely than a second one that
 * is denied. Null for a list ("not in the leg or the foot"); of more places it is unclear.
 */
function insteadOf(
  { tokens }: Talk,
  pieces: readonly Piece[],
  phrases: readonly SitePhrase[],
): 'last' | 'unclear' | null {
  const [first, , third] = phrases;
  if (phrases.length < 2 || first === undefined || !isPaused(tokens, first)) return null;
  const isList = pieces.some(({ from, to }) => /^(or|nor|and)$/.test(saidIn(tokens, from, to)));
  if (isList) return null;
  return third === undefined ? 'last' : 'unclear';
}

const isNot = ({ tokens }: Talk, { from, to }: Piece): boolean => saidIn(tokens, from, to) === 'not';

/** States what was asked after of each place that is named with its own yes or no; false where the clause is of another form. */
export function answerPlaces(talk: Talk, clause: Clause, asked: AskedFindings, stateAll: StateAll): boolean {
  const said = placesAnswered(talk, clause);
  if (said === null || asked.negative) return false;
  const { answers, rest } = said;
  // "Is your left elbow sore?" "Not the elbow, the wrist": of the one that was asked after, its side goes on.
  if (asked.sites.length === 1 && answers.some(({ doubt }) => doubt !== undefined)) return false;
  // A single place that was not asked after begins something of its own.
  if (asked.sites.length > 0 && answers.length < 2 && !isOneOf(answers, asked)) return false;
  const refs = answers.map(({ phrases }) => sitesOf(phrases, []));
  bear(talk, { asked: null, sites: refs.at(-1) ?? [] });
  settle(
    talk,
    answers.flatMap(({ word, doubt = [], from, to }, i) =>
      (refs[i] ?? []).flatMap((ref) =>
        asked.findings.map(
          ({ finding, present }): Said => ({
            statement: findingStatement(finding, ref, (word === 'yes') === present, {}),
            known: {
              finding: 'carried',
              ...(ref.sideKnown === null || ref.sideKnown === 'spoken' ? {} : { side: ref.sideKnown }),
            },
            doubt,
            from,
            to,
          }),
        ),
      ),
    ),
  );
  place(talk, ...clause.pieces.filter((piece) => !rest.includes(piece)));
  if (rest.length > 0) stateAll(talk, rest);
  return true;
}

// "In your hips or your tummy?" "My tummy, yes."
const isOneOf = (answers: readonly PlaceAnswer[], { sites, either }: AskedFindings): boolean =>
  either &&
  sites.length > 1 &&
  answers.every(({ phrases }) =>
    phrases.every((phrase) => phrase.sites.every(({ site }) => sites.some((one) => one.site === site))),
  );
